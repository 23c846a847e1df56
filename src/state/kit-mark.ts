import { hashOfBytes } from '../core/statistics/hash';
import type { KitEntry } from '../entry/kit-entry';
import { shop } from './shop';

const marks = new WeakMap<KitEntry, number>();

/** A number that changes with the kit in use: what open readings say hangs on it. */
export function kitMark(): number {
  const { kit } = shop.peek();
  const known = marks.get(kit);
  if (known !== undefined) return known;
  const mark = hashOfBytes(new TextEncoder().encode(JSON.stringify(kit)));
  marks.set(kit, mark);
  return mark;
}
