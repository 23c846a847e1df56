import { type Block, depthBehind } from '../core/part/block';
import type { Face } from '../core/part/faces';
import { millimetresForDrawing } from './for-drawing';
import type { TypedLength } from './typed-length';

/** As near to the nominal thickness as a thickness that is read, mm. */
const NEAR = 0.25;

/** Nobody says more finely than this where a micrometer stood, mm. */
const TOO_FINE_FOR_A_PLACE = 0.1;

const ROUNDING = 1e-6;

/** True where what stands as a place of the micrometer looks like the thickness between the pair that `face` is of. */
export function looksLikeThickness(place: TypedLength, face: Face, block: Block): boolean {
  const typed = millimetresForDrawing(place);
  if (typed === undefined) return false;
  const off = Math.abs(typed - depthBehind(block, face));
  return off > ROUNDING && off <= NEAR && !isWhole(typed / TOO_FINE_FOR_A_PLACE);
}

function isWhole(number: number): boolean {
  return Math.abs(number - Math.round(number)) < ROUNDING;
}
