import type { Effect } from '../core/correction/effects';
import type { CorrectionOption } from '../core/correction/options';
import { type Face, oppositeFace } from '../core/part/faces';
import type { LengthUnit } from '../core/units/length';
import { highSideName, lowSideName, requirementName } from './faces';
import { deviation, place } from './numbers';
import { VERDICT_LABELS } from './verdicts';

/** The correction in a sentence: 'The left edge of the bottom is high by 1.22 µm; …'. */
export function correctionInWords(option: CorrectionOption, unit: LengthUnit): string {
  const high = highSideName(option.highSide);
  const low = lowSideName(option.highSide);
  return `The ${high} of the ${option.face} is high by ${deviation(option.wedge, unit)}. Take that off there, feathering to nothing at the ${low}.`;
}

/** Where to press, as distances in from the edges that are high: '20 mm from the left edge'. */
export function pressInWords(option: CorrectionOption, unit: 'mm' | 'in'): string {
  const places = option.pressDistances.map(
    ({ from, distance }) => `${place(distance, unit)} from the ${from} edge`,
  );
  const middle = places.length === 1 ? ', on the middle line' : '';
  return `Press ${places.join(' and ')}${middle}.`;
}

/** What the cut takes off the size behind the face. */
export function sizeInWords(option: CorrectionOption, unit: LengthUnit): string {
  const pair = `${option.face} to ${oppositeFace(option.face)}`;
  return `The size ${pair} loses up to ${deviation(option.wedge, unit)}.`;
}

/** What the cut does to one requirement. */
export function effectInWords(effect: Effect, unit: LengthUnit): string {
  const { requirement, before, after, verdict } = effect;
  const change = `${deviation(before.width, unit)} becomes ${deviation(after.width, unit)}`;
  return `${requirementName(requirement)}: ${change}, ${VERDICT_LABELS[verdict].toLowerCase()}`;
}

/** The face that lies down on the paper or faces the wheel, and so the one that looks up. */
export function workedFaceView(face: Face): string {
  return `Seen from above, through the part: its ${face} lies on the paper, its ${oppositeFace(face)} looks up at you.`;
}
