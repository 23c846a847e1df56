/*
 * FNV-1a of 32 bits by Fowler, Noll and Vo (IETF draft-eastlake-fnv), in the public domain. It
 * spreads what differs; it hides nothing.
 */

const OFFSET_BASIS = 2166136261;
const PRIME = 16777619;

/** A whole number from 0 to 2³² - 1 that differs where the bytes do, but for 1 in 2³². */
export function hashOfBytes(bytes: Iterable<number>): number {
  let hash = OFFSET_BASIS;
  for (const byte of bytes) hash = Math.imul(hash ^ (byte & 0xff), PRIME);
  return hash >>> 0;
}

/** The same for numbers, from their 64 bits with the lowest byte first; -0 counts as 0. */
export function hashOfNumbers(numbers: readonly number[]): number {
  const view = new DataView(new ArrayBuffer(numbers.length * Float64Array.BYTES_PER_ELEMENT));
  numbers.forEach((number, index) => {
    view.setFloat64(index * Float64Array.BYTES_PER_ELEMENT, number + 0, true);
  });
  return hashOfBytes(new Uint8Array(view.buffer));
}
