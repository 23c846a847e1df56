/** Numbers that may be without end: a doubt that is taken for certain has so many degrees of freedom. */
const ENDLESS = /degrees/i;

/** Every number in `value`, however deep, that is none, by the way to it: NaN, or without end. */
export function unsound(value: unknown, way = ''): readonly string[] {
  const found: string[] = [];
  look(value, way, found, new Set());
  return found;
}

function look(value: unknown, way: string, found: string[], seen: Set<object>): void {
  if (typeof value === 'number') {
    const sound =
      Number.isFinite(value) || (value === Number.POSITIVE_INFINITY && ENDLESS.test(way));
    if (!sound) found.push(`${way}: ${value}`);
    return;
  }
  if (typeof value !== 'object' || value === null || seen.has(value)) return;
  seen.add(value);
  if (value instanceof Map) for (const [key, one] of value) look(one, `${way}.${key}`, found, seen);
  else if (value instanceof Set) for (const one of value) look(one, `${way}.*`, found, seen);
  // What is worked out when it is asked for is asked for here.
  else for (const [key, one] of Object.entries(value)) look(one, `${way}.${key}`, found, seen);
}

/** `value` and all in it, not to be changed from now on. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null)
    for (const one of Object.values(value)) frozen(one);
  return Object.freeze(value);
}
