import { useMemo } from 'preact/hooks';
import { type AnyFixedFinding, allFindings, isPending } from '../../core/inspection/any-finding';
import { disagrees } from '../../core/inspection/disagreement';
import { worstOff } from '../../core/inspection/worst-off';
import { expanded } from '../../core/statistics/coverage';
import { readingNames } from '../../entry/reading-names';
import { type Worked, workOut } from '../../state/answers';
import { followed } from '../../state/chain';
import { type NextToRead, nextToRead } from '../../state/next-to-read';
import { shop } from '../../state/shop';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { Announced } from '../../widgets/announced';
import { Later } from '../../widgets/later';
import { goToMarked } from '../../widgets/number-fields';
import { VerdictBadge } from '../../widgets/verdict-badge';
import { DISAGREEMENT, doesNotRepeatInWords } from '../../words/checks';
import { requirementName } from '../../words/faces';
import { leanInWords } from '../../words/leans';
import { nextToReadInWords } from '../../words/next-to-read';
import { keptTogether, deviation as shown, withDoubt } from '../../words/numbers';
import { VERDICT_LABELS } from '../../words/verdicts';
import { NextInBar } from './next-in-bar';

interface SoFarProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly onShow: () => void;
}

/**
 * The answer in a line, always in sight while readings go in. Whether they disagree, and what the next
 * one will tell, takes longer: that follows from the record as the screen has it, after the frame of a key.
 */
export function SoFar({ part, inspection, onShow }: SoFarProps) {
  const now = followed(inspection);
  const worked = workOut(now, part.entry);
  const drawn = workOut(inspection, part.entry);
  const next = useNext(inspection, drawn);
  const finding = worstOff(allFindings(worked.answer));
  const told = lineOf(now, worked, finding);
  const doubtful = inDoubt(inspection, drawn);
  const line = doubtful === undefined ? told : `${told}. ${doubtful}`;
  return (
    <>
      <button type="button" class="so-far" onClick={() => goToMarked() || onShow()}>
        <span>
          {line}
          {finding && <Later turns={2}>{next}</Later>}
        </span>
        {finding && !isPending(finding) && <VerdictBadge verdict={finding.verdict} />}
      </button>
      <Announced
        text={finding && !isPending(finding) ? `${line}: ${VERDICT_LABELS[finding.verdict]}` : line}
      />
    </>
  );
}

/** What makes the figure doubtful beyond its ±. */
function inDoubt({ setups }: InspectionRecord, { answer }: Worked): string | undefined {
  if (answer === undefined) return undefined;
  if (disagrees(answer)) return DISAGREEMENT;
  const [first] = answer.farRepeats?.readings ?? [];
  return first && doesNotRepeatInWords(readingNames(setups).get(first) ?? 'It');
}

/** What the next reading will tell. */
function useNext(inspection: InspectionRecord, worked: Worked) {
  return useMemo(() => {
    const finding = worstOff(allFindings(worked.answer));
    return finding && <NextInBar inspection={inspection} worked={worked} finding={finding} />;
  }, [worked, inspection]);
}

const SILENCES: Readonly<Record<NonNullable<Worked['silence']>, string>> = {
  part: 'The sizes of the part are missing',
  kit: 'A figure of the kit is wrong',
  wrong: 'Put right what is marked: no answer until then',
  begun: 'Half typed: no answer until it is whole',
  waiting: 'Working out what was typed…',
  'nothing read': 'No reading yet',
};

function lineOf(
  inspection: InspectionRecord,
  worked: Worked,
  finding: AnyFixedFinding | undefined,
): string {
  const { deviation } = shop.value.units;
  if (finding !== undefined) {
    const { zone, requirement } = finding;
    const withForm = 'withForm' in finding ? finding.withForm : undefined;
    const width =
      withForm === undefined
        ? keptTogether(withDoubt(zone.width, expanded(zone), deviation))
        : `${shown(withForm.width, deviation)} with form`;
    return `${requirementName(requirement)}: ${width}`;
  }
  // Nothing more is read once they are finished.
  const next = inspection.closed === undefined ? nextToRead(inspection, worked) : undefined;
  if (next !== undefined && tellsMore(next)) return nextToReadInWords(next);
  if (worked.silence !== undefined) return SILENCES[worked.silence];
  for (const { faces, base, outOfSquare, difference } of worked.answer?.sides ?? []) {
    if (outOfSquare[0] !== undefined) return leanInWords(faces[0], base, outOfSquare[0]);
    if (difference !== undefined) {
      const by = withDoubt(Math.abs(difference.value), expanded(difference), deviation);
      return `The sides differ by ${keptTogether(by)}. ${next ? nextToReadInWords(next) : 'Which one leans: see what is missing'}`;
    }
  }
  return next ? `Not fixed yet. ${nextToReadInWords(next)}` : 'Not fixed yet: see what is missing';
}

function tellsMore({ requirements, difference }: NextToRead): boolean {
  return requirements.length > 0 || difference;
}
