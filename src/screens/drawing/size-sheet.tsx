import type { Axis } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import type { PartEntry } from '../../entry/part-entry';
import type { Problems } from '../../entry/problems';
import { LengthField } from '../../widgets/length-field';

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
          <LengthField
            key={axis}
            field={fieldKey.size(axis)}
            label={label}
            typed={entry.size[axis]}
            problems={problems}
            onTyped={(typed) => onChange({ size: { ...entry.size, [axis]: typed } })}
          />
        ))}
      </div>
    </section>
  );
}
