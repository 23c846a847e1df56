import { useState } from 'preact/hooks';
import { useLocation, useRoute } from 'preact-iso';
import type { Column } from '../../exchange/csv/columns';
import { tableText } from '../../exchange/csv/table-text';
import { FileRefused } from '../../exchange/file-refused';
import type { Link } from '../../state/chain';
import { takeTableForPart } from '../../state/opened-table';
import {
  readingsFile,
  readTable,
  resultsFile,
  type TableRead,
  takeTable,
} from '../../state/tables';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { ChooseFile } from '../../widgets/choose-file';
import { Page } from '../../widgets/page';
import { shareFile } from '../../widgets/share-file';
import { to } from '../paths';
import { WithPart } from '../with-part';
import { ColumnFacts } from './column-facts';
import { TableFacts } from './table-facts';
import './table-screen.css';
import { WhichInspection } from './which-inspection';

/** The readings of one part as a table for other programs, and a table of readings in. */
export function TableScreen() {
  const { params } = useRoute();
  return (
    <WithPart id={params.part ?? ''}>
      {(part, links) => (
        <Page title="Readings as a table" back={{ to: to.part(part.id), name: 'the part' }}>
          <TablesOut part={part} links={links} />
          <TableIn part={part} />
        </Page>
      )}
    </WithPart>
  );
}

function TablesOut({
  part,
  links,
}: {
  readonly part: PartRecord;
  readonly links: readonly Link[];
}) {
  const inspections = links.filter((link): link is InspectionRecord => link.kind === 'inspection');
  return (
    <section class="sheet" aria-labelledby="out-heading">
      <h2 id="out-heading">Out</h2>
      <p>
        CSV for a spreadsheet: a row for each reading or result, units in the headings, a decimal
        point.
      </p>
      <div class="row">
        <button
          type="button"
          class="button"
          onClick={() => void shareFile(readingsFile(part, inspections))}
        >
          Readings
        </button>
        <button
          type="button"
          class="button"
          onClick={() => void shareFile(resultsFile(part, inspections))}
        >
          Results
        </button>
      </div>
      <ColumnFacts />
    </section>
  );
}

const NONE_CHOSEN: ReadonlyMap<number, Column | 'none'> = new Map();

function TableIn({ part }: { readonly part: PartRecord }) {
  const { route } = useLocation();
  const [text, setText] = useState(takeTableForPart);
  const [chosen, setChosen] = useState(NONE_CHOSEN);
  const [inspection, setInspection] = useState(0);
  const [refused, setRefused] = useState<string | undefined>();
  const show = (next: string) => {
    setText(next);
    setRefused(undefined);
    setChosen(NONE_CHOSEN);
    setInspection(0);
  };
  const open = async (file: File) => {
    try {
      show(await tableText(file));
    } catch (error) {
      show('');
      setRefused(refusalOf(error));
    }
  };
  const table = text.trim() === '' ? undefined : read(text, chosen, inspection);
  return (
    <section class="sheet" aria-labelledby="in-heading">
      <h2 id="in-heading">In</h2>
      <p>
        Paste a table of readings from a spreadsheet, or choose a CSV file. The first line has the
        headings, such as <b>face</b>, <b>nose height (mm)</b>, <b>height (mm)</b> and{' '}
        <b>reading (µm)</b>.
      </p>
      <div class="field field-text">
        <label for="table">Table of readings</label>
        <textarea
          id="table"
          rows={6}
          value={text}
          onInput={(event) => show(event.currentTarget.value)}
        />
      </div>
      <ChooseFile label="Or choose a CSV file" onFile={(file) => void open(file)} />
      {refused !== undefined && <p class="note note-wrong">{refused}</p>}
      {typeof table === 'string' && <p class="note note-wrong">{table}</p>}
      {typeof table === 'object' && (
        <>
          <WhichInspection table={table} chosen={inspection} onChoose={setInspection} />
          <TableFacts
            table={table}
            onChoose={(index, column) => setChosen(new Map(chosen).set(index, column))}
          />
          <button
            type="button"
            class="button button-main"
            disabled={table.count === 0}
            onClick={() => route(to.plate(part.id, takeTable(part.id, table).id))}
          >
            Take {table.count} {table.count === 1 ? 'reading' : 'readings'} as a new inspection
          </button>
        </>
      )}
    </section>
  );
}

/** The table, or why it cannot be read. */
function read(
  text: string,
  chosen: ReadonlyMap<number, Column | 'none'>,
  inspection: number,
): TableRead | string {
  try {
    return readTable(text, chosen, inspection);
  } catch (error) {
    return refusalOf(error);
  }
}

function refusalOf(error: unknown): string {
  if (error instanceof FileRefused) return `This table cannot be taken. ${error.message}.`;
  if (error instanceof DOMException) return 'The browser could not read this file.';
  throw error;
}
