import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { FACES } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import {
  nextFlatness,
  nextRequirement,
  type PartEntry,
  type RequirementEntry,
} from '../../entry/part-entry';
import type { Problems } from '../../entry/problems';
import { newId } from '../../state/shop';
import { FieldMessage } from '../../widgets/field-message';
import { LengthField } from '../../widgets/length-field';
import { RequirementFrame } from '../../widgets/requirement-frame';
import { SelectField } from '../../widgets/select-field';
import { faceLabel } from '../../words/faces';
import { FlatnessFields } from './flatness-fields';

const FACE_OPTIONS = FACES.map((face) => [face, faceLabel(face)] as const);

interface RequirementsSheetProps {
  readonly entry: PartEntry;
  readonly problems: Problems;
  readonly onChange: (changed: Partial<PartEntry>) => void;
}

/** Squareness, parallelism and flatness as the drawing asks for them. */
export function RequirementsSheet({ entry, problems, onChange }: RequirementsSheetProps) {
  const { requirements, flatness = [] } = entry;
  const put = (changed: RequirementEntry) =>
    onChange({
      requirements: requirements.map((one) => (one.id === changed.id ? changed : one)),
    });
  const remove = (id: string) =>
    onChange({ requirements: requirements.filter((one) => one.id !== id) });
  const root = useRef<HTMLElement>(null);
  const [added, setAdded] = useState<string>();
  // With what is drawn, not after it: by then one may have gone on to a field.
  useLayoutEffect(() => {
    if (added === undefined) return;
    // One goes on with what has just been added, all of it in sight.
    const face = root.current?.querySelector<HTMLElement>(faceField(added));
    face?.focus({ preventScroll: true });
    face?.closest('.requirement-fields')?.scrollIntoView({ block: 'nearest' });
  }, [added]);
  const add = () => {
    const next = nextRequirement(entry, newId);
    onChange({ requirements: [...requirements, next] });
    setAdded(next.id);
  };
  const addFlatness = () => {
    const next = nextFlatness(entry, newId);
    onChange({ flatness: [...flatness, next] });
    setAdded(next.id);
  };
  return (
    <section ref={root} class="sheet" aria-labelledby="requirements-heading">
      <h2 id="requirements-heading">What the drawing asks</h2>
      <p class="soft">
        Faces that share an edge are to be square, opposite ones parallel, and any face may have to
        be flat by itself. The zone is over the full face (ISO&nbsp;1101).
      </p>
      {requirements.map((requirement) => (
        <RequirementFields
          key={requirement.id}
          requirement={requirement}
          entry={entry}
          problems={problems}
          onChange={put}
          onRemove={() => remove(requirement.id)}
        />
      ))}
      <FlatnessFields entry={entry} problems={problems} onChange={onChange} />
      <div class="row">
        <button
          type="button"
          class="button"
          data-leads-on={requirements.length + flatness.length === 0 ? '' : undefined}
          onClick={add}
        >
          Add a requirement
        </button>
        <button type="button" class="button" onClick={addFlatness}>
          Add a flatness
        </button>
      </div>
    </section>
  );
}

function faceField(id: string): string {
  return `#${CSS.escape(`face-${id}`)}`;
}

interface RequirementFieldsProps {
  readonly requirement: RequirementEntry;
  readonly entry: PartEntry;
  readonly problems: Problems;
  readonly onChange: (changed: RequirementEntry) => void;
  readonly onRemove: () => void;
}

function RequirementFields(props: RequirementFieldsProps) {
  const { requirement, entry, problems, onChange, onRemove } = props;
  const { id, face, datum, tolerance } = requirement;
  const facesProblem = problems.get(fieldKey.faces(id));
  const wrong = facesProblem && `faces-${id}`;
  return (
    <div class="requirement-fields">
      <div class="sheet-head sheet-title">
        {facesProblem === undefined ? (
          <RequirementFrame
            face={face}
            datum={datum}
            tolerance={tolerance.text.trim() || '?'}
            datumA={entry.datum}
          />
        ) : (
          <FieldMessage id={`faces-${id}`} problem={facesProblem} />
        )}
        <button
          type="button"
          class="button button-quiet"
          aria-label={`Remove the requirement on ${face}`}
          onClick={onRemove}
        >
          Remove
        </button>
      </div>
      <div class="columns">
        <SelectField
          id={`face-${id}`}
          label="Face"
          options={FACE_OPTIONS}
          chosen={face}
          wrong={wrong}
          onChoose={(chosen) => onChange({ ...requirement, face: chosen })}
        />
        <SelectField
          id={`datum-${id}`}
          label="To datum"
          options={FACE_OPTIONS}
          chosen={datum}
          wrong={wrong}
          onChoose={(chosen) => onChange({ ...requirement, datum: chosen })}
        />
        <LengthField
          wide
          field={fieldKey.tolerance(id)}
          label="Within"
          typed={tolerance}
          problems={problems}
          onTyped={(typed) => onChange({ ...requirement, tolerance: typed })}
        />
      </div>
    </div>
  );
}
