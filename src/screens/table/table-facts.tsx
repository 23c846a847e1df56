import { COLUMN_NAMES, type Column, headingOf, type Matched } from '../../exchange/csv/columns';
import type { TableRead } from '../../state/tables';
import { SelectField } from '../../widgets/select-field';
import { BadRows } from './bad-rows';

interface TableFactsProps {
  readonly table: TableRead;
  readonly onChoose: (index: number, column: Column | 'none') => void;
}

/** What a column may be taken for; what it is taken for is told with the unit that its numbers are in. */
function optionsFor(matched: Matched | undefined): readonly (readonly [Column | 'none', string])[] {
  return [
    ['none', 'Not used'],
    ...COLUMN_NAMES.map((name) => {
      const isIt = matched?.column === name;
      return [name, headingOf(name, isIt ? matched.unit : undefined)] as const;
    }),
  ];
}

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
            options={optionsFor(matched)}
            chosen={matched?.column ?? 'none'}
            onChoose={(column) => onChoose(index, column)}
          />
        ))}
      </fieldset>
      <BadRows bad={problems} all={problems.length} />
    </>
  );
}
