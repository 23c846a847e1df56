import { useEffect, useRef, useState } from 'preact/hooks';
import { partsInTables, type ShopTable, shopTable } from '../../state/shop-tables';
import { shareFile } from '../../widgets/share-file';
import { countInWords } from '../../words/part-states';
import { ColumnFacts } from '../table/column-facts';

/** Every part's readings or results as one table for other programs. */
export function ShopTablesSheet() {
  const [done, setDone] = useState<number | undefined>();
  const [failed, fail] = useState(false);
  // Ended with the screen too.
  const isWanted = useRef(true);
  const stop = () => {
    isWanted.current = false;
  };
  useEffect(() => stop, []);
  const make = async (table: ShopTable) => {
    isWanted.current = true;
    fail(false);
    setDone(0);
    try {
      const file = await shopTable(table, setDone, () => isWanted.current);
      if (file !== undefined) await shareFile(file);
    } catch (error) {
      console.error(error);
      fail(true);
    } finally {
      setDone(undefined);
    }
  };
  const all = partsInTables().length;
  return (
    <section class="sheet" aria-labelledby="shop-tables-heading">
      <h2 id="shop-tables-heading">The whole shop as a table</h2>
      <p>
        CSV for a spreadsheet, with every part but those removed and the invented one: a row for
        each reading or result, units in the headings, a decimal point.
      </p>
      {done === undefined ? (
        <div class="row">
          <button type="button" class="button" onClick={() => void make('readings')}>
            All readings
          </button>
          <button type="button" class="button" onClick={() => void make('results')}>
            All results
          </button>
        </div>
      ) : (
        <button type="button" class="button" onClick={stop}>
          Stop
        </button>
      )}
      <p role="status">{done !== undefined && `Writing: ${countInWords(done, all)} so far…`}</p>
      {failed && <p class="note note-wrong">The table could not be made. Try once more.</p>}
      <p class="soft small">To move everything to another device, back it up instead.</p>
      <ColumnFacts />
    </section>
  );
}
