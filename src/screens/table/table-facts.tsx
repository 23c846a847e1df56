import { COLUMN_NAMES, type Column, headingOf } from '../../exchange/csv/columns';
import type { TableRead } from '../../state/tables';
import { SelectField } from '../../widgets/select-field';

interface TableFactsProps {
  readonly table: TableRead;
  readonly onChoose: (index: number, column: Column | 'none') => void;
}

const OPTIONS: readonly (readonly [Column | 'none', string])[] = [
  ['none', 'Not used'],
  ...COLUMN_NAMES.map((column) => [column, headingOf(column)] as const),
];

/** Bad rows that are told one by one. */
const EXAMPLES = 20;

/** What each column is taken for, and the rows that cannot be read. */
export function TableFacts({ table, onChoose }: TableFactsProps) {
  const { columns, problems } = table;
  return (
    <>
      <fieldset class="stack">
        <legend>What the columns are</legend>
        {columns.map(({ heading, matched }, index) => (
          <SelectField
            key={`${index} ${heading}`}
            id={`column-${index}`}
            label={heading.trim() || `Column ${index + 1}`}
            options={OPTIONS}
            chosen={matched?.column ?? 'none'}
            onChoose={(column) => onChoose(index, column)}
          />
        ))}
      </fieldset>
      {problems.length > 0 && (
        <div class="note note-warning stack" role="status">
          <p>
            {problems.length} {problems.length === 1 ? 'line' : 'lines'} cannot be taken:
          </p>
          <ul>
            {problems.slice(0, EXAMPLES).map(({ line, message }) => (
              <li key={line}>
                Line {line}: {message}
              </li>
            ))}
          </ul>
          {problems.length > EXAMPLES && <p>And {problems.length - EXAMPLES} more.</p>}
        </div>
      )}
    </>
  );
}
