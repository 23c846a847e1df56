import {
  type AnyFinding,
  type AnyFixedFinding,
  allFindings,
} from '../../core/inspection/any-finding';
import { expanded } from '../../core/statistics/coverage';
import { type Worked, workOut } from '../../state/answers';
import { followed } from '../../state/chain';
import { type NextToRead, nextToRead } from '../../state/next-to-read';
import { shop } from '../../state/shop';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { Announced } from '../../widgets/announced';
import { VerdictBadge } from '../../widgets/verdict-badge';
import { requirementName } from '../../words/faces';
import { leanInWords } from '../../words/leans';
import { nextToReadInWords } from '../../words/next-to-read';
import { withDoubt } from '../../words/numbers';
import { VERDICT_LABELS } from '../../words/verdicts';

interface SoFarProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly onShow: () => void;
}

/** The answer in a line, always in sight while readings go in. */
export function SoFar({ part, inspection, onShow }: SoFarProps) {
  const now = followed(inspection);
  const worked = workOut(now, part.entry);
  const finding = mostTelling(allFindings(worked.answer));
  const line = lineOf(now, worked, finding);
  return (
    <>
      <button type="button" class="so-far" onClick={onShow}>
        <span>{line}</span>
        {finding && <VerdictBadge verdict={finding.verdict} />}
      </button>
      <Announced text={finding ? `${line}: ${VERDICT_LABELS[finding.verdict]}` : line} />
    </>
  );
}

/** The requirement that is worst off: it decides what happens next. */
function mostTelling(findings: readonly AnyFinding[]): AnyFixedFinding | undefined {
  const fixed = findings.filter((finding): finding is AnyFixedFinding => finding.fixed);
  const share = ({ zone, requirement }: AnyFixedFinding) => zone.width / requirement.tolerance;
  return [...fixed].sort((a, b) => a.probability - b.probability || share(b) - share(a))[0];
}

const SILENCES: Readonly<Record<NonNullable<Worked['silence']>, string>> = {
  part: 'The sizes of the part are missing',
  kit: 'A figure of the kit is wrong',
  wrong: 'Put right what is marked: no answer until then',
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
    return `${requirementName(requirement)}: ${withDoubt(zone.width, expanded(zone), deviation)}`;
  }
  const next = nextToRead(inspection, worked);
  if (next !== undefined && tellsMore(next)) return nextToReadInWords(next);
  if (worked.silence !== undefined) return SILENCES[worked.silence];
  for (const { faces, base, outOfSquare, difference } of worked.answer?.sides ?? []) {
    if (outOfSquare[0] !== undefined) return leanInWords(faces[0], base, outOfSquare[0]);
    if (difference !== undefined) {
      const by = withDoubt(Math.abs(difference.value), expanded(difference), deviation);
      return `The sides differ by ${by}. Which one leans: see what is missing`;
    }
  }
  return 'Not fixed yet: see what is missing';
}

function tellsMore({ requirements, difference }: NextToRead): boolean {
  return requirements.length > 0 || difference;
}
