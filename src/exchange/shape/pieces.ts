import * as v from 'valibot';
import { FACES } from '../../core/part/faces';
import { LENGTH_UNITS } from '../../core/units/length';
import { isTaken } from './plain-data';

/*
 * Shapes of what records are made of. An object has the fields that are named here and no others.
 */

export const face = v.picklist(FACES);
export const text = v.string();

/** Part of keys and addresses, so it holds nothing that could lead to another record. */
export const id = v.pipe(
  v.string(),
  v.regex(/^[\w-]{1,64}$/, 'An id has letters, digits, - and _ only'),
  v.check((name) => !isTaken(name), 'An id that every object answers to'),
);

/** Tells things within one record apart, and is part of no key and no address. */
export const innerId = v.pipe(
  v.string(),
  v.minLength(1),
  v.maxLength(100),
  v.check((name) => !isTaken(name), 'An id that every object answers to'),
);

/** A moment as the app writes it: ISO 8601 in UTC, to the millisecond. */
export const moment = v.pipe(
  v.string(),
  v.check(isMoment, 'A time is written like 2024-03-05T14:07:00.000Z, and is of this age'),
);

/** A clock that has lost its battery begins in 1970: what was entered by it is to come back too. */
function isMoment(written: string): boolean {
  const time = new Date(written);
  const year = time.getUTCFullYear();
  return year >= 1970 && year < 2200 && time.toISOString() === written;
}

/** Something by names that the app or a person gave. */
export function named<T extends v.GenericSchema>(value: T) {
  return v.record(v.pipe(v.string(), v.maxLength(200)), value);
}

/** Something for each of `names`, none left out. */
export function forEach<const N extends string, T extends v.GenericSchema>(
  names: readonly N[],
  value: T,
): Record<N, T> {
  return Object.fromEntries(names.map((name) => [name, value])) as Record<N, T>;
}

const plainLength = { text, unit: v.picklist(LENGTH_UNITS) };

export const typedLength = v.strictObject({
  ...plainLength,
  from: v.exactOptional(v.strictObject(plainLength)),
});
