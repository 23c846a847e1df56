import { type Outcome, outcomeOf } from '../core/correction/outcome';
import { type Rate, rateOf } from '../core/correction/rate';
import type { Finding } from '../core/inspection/findings';
import type { Face } from '../core/part/faces';
import type { Requirement } from '../core/part/requirement';
import type { PartEntry } from '../entry/part-entry';
import { readCount } from '../entry/read-count';
import type { InspectionRecord, WorkRecord } from '../store/records';
import { workOut } from './answers';
import type { Link } from './chain';

type FixedFinding = Extract<Finding, { fixed: true }>;

/** What a piece of work has done, as the readings before and after it show. */
export interface WorkOutcome {
  readonly before: FixedFinding;
  readonly after: FixedFinding;
  readonly outcome: Outcome;
  /** Where an amount of work was logged. */
  readonly rate: Rate | undefined;
}

/** The outcome of `work`, or undefined while the readings before and after do not both fix its requirement. */
export function workOutcome(
  work: WorkRecord,
  links: readonly Link[],
  entry: PartEntry,
): WorkOutcome | undefined {
  const next = nextInspection(work, links);
  const last = links.find(
    (link): link is InspectionRecord => link.kind === 'inspection' && link.id === work.after,
  );
  if (last === undefined || next === undefined) return undefined;
  const [before, after] = [last, next].map((inspection) => {
    const { answer } = workOut(inspection, entry);
    return answer?.findings.find(
      (finding): finding is FixedFinding =>
        finding.fixed && finding.requirement.id === work.requirement,
    );
  });
  const block = workOut(last, entry).part?.block;
  if (before === undefined || after === undefined || block === undefined) return undefined;
  if (!asksTheSame(before.requirement, after.requirement, work.face)) return undefined;
  const outcome = outcomeOf(before.requirement, work.face, before.zone, after.zone, block);
  const amount = readCount(work.amount.text).count;
  return {
    before,
    after,
    outcome,
    rate: amount === undefined ? undefined : rateOf(outcome, amount),
  };
}

/** False where the line of the drawing has become another one since, or was never about the worked face. */
function asksTheSame(before: Requirement, after: Requirement, worked: Face): boolean {
  const same = before.face === after.face && before.datum === after.datum;
  return same && (before.face === worked || before.datum === worked);
}

/** The readings that followed `work` with no other work between. */
function nextInspection(work: WorkRecord, links: readonly Link[]): InspectionRecord | undefined {
  const next = links[links.findIndex(({ id }) => id === work.id) + 1];
  return next?.kind === 'inspection' ? next : undefined;
}
