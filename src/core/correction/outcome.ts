import type { Block } from '../part/block';
import { type Axis, areNeighbours, axesInFace, outwardNormal } from '../part/faces';
import { evaluate } from '../part/linear-form';
import { kindOf, type Requirement } from '../part/requirement';
import { combineDoubt, type DoubtComponent } from '../statistics/effective-degrees';
import { zoneForms } from '../zones/requirement-forms';
import type { Zone } from '../zones/zone';
import { changeOfUnknowns, type Removal } from './removal';

/** What working a face has really done, from the readings before and after. */
export interface Outcome extends DoubtComponent {
  /** µm taken off at the edge or corner that was to lose most, less what came off opposite. Negative: it went the wrong way. */
  readonly wedge: number;
}

/** A requirement with its zone before the work and after it. */
export interface Remeasured {
  readonly requirement: Pick<Requirement, 'face' | 'datum'>;
  readonly before: Zone;
  readonly after: Zone;
}

/**
 * The wedge that came off where `advised` was to come off, from every requirement that was measured
 * before and after and tells of the worked face. Each slope of the face is taken from the one that
 * knows it best: what several say is mostly the same readings. Undefined where one of the slopes
 * advised is not told by any, or none was advised.
 */
export function outcomeOf(
  advised: Removal,
  remeasured: readonly Remeasured[],
  block: Block,
): Outcome | undefined {
  const axes = axesInFace(advised.face).filter((axis) => (advised.slopes[axis] ?? 0) !== 0);
  const rises = axes.flatMap((axis) => bestRise(axis, advised, remeasured, block) ?? []);
  if (rises.length < axes.length || rises.length === 0) return undefined;
  return {
    wedge: rises.reduce((total, { before, after, gain }) => total + gain * (after - before), 0),
    ...combineDoubt(doubtsOf(rises)),
  };
}

/** One slope of the face as a requirement tells it: gain × (after - before) is its rise over the face, µm. */
interface Rise {
  readonly one: Remeasured;
  /** Which part of its zone. */
  readonly part: number;
  readonly gain: number;
  readonly before: number;
  readonly after: number;
  /** Standard uncertainty of the rise, µm. */
  readonly standard: number;
}

function bestRise(
  axis: Axis,
  advised: Removal,
  remeasured: readonly Remeasured[],
  block: Block,
): Rise | undefined {
  const rises = remeasured.flatMap((one) => riseOf(axis, advised, one, block) ?? []);
  return rises.sort((a, b) => a.standard - b.standard)[0];
}

function riseOf(
  axis: Axis,
  { face, slopes }: Removal,
  one: Remeasured,
  block: Block,
): Rise | undefined {
  const index = partAlong(axis, face, one.requirement);
  const [before, after] = [one.before.parts[index], one.after.parts[index]];
  if (before === undefined || after === undefined) return undefined;
  // What a slope of 1 taken off the face does to that part of the zone.
  const unit = changeOfUnknowns({ face, mean: 0, slopes: { [axis]: 1 } });
  const response = evaluate(zoneForms(one.requirement, block)[index]!, unit);
  const gain = (Math.sign(slopes[axis]!) * block.size[axis]) / response;
  const standard = Math.abs(gain) * Math.hypot(before.standard, after.standard);
  return { one, part: index, gain, before: before.value, after: after.value, standard };
}

/** Which part of its zone tells the slope of `worked` along `axis`; -1 where none does. */
function partAlong(
  axis: Axis,
  worked: Removal['face'],
  { face, datum }: Remeasured['requirement'],
) {
  if (worked !== face && worked !== datum) return -1;
  if (kindOf({ face, datum }) === 'parallelism') return axesInFace(face).indexOf(axis);
  const other = worked === face ? datum : face;
  return areNeighbours(other, worked) && outwardNormal(other).axis === axis ? 0 : -1;
}

/** The doubts of before and of after, which are independent of each other. */
function doubtsOf(rises: readonly Rise[]): readonly DoubtComponent[] {
  const [first, second] = rises;
  return (['before', 'after'] as const).flatMap((time) => {
    const doubts = rises.map(({ one, part, gain }) => ({
      standard: Math.abs(gain) * one[time].parts[part]!.standard,
      degreesOfFreedom: one[time].degreesOfFreedom,
    }));
    if (second === undefined || first!.one !== second.one) return doubts;
    // Both slopes from one zone: they hang together (GUM 5.2.2).
    const mixed = 2 * first!.gain * second.gain * first!.one[time].covariance;
    const squares = doubts.reduce((total, { standard }) => total + standard ** 2, 0);
    return [{ ...doubts[0]!, standard: Math.sqrt(Math.max(0, squares + mixed)) }];
  });
}
