import { useEffect, useState } from 'preact/hooks';
import type { OpenedTable } from '../../state/opened-table';
import { planWhole, type TablePlan } from '../../state/whole-table';
import { countsInWords } from '../../words/merging';

interface WholeTableProps {
  readonly table: OpenedTable;
  readonly onTake: () => void;
}

/** What taking all inspections of a table in at once would do, and the way to do it. */
export function WholeTable({ table, onTake }: WholeTableProps) {
  const [plan, setPlan] = useState<TablePlan>();
  const unknown = table.contents?.unknown ?? [];
  useEffect(() => {
    let isWanted = true;
    planWhole(table)
      .then((it) => isWanted && setPlan(it))
      .catch((error: unknown) => console.error(error));
    return () => {
      isWanted = false;
    };
  }, [table]);
  return (
    <>
      <h3>All of it at once</h3>
      {unknown.length > 0 ? (
        <p>
          Not while it is unknown what stands under {unknown.map(quoted).join(', ')}: give it a
          heading as below the tables here, or take it out. One inspection at a time can be taken as
          it is.
        </p>
      ) : plan === undefined ? (
        <p role="status">Looking for its parts…</p>
      ) : (
        <Plan plan={plan} hasBad={(table.contents?.allBad ?? 0) > 0} onTake={onTake} />
      )}
    </>
  );
}

const quoted = (heading: string) =>
  heading.trim() === '' ? 'a column without one' : `‘${heading}’`;

interface PlanProps {
  readonly plan: TablePlan;
  readonly hasBad: boolean;
  readonly onTake: () => void;
}

function Plan({ plan: { taken, newParts, here, unclear }, hasBad, onTake }: PlanProps) {
  const count = taken.length;
  const partsHere = new Set(taken.map(({ part }) => part.id)).size - newParts;
  const goesTo = countsInWords([
    { count: partsHere, one: 'part that is here', more: 'parts that are here' },
    { count: newParts, one: 'new part', more: 'new parts' },
  ]);
  return (
    <>
      {count > 0 && (
        <p>
          {inspections(count)} to {goesTo}, each by name and job.
          {newParts > 0 && ' Of a new part the table has no drawing: that is for you to enter.'}{' '}
          What is here stays, and a copy from before is kept: it can be put back.
        </p>
      )}
      {hasBad && <p>The lines named above stay out.</p>}
      {here.length > 0 && (
        <p>{inspections(here.length)} of the same part and time here already: left alone.</p>
      )}
      {unclear.length > 0 && (
        <p>
          {inspections(unclear.length)} to be taken one at a time: the table does not tell for
          certain of which part, or when (as 2024-03-05T14:07Z), or there are too many rows.
        </p>
      )}
      {count > 0 && (
        <button type="button" class="button button-main" onClick={onTake}>
          Take {inspections(count)} in
        </button>
      )}
    </>
  );
}

const inspections = (count: number) => `${count} ${count === 1 ? 'inspection' : 'inspections'}`;
