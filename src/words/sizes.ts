import type { PartEntry } from '../entry/part-entry';

/** The sizes as typed, X × Y × Z: '60 × 40 × 90 mm'; a question mark where one is missing. */
export function sizesInWords({ x, y, z }: PartEntry['size']): string {
  const sizes = [x, y, z].map(({ text }) => text.trim() || '?').join(' × ');
  return `${sizes} ${x.unit}`;
}
