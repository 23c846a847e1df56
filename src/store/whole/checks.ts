/*
 * What a stored record is looked over with as it is read: a few plain functions, so that every record
 * can be looked over at the start. What comes from a file is looked over more strictly (`exchange/shape`).
 */

/** Whether a value is what the app takes it for. */
export type Check = (value: unknown) => boolean;

export const text: Check = (value) => typeof value === 'string';
export const flag: Check = (value) => typeof value === 'boolean';
export const number: Check = (value) => Number.isFinite(value);
export const moment: Check = (value) => text(value) && !Number.isNaN(Date.parse(value as string));

/** One of a few texts. */
export function oneOf(texts: readonly string[]): Check {
  return (value) => texts.includes(value as string);
}

export function list(of: Check): Check {
  return (value) => Array.isArray(value) && value.every(of);
}

/** Something by names that the app or a person gave. */
export function named(of: Check): Check {
  return (value) => isObject(value) && Object.values(value).every(of);
}

export type Checks = Readonly<Record<string, Check>>;

/** An object with all of `needed`; what is there of `optional` is as it should be, and what else is there is not looked at. */
export function fields(needed: Checks, optional: Checks = {}): Check {
  const [must, may] = [Object.entries(needed), Object.entries(optional)];
  return (value) =>
    isObject(value) &&
    must.every(([name, check]) => check(value[name])) &&
    may.every(([name, check]) => value[name] === undefined || check(value[name]));
}

/** An object of one of the kinds, each with a check of its own. */
export function byKind(checks: Checks): Check {
  return (value) => {
    if (!isObject(value) || !Object.hasOwn(checks, String(value.kind))) return false;
    return checks[String(value.kind)]?.(value) ?? false;
  };
}

/** The same check for each of `names`. */
export function forEach(names: readonly string[], check: Check): Checks {
  return Object.fromEntries(names.map((name) => [name, check]));
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
