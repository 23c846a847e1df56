import { readLengthText } from '../entry/length-text';
import type { PartEntry } from '../entry/part-entry';
import { lengthIn, type TypedLength } from '../entry/typed-length';

/** The sizes, X × Y × Z: '60 × 40 × 90 mm'; a question mark where one is missing. */
export function sizesInWords({ x, y, z }: PartEntry['size']): string {
  return `${[x, y, z].map(sizeIn).join(' × ')} ${x.unit}`;
}

/** One of them with its unit: '3.25 in'. */
export function sizeInWords(typed: TypedLength): string {
  return `${sizeIn(typed)} ${typed.unit}`;
}

/** A size without its unit, as typed: but for a sum, or one with a unit of its own, among factors. */
function sizeIn({ text, unit }: TypedLength): string {
  const read = readLengthText(text, unit);
  const isMore = read.kind === 'length' && read.from !== 'number';
  return isMore ? lengthIn(read.length, unit) : text.trim() || '?';
}
