/** `value` where there is one: a test that asks for a quantity that is not fixed has failed. */
export function known<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('Not fixed by the readings, or not there');
  return value;
}
