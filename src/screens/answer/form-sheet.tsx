import { Fragment } from 'preact';
import type { FlatnessFinding } from '../../core/inspection/flatness';
import type { FormAnswer, HeldBy } from '../../core/inspection/forms';
import type { Part } from '../../core/part/part';
import { namesWithSign, traverseNames } from '../../entry/reading-names';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { Fold } from '../../widgets/fold';
import { formName, shapeInWords } from '../../words/forms';
import { deviation as shown } from '../../words/numbers';
import { FormMap } from './form-map';
import { WeighedReadings } from './weighed-readings';

interface FormSheetProps {
  readonly forms: readonly FormAnswer[];
  /** What is asked of the faces, and what was found. */
  readonly flatness: readonly FlatnessFinding[];
  readonly part: Part | undefined;
  readonly inspection: InspectionRecord;
}

/** How straight or flat what was read is, crown or hollow, and where it stands highest and lowest. */
export function FormSheet({ forms, flatness, part, inspection }: FormSheetProps) {
  const { deviation } = shop.value.units;
  const names = namesWithSign(inspection.setups);
  const placings = traverseNames(inspection.setups);
  return (
    <section class="sheet" aria-labelledby="form-heading">
      <h3 id="form-heading">Form</h3>
      {forms.map((answer) => (
        <div key={answer.placing} class="stack">
          <p>
            <b>{formName(answer, placings.get(answer.placing))}</b>
          </p>
          <p>{shapeInWords(answer, deviation)}</p>
          {part !== undefined && <FormMap answer={answer} part={part} />}
          <dl class="facts">
            <dt>{answer.of === 'line' ? 'Straightness' : 'Flatness'}, minimum zone</dt>
            <dd>{shown(answer.minimumZone, deviation)}</dd>
            {answer.of === 'face' &&
              flatness
                .filter(({ requirement }) => requirement.face === answer.face)
                .map(({ requirement: { id, tolerance } }) => (
                  <Fragment key={id}>
                    <dt>The drawing allows</dt>
                    <dd>{shown(tolerance, deviation)}</dd>
                  </Fragment>
                ))}
            <dt>By least squares</dt>
            <dd>{shown(answer.leastSquares, deviation)}</dd>
            <dt>Highest at</dt>
            <dd>{names.get(answer.readings[answer.form.highest] ?? '') ?? '–'}</dd>
            <dt>Lowest at</dt>
            <dd>{names.get(answer.readings[answer.form.lowest] ?? '') ?? '–'}</dd>
          </dl>
          <ZoneWorking answer={answer} names={names} />
        </div>
      ))}
      <p class="soft small">
        Only at the places read (ISO 12780 and ISO 12781). Over the plate, the form of both faces
        shows; a column adds its own straightness.
      </p>
    </section>
  );
}

interface ZoneWorkingProps {
  readonly answer: FormAnswer;
  readonly names: ReadonlyMap<string, string>;
}

/** What holds the minimum zone: no plane has its highest and lowest readings closer together. */
function ZoneWorking({ answer, names }: ZoneWorkingProps) {
  const rowsOf = (held: readonly HeldBy[], side: 'above' | 'below') =>
    held.map(({ reading, value, share }) => ({
      name: `${names.get(reading) ?? 'Reading'}, ${side}`,
      value,
      weight: side === 'above' ? share : -share,
    }));
  return (
    <Fold summary="Show the working">
      <WeighedReadings
        caption="The zone is held by these: their readings times their shares, those above less those below, are its width, and no tilt brings the two any closer"
        weights="share"
        rows={[...rowsOf(answer.upper, 'above'), ...rowsOf(answer.lower, 'below')]}
        total={answer.minimumZone}
      />
    </Fold>
  );
}
