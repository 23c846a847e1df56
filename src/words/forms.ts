import type { FormAnswer } from '../core/inspection/forms';
import { type Axis, faceTowards } from '../core/part/faces';
import type { LengthUnit } from '../core/units/length';
import type { Bow } from '../core/zones/form/form-of';
import { deviation } from './numbers';

/**
 * What was read: 'Line up the right', 'Map of the top', 'Over the top'. A line is told from others up
 * the same face by what its placing is called: 'Line up the left on top'.
 */
export function formName({ of, face }: FormAnswer, placing: string = face): string {
  if (of === 'line') return `Line up the ${placing.charAt(0).toLowerCase()}${placing.slice(1)}`;
  return of === 'face' ? `Map of the ${face}` : `Over the ${face}`;
}

/** What the form is like: 'Crown of 2.00 µm from left to right.' */
export function shapeInWords(answer: FormAnswer, unit: LengthUnit): string {
  const bows = [answer.form.alongU, answer.form.alongV].flatMap((bow, index) => {
    const axis = answer.axes[index];
    return bow === undefined || axis === undefined ? [] : [bowInWords(bow, axis, unit)];
  });
  if (bows.length === 0) return 'Crown or hollow: not fixed by these places.';
  return `${bows.join('; ')}.`;
}

function bowInWords({ kind, rise }: Bow, axis: Axis, unit: LengthUnit): string {
  const way = `from ${faceTowards(axis, -1)} to ${faceTowards(axis, 1)}`;
  if (kind === 'straight') return `Straight ${way}`;
  return `${kind === 'crown' ? 'Crown' : 'Hollow'} of ${deviation(Math.abs(rise), unit)} ${way}`;
}
