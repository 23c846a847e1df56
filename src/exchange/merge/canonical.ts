/** JSON with the names of every object in order, so that equal data has equal text. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_, one: unknown) => (isObject(one) ? inOrder(one) : one));
}

function inOrder(object: Readonly<Record<string, unknown>>): unknown {
  return Object.fromEntries(Object.entries(object).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
