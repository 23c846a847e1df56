import type { Estimate } from '../core/adjustment/adjustment';
import { waysOf } from '../core/correction/plan/ways';
import { needOf } from '../core/inspection/need';
import type { Face } from '../core/part/faces';
import { isTheirMean } from '../core/readings/reversal';
import { expanded } from '../core/statistics/coverage';
import { withReading } from '../entry/placings';
import type { NoseComparatorSetup } from '../entry/setup-entry';
import { inUnit, isBlank } from '../entry/typed-length';
import type { InspectionRecord, PartRecord } from '../store/records';
import { adviceOn } from './advice';
import { type Worked, workOut } from './answers';
import { chain, latestInspection } from './chain';
import { changeSetup } from './plate-changes';

/** What is typed while the example is played through, µm. */
export const PLAYED = { first: { right: 41, left: 29 }, again: { right: 36, left: 34 } } as const;

/** What the two sides of the example have shown so far, µm. */
interface Shown {
  readonly right: number | undefined;
  readonly left: number | undefined;
  /** What the comparator shows on a square side, as the answer has it. */
  readonly zero: Estimate | undefined;
}

/** Both sides are read; the zero is undefined where nothing tells whether they are parallel. */
export interface BothRead {
  readonly right: number;
  readonly left: number;
  readonly zero: number | undefined;
}

/** What there is to see once both are read. */
export interface ZeroFound extends BothRead {
  /** True where the zero is the mean of the two: the sides are parallel, as far as was measured. */
  readonly isMean: boolean;
  /** True where somebody's word that they are parallel was taken for it. */
  readonly assumed: boolean;
  /** The face that the advice begins with; none where nothing is to come off. */
  readonly workFirst: Face | undefined;
}

/** What there is to see once both are read again after the work. */
export interface ReadAgain extends BothRead {
  /** True where the zero is elsewhere than before the work, beyond its doubt. */
  readonly hasMoved: boolean;
  /** True where all that the drawing asks is met. */
  readonly isIn: boolean;
}

/** Where somebody is who plays the example through. */
export type GuideStep =
  | { readonly kind: 'first side' }
  | { readonly kind: 'second side'; readonly right: number }
  | ({ readonly kind: 'zero falls out' } & ZeroFound)
  | { readonly kind: 'read again'; readonly micrometer: boolean }
  | ({ readonly kind: 'end' } & ReadAgain);

/** The step that the readings have come to. */
export function guideStep(
  part: PartRecord,
  inspection: InspectionRecord,
  worked: Worked,
): GuideStep {
  const shown = shownIn(worked);
  const before = beforeTheWork(inspection);
  if (before === undefined) return firstStep(shown, worked);
  return stepAfterWork(inspection, shown, worked, shownIn(workOut(before, part.entry)).zero);
}

function shownIn({ answer }: Worked): Shown {
  const readings = answer?.readings ?? [];
  const shownOn = (face: 'right' | 'left') =>
    readings.flatMap((reading) =>
      reading.kind === 'nose comparator' && reading.face === face ? [reading.value] : [],
    )[0];
  const zero = answer?.comparators.find(({ kind }) => kind === 'zero')?.estimate;
  return { right: shownOn('right'), left: shownOn('left'), zero };
}

function firstStep({ right, left, zero }: Shown, worked: Worked): GuideStep {
  if (right === undefined) return { kind: 'first side' };
  if (left === undefined) return { kind: 'second side', right };
  return {
    kind: 'zero falls out',
    right,
    left,
    zero: zero?.value,
    isMean: zero !== undefined && isTheirMean(zero.value, right, left),
    assumed: worked.answer?.sides.some(({ assumed }) => assumed) ?? false,
    workFirst: workedFirst(worked),
  };
}

/** The face that the advice begins with, as it stands under the answer. */
function workedFirst(worked: Worked): Face | undefined {
  const plans = adviceOn(worked)?.plans;
  if (worked.answer === undefined || plans === undefined) return undefined;
  const { wedge } = needOf(worked.answer);
  if (wedge === 'in' || wedge === 'not measured') return undefined;
  return waysOf(plans, 'stock').first.steps[0]?.face;
}

function stepAfterWork(
  { setups }: InspectionRecord,
  { right, left, zero }: Shown,
  { answer }: Worked,
  zeroBefore: Estimate | undefined,
): GuideStep {
  if (right === undefined || left === undefined) return { kind: 'read again', micrometer: false };
  const isOpen = setups.some(
    (setup) =>
      setup.kind === 'micrometer' && setup.places.some(({ thickness }) => isBlank(thickness)),
  );
  if (isOpen) return { kind: 'read again', micrometer: true };
  return {
    kind: 'end',
    right,
    left,
    zero: zero?.value,
    hasMoved: zero !== undefined && zeroBefore !== undefined && differ(zero, zeroBefore),
    isIn: answer !== undefined && needOf(answer).wedge === 'in',
  };
}

/** True where two estimates are further apart than their doubts explain. */
function differ(one: Estimate, other: Estimate): boolean {
  return Math.abs(one.value - other.value) > Math.hypot(expanded(one), expanded(other));
}

/** What was read before the last work that comes before `inspection`; none where there was no work. */
function beforeTheWork({ id, part }: InspectionRecord): InspectionRecord | undefined {
  const { part: open, links = [] } = chain.value ?? {};
  if (open !== part) return undefined;
  const before = links.slice(
    0,
    links.findIndex((link) => link.id === id),
  );
  const work = before.findLastIndex(({ kind }) => kind === 'work');
  return latestInspection(before.slice(0, Math.max(work, 0)));
}

/** Types other readings into the example's comparator, µm: as if its dial had been turned and both sides read again. */
export function typeIntoExample(
  inspection: InspectionRecord,
  shown: Readonly<Record<'right' | 'left', number>>,
): void {
  const setup = inspection.setups.find(
    (one): one is NoseComparatorSetup => one.kind === 'nose comparator',
  );
  if (setup === undefined) return;
  changeSetup(inspection, setup, (now) =>
    now.placings.reduce((changed, { id, face, reading }) => {
      if (face !== 'right' && face !== 'left') return changed;
      const typed = inUnit({ text: String(shown[face]), unit: 'µm' }, reading.unit);
      return withReading(changed, id, typed.text);
    }, now),
  );
}
