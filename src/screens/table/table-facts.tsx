import { COLUMN_NAMES, type Column, headingOf } from '../../exchange/csv/columns';
import type { TableRead } from '../../state/tables';
import { SelectField } from '../../widgets/select-field';
import { BadRows } from './bad-rows';

interface TableFactsProps {
  readonly table: TableRead;
  readonly onChoose: (index: number, column: Column | 'none') => void;
}

const OPTIONS: readonly (readonly [Column | 'none', string])[] = [
  ['none', 'Not used'],
  ...COLUMN_NAMES.map((column) => [column, headingOf(column)] as const),
];

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
      <BadRows bad={problems} all={problems.length} />
    </>
  );
}
