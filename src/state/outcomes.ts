import { type Effect, effectOf } from '../core/correction/effects';
import { type Outcome, outcomeOf } from '../core/correction/outcome';
import { type Rate, rateOf } from '../core/correction/rate';
import { type Removal, wedgeOf } from '../core/correction/removal';
import { disagrees } from '../core/inspection/disagreement';
import type { Finding } from '../core/inspection/findings';
import type { Block } from '../core/part/block';
import { outwardNormal } from '../core/part/faces';
import { DEFAULT_LEVEL } from '../core/verdict/conformity';
import type { PartEntry } from '../entry/part-entry';
import { readCount } from '../entry/read-count';
import type { SetupEntry } from '../entry/setup-entry';
import type { InspectionRecord, WorkRecord } from '../store/records';
import { workOut } from './answers';
import { inspectionIn, type Link } from './chain';

type FixedFinding = Extract<Finding, { fixed: true }>;

/** What a piece of work has done, as the readings before and after it show. */
export interface WorkOutcome {
  /** Every requirement that was measured before and after. */
  readonly changes: readonly Change[];
  /** µm that were to come off at the high edge or corner. */
  readonly advised: number;
  /** What came off there; undefined where the readings do not tell it. */
  readonly outcome: Outcome | undefined;
  /** True where thicknesses after the work are those from before it: what is wrong with them is in both alike. */
  readonly takenOver: boolean;
  /** True where the readings before the work do not fit each other, or those after it. */
  readonly inDoubt: boolean;
  /** Where an amount of work was logged too, and the readings are to be trusted. */
  readonly rate: Rate | undefined;
}

/** One requirement before and after, and what was to become of it. */
export interface Change {
  readonly before: FixedFinding;
  readonly after: FixedFinding;
  readonly predicted: Effect['after'];
}

/**
 * The outcome of `work`, or undefined while no requirement is fixed by the readings both before and after it.
 *
 * @param read what works the readings out: what came off is the same with and without form.
 */
export function workOutcome(
  work: WorkRecord,
  links: readonly Link[],
  entry: PartEntry,
  read = workOut,
): WorkOutcome | undefined {
  const [last, next] = [inspectionBefore(work, links), inspectionAfter(work, links)];
  if (last === undefined || next === undefined) return undefined;
  const [before, after] = [read(last, entry), read(next, entry)];
  const block = before.part?.block;
  if (block === undefined) return undefined;
  const removal = removalAdvised(work);
  const changes = fixedOf(before.answer).flatMap((one) => {
    const other = fixedOf(after.answer).find((each) => asksTheSame(one, each));
    return other === undefined ? [] : [changeOf(one, other, removal, block)];
  });
  if (changes.length === 0) return undefined;
  const remeasured = changes.map((change) => ({
    requirement: change.before.requirement,
    before: change.before.zone,
    after: change.after.zone,
  }));
  const outcome = outcomeOf(removal, remeasured, block);
  const amount = readCount(work.amount.text).count;
  const inDoubt = [before, after].some(({ answer }) => answer !== undefined && disagrees(answer));
  const isTold = outcome !== undefined && amount !== undefined && !inDoubt;
  return {
    changes,
    advised: wedgeOf(block, removal),
    outcome,
    takenOver: next.setups.some((setup) => hasTakenOver(setup, removal)),
    inDoubt,
    rate: isTold ? rateOf(outcome, amount) : undefined,
  };
}

/** True for thicknesses that tell the wedge: those along a way that it slopes. */
function hasTakenOver(setup: SetupEntry, { slopes }: Removal): boolean {
  if (setup.kind !== 'micrometer') return false;
  const { axis } = outwardNormal(setup.faces[0]);
  return (slopes[axis] ?? 0) !== 0 && setup.places.some(({ takenOver }) => takenOver);
}

/** The removal that was advised, on its face. */
export function removalAdvised({ face, advised }: WorkRecord): Removal {
  return { face, ...advised };
}

function changeOf(
  before: FixedFinding,
  after: FixedFinding,
  removal: Removal,
  block: Block,
): Change {
  // The verdict to expect is no matter here: the level only serves that.
  const effect = effectOf(removal, before.requirement, before.zone, block, DEFAULT_LEVEL);
  return { before, after, predicted: effect.after };
}

function fixedOf(answer: ReturnType<typeof workOut>['answer']): readonly FixedFinding[] {
  return (answer?.findings ?? []).filter((finding): finding is FixedFinding => finding.fixed);
}

/** False where the line of the drawing has become another one since. */
function asksTheSame({ requirement: one }: FixedFinding, { requirement: other }: FixedFinding) {
  return one.id === other.id && one.face === other.face && one.datum === other.datum;
}

/** The inspection that `work` follows. */
export function inspectionBefore(
  work: WorkRecord,
  links: readonly Link[],
): InspectionRecord | undefined {
  return inspectionIn(links, work.after);
}

/** The readings that followed `work` with no other work between. */
function inspectionAfter(work: WorkRecord, links: readonly Link[]): InspectionRecord | undefined {
  const next = links[links.findIndex(({ id }) => id === work.id) + 1];
  return next?.kind === 'inspection' ? next : undefined;
}
