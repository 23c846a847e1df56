import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import type { TableContents } from '../../exchange/csv/long-table';
import { type OpenedTable, partsForTable, tableForPart } from '../../state/opened-table';
import { SearchField } from '../../widgets/search-field';
import { countInWords } from '../../words/part-states';
import { to } from '../paths';
import { BadRows } from '../table/bad-rows';
import { WholeTable } from './whole-table';

/** Parts that are offered at a time. */
const OFFERED = 8;

interface TableArrivedProps {
  readonly table: OpenedTable;
  readonly onTakeWhole: () => void;
}

/** What a table holds, and where it is to go: all of it to its parts, or one inspection to one part. */
export function TableArrived({ table, onTakeWhole }: TableArrivedProps) {
  const { route } = useLocation();
  const [words, setWords] = useState('');
  const { name, contents } = table;
  if (contents === undefined) {
    return (
      <p class="note note-warning">
        ‘{name}’ holds results. They are worked out anew from readings, and so never taken in: open
        the table of readings instead.
      </p>
    );
  }
  const found = partsForTable(table, words);
  return (
    <>
      <p class="note">
        ‘{name}’ is a table with {held(contents)}. Nothing of it has been taken yet.
      </p>
      <BadRows bad={contents.bad} all={contents.allBad} />
      {contents.inspections.length > 1 && (
        <>
          <WholeTable table={table} onTake={onTakeWhole} />
          <h3>One inspection at a time</h3>
        </>
      )}
      <p>Which part does it belong to?</p>
      <SearchField id="table-part" label="Find by name or job" text={words} onText={setWords} />
      <p class="soft small">
        {found.length === 0
          ? 'No such part. One that is not here yet is begun on the bench; then open the file again.'
          : countInWords(Math.min(OFFERED, found.length), found.length)}
      </p>
      <ul class="cards">
        {found.slice(0, OFFERED).map(({ id, entry }) => (
          <li key={id}>
            <button
              type="button"
              class="button button-wide"
              onClick={() => {
                tableForPart.value = table;
                route(to.table(id));
              }}
            >
              {[entry.name.trim() || 'Part without a name', entry.job.trim()]
                .filter(Boolean)
                .join(' · ')}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

/** '40 rows', '120 rows: 3 inspections of 2 parts'. */
function held({ inspections, rows: count }: TableContents): string {
  const rows = `${count} ${count === 1 ? 'row' : 'rows'}`;
  if (inspections.length < 2) return rows;
  const parts = new Set(inspections.map(({ part, job }) => `${part}\n${job}`)).size;
  return `${rows}: ${inspections.length} inspections of ${parts} ${parts === 1 ? 'part' : 'parts'}`;
}
