import type { Axis } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import type { PartEntry } from '../../entry/part-entry';
import type { Problems } from '../../entry/problems';
import { NumberField } from '../../widgets/number-field';

const SIZES: readonly (readonly [Axis, string])[] = [
  ['x', 'X, left to right'],
  ['y', 'Y, front to back'],
  ['z', 'Z, bottom to top'],
];

interface SizeSheetProps {
  readonly entry: PartEntry;
  readonly problems: Problems;
  readonly onChange: (changed: Partial<PartEntry>) => void;
}

/** The three sizes of the block. */
export function SizeSheet({ entry, problems, onChange }: SizeSheetProps) {
  return (
    <section class="sheet" aria-labelledby="size-heading">
      <h2 id="size-heading">Sizes on the drawing</h2>
      <div class="columns columns-three">
        {SIZES.map(([axis, label]) => (
          <NumberField
            key={axis}
            field={fieldKey.size(axis)}
            label={label}
            text={entry.size[axis].text}
            unit={entry.size[axis].unit}
            problem={problems.get(fieldKey.size(axis))}
            onText={(text) =>
              onChange({ size: { ...entry.size, [axis]: { ...entry.size[axis], text } } })
            }
          />
        ))}
      </div>
    </section>
  );
}
