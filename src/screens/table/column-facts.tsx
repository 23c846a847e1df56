import { COLUMN_NAMES, COLUMNS, headingOf } from '../../exchange/csv/columns';
import { RESULT_COLUMNS } from '../../exchange/csv/results-table';
import { Fold } from '../../widgets/fold';

/** What stands under each heading of the tables. */
export function ColumnFacts() {
  return (
    <Fold summary="What the columns are">
      <h3>Readings</h3>
      <Columns all={COLUMN_NAMES.map((name) => [headingOf(name), COLUMNS[name].says])} />
      <h3>Results</h3>
      <Columns all={Object.entries(RESULT_COLUMNS)} />
    </Fold>
  );
}

function Columns({ all }: { readonly all: readonly (readonly [string, string])[] }) {
  return (
    <ul class="small">
      {all.map(([heading, says]) => (
        <li key={heading}>
          <b>{heading}</b>: {says}
        </li>
      ))}
    </ul>
  );
}
