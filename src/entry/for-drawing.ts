import { readTyped, type TypedLength } from './typed-length';

/** What was typed in mm, for a drawing that follows the typing: it may be half a number yet, or none. */
export function millimetresForDrawing(typed: TypedLength): number | undefined {
  const read = readTyped(typed);
  return read.kind === 'length' ? read.length / 1000 : undefined;
}
