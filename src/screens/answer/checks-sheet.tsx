import type { EquationCheck } from '../../core/adjustment/checks';
import type { InspectionAnswer } from '../../core/inspection/inspect';
import { uncheckedAmong } from '../../core/inspection/unchecked';
import { fieldOfReading } from '../../entry/field-of-reading';
import { namesWithSign } from '../../entry/reading-names';
import { swappedIn } from '../../entry/swapped-digits';
import { leaveOut, putBack } from '../../state/plate-changes';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { Fold } from '../../widgets/fold';
import { goToField } from '../../widgets/number-fields';
import {
  crownInWords,
  fitInWords,
  ifThisInWords,
  oneOfSuspectsInWords,
  orSlipInWords,
  suspectInWords,
  uncheckedInWords,
} from '../../words/checks';
import { deviationNumber, rounded, deviation as shown } from '../../words/numbers';

/** The id of the heading of the sheet. */
export const CHECKS = 'checks-heading';

interface ChecksSheetProps {
  readonly answer: InspectionAnswer;
  readonly inspection: InspectionRecord;
}

/** Whether the readings agree, which of them does not, and which nothing checks. */
export function ChecksSheet({ answer, inspection }: ChecksSheetProps) {
  const { deviation, size } = shop.value.units;
  const names = namesWithSign(inspection.setups);
  const nameOf = ({ reading }: Pick<EquationCheck, 'reading'>) => names.get(reading) ?? 'Reading';
  const unchecked = uncheckedAmong(answer.checks);
  return (
    <section class="sheet" aria-labelledby={CHECKS}>
      <h3 id={CHECKS} tabIndex={-1}>
        Do the readings agree?
      </h3>
      <p>{fitInWords(answer.fit)}</p>
      {answer.crowns.map((crown) => (
        <div key={`${crown.of} ${crown.face} ${crown.along}`} class="note note-warning stack">
          <p>{crownInWords(crown, deviation, size)}</p>
          {crown.orSlip.map((slip) => (
            <Slip key={slip.reading} slip={slip} inspection={inspection}>
              {orSlipInWords(nameOf(slip), slip, deviation)}
            </Slip>
          ))}
        </div>
      ))}
      <Suspects
        suspects={answer.suspects}
        beside={answer.crowns.length > 0}
        inspection={inspection}
        nameOf={nameOf}
      />
      <LeftOut inspection={inspection} names={names} />
      {unchecked.length > 0 && (
        <p class="soft small">{uncheckedInWords([...new Set(unchecked.map(nameOf))])}</p>
      )}
      <Residuals checks={answer.checks} nameOf={nameOf} />
    </section>
  );
}

interface SuspectsProps {
  readonly suspects: readonly EquationCheck[];
  /** True where a crown is told, which does not explain them. */
  readonly beside: boolean;
  readonly inspection: InspectionRecord;
  readonly nameOf: (check: EquationCheck) => string;
}

/** The reading that does not agree, or all those one of which does not. */
function Suspects({ suspects, beside, inspection, nameOf }: SuspectsProps) {
  const { deviation } = shop.value.units;
  if (suspects.length === 0) return null;
  const isOne = suspects.length === 1;
  return (
    <div class="note note-warning stack">
      {!isOne && <p>{oneOfSuspectsInWords(suspects.length, beside)}</p>}
      {suspects.map((suspect) => {
        const name = nameOf(suspect);
        const swapped = swappedIn(inspection.setups, suspect);
        return (
          <Slip key={suspect.reading} slip={suspect} inspection={inspection}>
            {isOne
              ? suspectInWords(name, suspect, deviation, beside, swapped)
              : ifThisInWords(name, suspect, deviation, swapped)}
          </Slip>
        );
      })}
    </div>
  );
}

interface SlipProps {
  readonly slip: EquationCheck;
  readonly inspection: InspectionRecord;
  readonly children: string;
}

/** A reading that may be a slip, the way to it, and the way to do without it. */
function Slip({ slip, inspection, children }: SlipProps) {
  const { deviation } = shop.value.units;
  const field = fieldOfReading(inspection.setups, slip.reading);
  return (
    <>
      <p>{children}</p>
      {inspection.closed === undefined && (
        <div class="row">
          {field !== undefined && (
            <button type="button" class="button" onClick={() => goToField(field)}>
              Go to it
            </button>
          )}
          <button
            type="button"
            class="button"
            onClick={() =>
              leaveOut(
                inspection,
                slip.reading,
                `Off by about ${shown(slip.blunder ?? 0, deviation)}`,
              )
            }
          >
            Leave it out
          </button>
        </div>
      )}
    </>
  );
}

interface LeftOutProps {
  readonly inspection: InspectionRecord;
  readonly names: ReadonlyMap<string, string>;
}

/** Readings that somebody took out of the reckoning, and why. */
function LeftOut({ inspection, names }: LeftOutProps) {
  return (
    <>
      {Object.entries(inspection.leftOut ?? {}).map(([reading, { why }]) => (
        <div key={reading} class="note">
          <p>
            {names.get(reading) ?? 'A reading'} is left out: {why}.
          </p>
          {inspection.closed === undefined && (
            <button type="button" class="button" onClick={() => putBack(inspection, reading)}>
              Put it back
            </button>
          )}
        </div>
      ))}
    </>
  );
}

interface ResidualsProps {
  readonly checks: readonly EquationCheck[];
  readonly nameOf: (check: EquationCheck) => string;
}

/** Every reading beside what the others say of it. */
function Residuals({ checks, nameOf }: ResidualsProps) {
  const { deviation } = shop.value.units;
  return (
    <Fold summary="Every reading">
      <table>
        <caption>
          Off: reading less what all of them together say. Checked: how much of a slip would show.
        </caption>
        <thead>
          <tr>
            <th scope="col">Reading</th>
            <th scope="col">off, {deviation}</th>
            <th scope="col">checked</th>
          </tr>
        </thead>
        <tbody>
          {checks.map((check, index) => (
            <tr key={`${check.reading} ${index}`}>
              <th scope="row">{nameOf(check)}</th>
              <td>{deviationNumber(check.residual, deviation)}</td>
              <td>{rounded(check.redundancy * 100, 0)}&nbsp;%</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Fold>
  );
}
