/** Records in the order that they were made in. */
export function oldestFirst<R extends { readonly made: string }>(records: Iterable<R>): R[] {
  return inOrderOf(records, ({ made }) => made);
}

/** The same by another time of each. */
export function inOrderOf<R>(records: Iterable<R>, timeOf: (record: R) => string): R[] {
  // As text, ISO 8601 sorts in the order of time.
  return [...records].sort((a, b) => (timeOf(a) < timeOf(b) ? -1 : timeOf(a) > timeOf(b) ? 1 : 0));
}
