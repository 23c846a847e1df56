import type { AnyFixedFinding } from '../../core/inspection/any-finding';
import { mayBeSlip } from '../../core/inspection/unchecked';
import { expanded } from '../../core/statistics/coverage';
import { sidesToSeat } from '../../entry/seat-each-again';
import { adviceOn } from '../../state/advice';
import type { Worked } from '../../state/answers';
import { type NextToRead, nextToRead } from '../../state/next-to-read';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { MAY_BE_SLIP, surerInWords } from '../../words/checks';
import { narrowsInWords, nextToReadInWords } from '../../words/next-to-read';
import { seatingsInWords } from '../../words/verdicts';

interface NextInBarProps {
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
  /** What the line above it tells. */
  readonly finding: AnyFixedFinding;
}

/** What the next reading will tell, or that nothing checks a figure far out, once there is an answer. It takes longer than that, and so follows it. */
export function NextInBar({ inspection, worked, finding }: NextInBarProps) {
  if (inspection.closed !== undefined) return null;
  const text = textOf(inspection, worked, finding);
  return text === undefined ? null : <span class="so-far-next">{text}</span>;
}

function textOf(
  inspection: InspectionRecord,
  worked: Worked,
  finding: AnyFixedFinding,
): string | undefined {
  if (mayBeSlip(finding, worked.answer?.checks ?? [])) return MAY_BE_SLIP;
  const next = nextToRead(inspection, worked);
  return next === undefined ? toSettle(inspection, worked, finding) : toRead(next, finding);
}

/** A reading that the sheets have a field for. */
function toRead(next: NextToRead, { requirement, zone }: AnyFixedFinding): string {
  const then = next.zones.get(requirement.id);
  if (next.requirements.length > 0 || then === undefined) return nextToReadInWords(next);
  const { deviation } = shop.value.units;
  return narrowsInWords(next.name, expanded(zone), expanded(then), deviation);
}

/** All is read: what would settle a verdict that cannot be given. */
function toSettle(
  { setups }: InspectionRecord,
  worked: Worked,
  finding: AnyFixedFinding,
): string | undefined {
  const { verdict, requirement } = finding;
  if (verdict !== 'too close to call') return undefined;
  if ('seatings' in finding && typeof finding.seatings === 'number') {
    return seatingsInWords(finding.seatings, sidesToSeat(setups, requirement));
  }
  // While readings go in, the bar must leave them room.
  const advised = adviceOn(worked)?.next;
  return advised && surerInWords(advised.remedy);
}
