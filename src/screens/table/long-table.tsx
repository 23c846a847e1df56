import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { FileRefused } from '../../exchange/file-refused';
import { inspectionsForPart, type OpenedTable } from '../../state/opened-table';
import { type Chosen, readFromLong, type TableRead } from '../../state/tables';
import type { PartRecord } from '../../store/records';
import { SearchField } from '../../widgets/search-field';
import { SelectField } from '../../widgets/select-field';
import { nameOf } from './which-inspection';

interface LongTableProps {
  readonly table: OpenedTable;
  readonly part: PartRecord;
  readonly chosen: Chosen;
  /** Given the inspection that was picked, once it is read. */
  readonly children: (read: TableRead) => ComponentChildren;
}

/** Inspections that are offered at a time. */
const OFFERED = 50;

/** A table that is too long to be seen as a whole: one of its inspections is picked. */
export function LongTable({ table, part, chosen, children }: LongTableProps) {
  const [words, setWords] = useState('');
  const found = useMemo(
    () => inspectionsForPart(table, part, words),
    [table, part.entry.name, words],
  );
  const [picked, pick] = useState(0);
  const shown = found.slice(0, OFFERED);
  const inspection = shown[picked];
  const [read, setRead] = useState<((chosen: Chosen) => TableRead) | string>();
  useEffect(() => {
    setRead(undefined);
    if (inspection === undefined) return;
    let isWanted = true;
    readFromLong(table, inspection)
      .then((it) => isWanted && setRead(() => it))
      .catch((error: unknown) => {
        if (!(error instanceof FileRefused)) throw error;
        if (isWanted) setRead(`This inspection cannot be taken. ${error.message}.`);
      });
    return () => {
      isWanted = false;
    };
  }, [table, inspection]);
  return (
    <>
      <p class="note">
        ‘{table.name}’ holds {table.contents?.inspections.length} inspections. They are taken one by
        one, so that the readings of one are not mixed with those of another.
      </p>
      <SearchField
        id="find-inspection"
        label="Find by part, job or time"
        text={words}
        onText={(text) => {
          setWords(text);
          pick(0);
        }}
      />
      <p class="soft small">
        {found.length === 0
          ? 'No such inspection.'
          : `${shown.length} of ${found.length} of them, those of this part first`}
      </p>
      {found.length > 0 && (
        <SelectField
          id="which-inspection"
          label="Which of them"
          options={shown.map((one, index) => [String(index), nameOf(one)] as const)}
          chosen={String(picked)}
          onChoose={(index) => pick(Number(index))}
        />
      )}
      {inspection !== undefined && read === undefined && <p role="status">Reading it…</p>}
      {typeof read === 'string' && <p class="note note-wrong">{read}</p>}
      {typeof read === 'function' && children(read(chosen))}
    </>
  );
}
