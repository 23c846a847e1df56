import { FACES } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import type { FlatnessEntry, PartEntry } from '../../entry/part-entry';
import type { Problems } from '../../entry/problems';
import { LengthField } from '../../widgets/length-field';
import { RequirementFrame } from '../../widgets/requirement-frame';
import { SelectField } from '../../widgets/select-field';
import { faceLabel } from '../../words/faces';

const FACE_OPTIONS = FACES.map((face) => [face, faceLabel(face)] as const);

interface FlatnessFieldsProps {
  readonly entry: PartEntry;
  readonly problems: Problems;
  readonly onChange: (changed: Partial<PartEntry>) => void;
}

/** Faces that are to be flat by themselves, as the drawing asks for them. */
export function FlatnessFields({ entry, problems, onChange }: FlatnessFieldsProps) {
  const { flatness = [], datum } = entry;
  const put = (changed: FlatnessEntry) =>
    onChange({ flatness: flatness.map((one) => (one.id === changed.id ? changed : one)) });
  return (
    <>
      {flatness.map((one) => (
        <div key={one.id} class="requirement-fields">
          <div class="sheet-head sheet-title">
            <RequirementFrame
              face={one.face}
              tolerance={one.tolerance.text.trim() || '?'}
              datumA={datum}
            />
            <button
              type="button"
              class="button button-quiet"
              aria-label={`Remove the flatness of ${one.face}`}
              onClick={() => onChange({ flatness: flatness.filter(({ id }) => id !== one.id) })}
            >
              Remove
            </button>
          </div>
          <div class="columns">
            <SelectField
              id={`face-${one.id}`}
              label="Face"
              options={FACE_OPTIONS}
              chosen={one.face}
              onChoose={(face) => put({ ...one, face })}
            />
            <LengthField
              field={fieldKey.tolerance(one.id)}
              label="Flat within"
              typed={one.tolerance}
              problems={problems}
              onTyped={(tolerance) => put({ ...one, tolerance })}
            />
          </div>
        </div>
      ))}
    </>
  );
}
