import type { FormAnswer } from '../../core/inspection/forms';
import { readingNames } from '../../entry/reading-names';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { formName, shapeInWords } from '../../words/forms';
import { deviationNumber, rounded, deviation as shown } from '../../words/numbers';

interface FormSheetProps {
  readonly forms: readonly FormAnswer[];
  readonly inspection: InspectionRecord;
}

/** How straight or flat what was read is, crown or hollow, and where it stands highest and lowest. */
export function FormSheet({ forms, inspection }: FormSheetProps) {
  const { deviation } = shop.value.units;
  const names = readingNames(inspection.setups);
  return (
    <section class="sheet" aria-labelledby="form-heading">
      <h3 id="form-heading">Form</h3>
      {forms.map((answer) => (
        <div key={answer.placing} class="stack">
          <p>
            <b>{formName(answer)}</b>
          </p>
          <p>{shapeInWords(answer, deviation)}</p>
          <dl class="facts">
            <dt>{answer.of === 'line' ? 'Straightness' : 'Flatness'}, minimum zone</dt>
            <dd>{shown(answer.minimumZone, deviation)}</dd>
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
  const { deviation } = shop.value.units;
  const sides = [
    { side: 'above', sign: 1, held: answer.upper },
    { side: 'below', sign: -1, held: answer.lower },
  ] as const;
  return (
    <details>
      <summary>Show the working</summary>
      <table>
        <caption>
          The zone is held by these: their readings times their shares, those above less those
          below, are its width, and no tilt brings the two any closer
        </caption>
        <thead>
          <tr>
            <th scope="col">Reading</th>
            <th scope="col">{deviation}</th>
            <th scope="col">× share</th>
            <th scope="col">=</th>
          </tr>
        </thead>
        <tbody>
          {sides.flatMap(({ side, sign, held }) =>
            held.map(({ reading, value, share }) => (
              <tr key={`${side} ${reading}`}>
                <th scope="row">
                  {names.get(reading) ?? 'Reading'}, {side}
                </th>
                <td>{deviationNumber(value, deviation)}</td>
                <td>{rounded(sign * share, 4)}</td>
                <td>{deviationNumber(sign * value * share, deviation)}</td>
              </tr>
            )),
          )}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Together</th>
            <td />
            <td />
            <td>{deviationNumber(answer.minimumZone, deviation)}</td>
          </tr>
        </tfoot>
      </table>
    </details>
  );
}
