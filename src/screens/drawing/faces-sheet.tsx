import { FACES, type Face } from '../../core/part/faces';
import type { PartEntry } from '../../entry/part-entry';
import { Fold } from '../../widgets/fold';
import { SelectField } from '../../widgets/select-field';
import { faceLabel } from '../../words/faces';

const FACE_OPTIONS = FACES.map((face) => [face, faceLabel(face)] as const);

interface FacesSheetProps {
  readonly entry: PartEntry;
  readonly onChange: (changed: Partial<PartEntry>) => void;
}

/** Which face the part stands on, and which faces must not be touched. */
export function FacesSheet({ entry, onChange }: FacesSheetProps) {
  const { datum, finished } = entry;
  const toggle = (face: Face) =>
    onChange({
      finished: finished.includes(face)
        ? finished.filter((other) => other !== face)
        : [...finished, face],
    });
  return (
    <section class="sheet" aria-labelledby="faces-heading">
      <h2 id="faces-heading">Faces</h2>
      <SelectField
        id="datum-a"
        label="It stands on, as datum A"
        options={FACE_OPTIONS}
        chosen={datum}
        onChoose={(face) => onChange({ datum: face })}
      />
      <Fold open={finished.length > 0} summary="Faces that are finished and must not be worked">
        <div class="columns">
          {FACES.map((face) => (
            <label key={face} class="check">
              <input
                type="checkbox"
                checked={finished.includes(face)}
                onChange={() => toggle(face)}
              />
              {faceLabel(face)}
            </label>
          ))}
        </div>
      </Fold>
    </section>
  );
}
