import { disagrees } from '../../core/inspection/disagreement';
import type { Worked } from '../../state/answers';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { InTurns } from '../../widgets/in-turns';
import { KeyboardWay } from '../../widgets/keyboard-way';
import { MethodChanged } from '../record/method-changed';
import { ChecksSheet } from './checks-sheet';
import { ComparatorSheet } from './comparator-sheet';
import { DisagreementNote } from './disagreement-note';
import { FarRepeatsNote } from './far-repeats-note';
import { FindingSheet } from './finding-sheet';
import { FlatnessSheet } from './flatness-sheet';
import { FormSheet } from './form-sheet';
import { isOfPair, notFixedGroups } from './not-fixed-groups';
import { NotFixedSheet } from './not-fixed-sheet';
import { SidesSheet } from './sides-sheet';

interface AnswerPartProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
  /** True where what to take off stands beside it, and so in sight. */
  readonly areBeside: boolean;
  /** Goes on to what to take off, where that stands further down. */
  readonly onGoOn: () => void;
  /** Goes to where the readings are finished. */
  readonly onFinish: () => void;
}

/** What the readings mean: the verdicts first, then each pair of faces, then the comparator. */
export function AnswerPart(props: AnswerPartProps) {
  const { part, inspection, worked, areBeside, onGoOn, onFinish } = props;
  const { answer } = worked;
  const entry = inspection.closed?.part ?? part.entry;
  const unfixed = answer?.findings.filter(({ fixed }) => !fixed) ?? [];
  const lacks = unfixed.length > 0 || answer?.flatness.some(({ fixed }) => !fixed);
  // What is missing of a pair that is being read is told on the pair's own sheet.
  const groups = notFixedGroups(
    unfixed.filter((finding) => !answer?.sides.some((sides) => isOfPair(sides, finding))),
  );
  return (
    <>
      <div class="sheet-head">
        <h2 tabIndex={-1}>What they say</h2>
        {answer !== undefined && inspection.closed === undefined && (
          <button
            type="button"
            class="button button-quiet"
            aria-label="Finish, after the readings"
            onClick={onFinish}
          >
            Finish
          </button>
        )}
        <button
          type="button"
          class={`button button-quiet ${areBeside ? 'for-the-keyboard' : ''}`}
          onClick={onGoOn}
        >
          What to take off
        </button>
      </div>
      {lacks && <KeyboardWay to="[data-not-fixed]" name="To what is not fixed" />}
      <MethodChanged inspection={inspection} entry={entry} />
      {answer === undefined ? (
        <p class="note">{silenceInWords(worked)}</p>
      ) : (
        <InTurns>
          {disagrees(answer) ? (
            <DisagreementNote />
          ) : (
            answer.farRepeats && <FarRepeatsNote far={answer.farRepeats} inspection={inspection} />
          )}
          {answer.findings.map(
            (finding) =>
              finding.fixed && (
                <FindingSheet
                  key={finding.requirement.id}
                  finding={finding}
                  entry={entry}
                  inspection={inspection}
                  worked={worked}
                />
              ),
          )}
          {answer.flatness.map((finding) => (
            <FlatnessSheet
              key={finding.requirement.id}
              finding={finding}
              entry={entry}
              inspection={inspection}
            />
          ))}
          {groups.map((group) => (
            <NotFixedSheet
              key={group[0].requirement.id}
              group={group}
              entry={entry}
              inspection={inspection}
            />
          ))}
          {answer.sides.map((sides) => (
            <SidesSheet
              key={`${sides.faces[0]} ${sides.base}`}
              sides={sides}
              unfixed={unfixed.filter((finding) => isOfPair(sides, finding))}
              entry={entry}
              part={worked.part}
              inspection={inspection}
            />
          ))}
          {answer.forms.length > 0 && (
            <FormSheet
              forms={answer.forms}
              flatness={answer.flatness}
              part={worked.part}
              inspection={inspection}
            />
          )}
          <ChecksSheet answer={answer} inspection={inspection} />
          {answer.comparators.length > 0 && (
            <ComparatorSheet comparators={answer.comparators} inspection={inspection} />
          )}
        </InTurns>
      )}
    </>
  );
}

function silenceInWords({ silence }: Worked): string {
  switch (silence) {
    case 'part':
      return 'Nothing yet: the sizes of the part are missing, or wrong.';
    case 'kit':
      return 'Nothing yet: a figure of the kit is wrong, so the doubt cannot be told.';
    case 'wrong':
      return 'Nothing until what is marked among the readings is put right. What you typed stays.';
    case 'begun':
      return 'Nothing while a reading is half typed. What you typed stays.';
    case 'waiting':
      return 'A moment: what was typed is being worked out.';
    default:
      return 'Nothing yet: it grows here as the readings go in.';
  }
}
