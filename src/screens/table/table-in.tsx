import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { tableText } from '../../exchange/csv/table-text';
import { FileRefused } from '../../exchange/file-refused';
import { type OpenedTable, openTable, takeTableForPart } from '../../state/opened-table';
import { shop } from '../../state/shop';
import { type Chosen, readTable, type TableRead, takeTable } from '../../state/tables';
import type { PartRecord } from '../../store/records';
import { ChooseFile } from '../../widgets/choose-file';
import { to } from '../paths';
import { LongTable } from './long-table';
import { TableFacts } from './table-facts';
import { WhichInspection } from './which-inspection';

const NONE_CHOSEN: Chosen = new Map();

/** Characters up to which a file is shown in the field, as if it had been pasted. */
const SHORT = 100_000;

/** A table of readings in: pasted, or from a file of whatever length. */
export function TableIn({ part }: { readonly part: PartRecord }) {
  const { size, deviation } = shop.value.units;
  const [given] = useState(takeTableForPart);
  const isLong = given !== undefined && given.text.length > SHORT;
  const [text, setText] = useState(isLong ? '' : (given?.text ?? ''));
  const [long, setLong] = useState(isLong ? given : undefined);
  const [rows, setRows] = useState<number | undefined>();
  const [chosen, setChosen] = useState(NONE_CHOSEN);
  const [inspection, setInspection] = useState(0);
  const [refused, setRefused] = useState<string | undefined>();
  const show = (next: string, table?: OpenedTable) => {
    setText(next);
    setLong(table);
    setRefused(undefined);
    setChosen(NONE_CHOSEN);
    setInspection(0);
  };
  const open = async (file: File) => {
    show('');
    try {
      if (file.size <= SHORT) return show(await tableText(file));
      setRows(0);
      const table = await openTable(file, setRows);
      if (table?.contents === undefined) throw new FileRefused('It is no table of readings');
      show('', table);
    } catch (error) {
      setRefused(refusalOf(error));
    } finally {
      setRows(undefined);
    }
  };
  const table = text.trim() === '' ? undefined : read(text, chosen, inspection);
  const facts = (one: TableRead) => (
    <TakeTable
      part={part}
      table={one}
      onChoose={(next) => setChosen(new Map([...chosen, ...next]))}
    />
  );
  return (
    <section class="sheet" aria-labelledby="in-heading">
      <h2 id="in-heading">In</h2>
      <p>
        Paste a table of readings from a spreadsheet, or choose a CSV file. The first line has the
        headings, such as <b>face</b>, <b>nose height ({size})</b>, <b>height ({size})</b> and{' '}
        <b>reading ({deviation})</b>.
      </p>
      <div class="field field-text">
        <label for="table">Table of readings</label>
        <textarea
          id="table"
          rows={6}
          value={text}
          aria-invalid={typeof table === 'string'}
          aria-describedby={typeof table === 'string' ? 'table-refused' : undefined}
          onInput={(event) => show(event.currentTarget.value)}
        />
      </div>
      <ChooseFile
        label="Or choose a CSV file"
        refused={refused && 'file-refused'}
        onFile={(file) => void open(file)}
      />
      {rows !== undefined && <p role="status">Reading: {rows} rows so far…</p>}
      {refused !== undefined && (
        <p id="file-refused" class="note note-wrong">
          {refused}
        </p>
      )}
      {typeof table === 'string' && (
        <p id="table-refused" class="note note-wrong">
          {table}
        </p>
      )}
      {typeof table === 'object' && (
        <>
          <WhichInspection table={table} chosen={inspection} onChoose={setInspection} />
          {facts(table)}
        </>
      )}
      {long !== undefined && (
        <LongTable table={long} part={part} chosen={chosen}>
          {facts}
        </LongTable>
      )}
    </section>
  );
}

interface TakeTableProps {
  readonly part: PartRecord;
  readonly table: TableRead;
  readonly onChoose: (next: Chosen) => void;
}

/** What was read of a table, and the way to take it. */
function TakeTable({ part, table, onChoose }: TakeTableProps) {
  const { route } = useLocation();
  return (
    <>
      <TableFacts
        table={table}
        onChoose={(index, column) => onChoose(new Map([[index, column]]))}
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
  );
}

/** The table, or why it cannot be read. */
function read(text: string, chosen: Chosen, inspection: number): TableRead | string {
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
