import type { Axis } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import type { PartEntry, SizeLimitsEntry } from '../../entry/part-entry';
import type { Problems } from '../../entry/problems';
import { roughnessUnit } from '../../entry/roughness';
import { anySizeLimit, sizeLimitsOf } from '../../entry/size-limits';
import { shop } from '../../state/shop';
import { Fold } from '../../widgets/fold';
import { LengthField } from '../../widgets/length-field';
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

/** The three sizes of the block, and what the drawing allows of them. */
export function SizeSheet({ entry, problems, onChange }: SizeSheetProps) {
  const finish = entry.finish ?? { text: '', unit: roughnessUnit(shop.value.units.size) };
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
      <Fold
        open={anySizeLimit(entry) || finish.text.trim() !== ''}
        summary="Limits of the sizes, and the finish"
      >
        <div class="stack">
          <Limits entry={entry} problems={problems} onChange={onChange} />
          <NumberField
            optional
            field={fieldKey.finish()}
            label="Finest finish asked for, Ra"
            text={finish.text}
            unit={finish.unit}
            problem={problems.get(fieldKey.finish())}
            onText={(text) => onChange({ finish: { text, unit: finish.unit } })}
          />
        </div>
      </Fold>
    </section>
  );
}

/** How far each size may be off, so that nothing is taken off that is wanted later. */
function Limits({ entry, problems, onChange }: SizeSheetProps) {
  return (
    <>
      <p class="soft small">
        How far a size may be off, with its sign: −0.01 and 0.005 for a size that may be 0.01 under
        and 0.005 over. No plan takes a size below its lower limit.
      </p>
      {SIZES.map(([axis, label]) => {
        const limits = sizeLimitsOf(entry, axis);
        const put = (changed: Partial<SizeLimitsEntry>) =>
          onChange({ sizeLimits: { ...entry.sizeLimits, [axis]: { ...limits, ...changed } } });
        const name = label.slice(0, 1);
        return (
          <div key={axis} class="columns">
            <LengthField
              optional
              field={fieldKey.lowerLimit(axis)}
              label={`${name}, lower limit`}
              typed={limits.lower}
              problems={problems}
              onTyped={(lower) => put({ lower })}
            />
            <LengthField
              optional
              field={fieldKey.upperLimit(axis)}
              label={`${name}, upper limit`}
              typed={limits.upper}
              problems={problems}
              onTyped={(upper) => put({ upper })}
            />
          </div>
        );
      })}
    </>
  );
}
