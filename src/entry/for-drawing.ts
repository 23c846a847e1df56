import { toMillimetres } from '../core/units/length';
import { readNumber } from './number';
import type { TypedLength } from './typed-length';

/** What was typed in mm, for a drawing that follows the typing: it may be half a number yet, or none. */
export function millimetresForDrawing(typed: TypedLength): number | undefined {
  const read = readNumber(typed.text);
  return read.ok ? toMillimetres(read.value, typed.unit) : undefined;
}
