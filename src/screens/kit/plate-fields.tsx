import { type KitEntry, PLATE_KINDS } from '../../entry/kit-entry';
import type { Problems } from '../../entry/problems';
import { LengthField } from '../../widgets/length-field';
import { SelectField } from '../../widgets/select-field';

const PLATE_OPTIONS = PLATE_KINDS.map(
  (kind) => [kind, kind === 'stated' ? 'As stated under the block' : kind] as const,
);

type Graded = Pick<KitEntry, 'plateKind' | 'plateLength' | 'plateWidth'>;

interface PlateFieldsProps {
  readonly id: string;
  readonly plate: Graded;
  readonly problems: Problems;
  /** The key of a field of this plate. */
  readonly keyOf: (side: string) => string;
  readonly onChange: (changed: Partial<Graded>) => void;
}

/** A plate by its standard, grade and size, from which the share under a block is worked out. */
export function PlateFields({ id, plate, problems, keyOf, onChange }: PlateFieldsProps) {
  return (
    <>
      <SelectField
        id={`${id}-kind`}
        label="Surface plate"
        options={PLATE_OPTIONS}
        chosen={plate.plateKind}
        onChoose={(plateKind) => onChange({ plateKind })}
      />
      {plate.plateKind !== 'stated' && (
        <div class="columns">
          {(['plateLength', 'plateWidth'] as const).map((side) => (
            <LengthField
              key={side}
              field={keyOf(side)}
              label={side === 'plateLength' ? 'Length of the plate' : 'Width of the plate'}
              typed={plate[side]}
              problems={problems}
              onTyped={(typed) => onChange({ [side]: typed })}
            />
          ))}
        </div>
      )}
    </>
  );
}
