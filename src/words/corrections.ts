import type { PlanStep } from '../core/correction/plan/plan';
import { type Face, oppositeFace } from '../core/part/faces';
import type { LengthUnit } from '../core/units/length';
import { highSideName, lowSideName } from './faces';
import { deviation, place } from './numbers';

/** The cut in a sentence: 'The left edge of the bottom is high: take 1.22 µm off there, …'. */
export function correctionInWords({ face, highSide, wedge }: PlanStep, unit: LengthUnit): string {
  const [high, low] = [highSideName(highSide), lowSideName(highSide)];
  return `The ${high} of the ${face} is high: take ${deviation(wedge, unit)} off there, feathering to nothing at the ${low}.`;
}

/** Where to press, as distances in from the edges that are high: '20 mm from the left edge'. */
export function pressInWords(step: PlanStep, unit: 'mm' | 'in'): string {
  const places = step.pressDistances.map(
    ({ from, distance }) => `${place(distance, unit)} from the ${from} edge`,
  );
  const middle = places.length === 1 ? ', on the middle line' : '';
  return `Press ${places.join(' and ')}${middle}.`;
}

/**
 * What the cut does behind the face: the trap is that a face worked to be square to one is no longer
 * parallel to the other.
 */
export function sizeInWords(step: PlanStep, unit: LengthUnit): string {
  const { face, wedge } = step;
  const pair = `${face} to ${oppositeFace(face)}`;
  return `The size ${pair} loses up to ${deviation(wedge, unit)}, and the taper ${pair} changes by as much.`;
}

/** The face that lies down on the paper or faces the wheel, and so the one that looks up. */
export function workedFaceView(face: Face): string {
  return `Seen from above, through the part: its ${face} is down on the paper, its ${oppositeFace(face)} faces you.`;
}
