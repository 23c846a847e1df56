/** Records in the order that they were made in. */
export function oldestFirst<R extends { readonly made: string }>(records: Iterable<R>): R[] {
  // As text, ISO 8601 sorts in the order of time.
  return [...records].sort((a, b) => (a.made < b.made ? -1 : a.made > b.made ? 1 : 0));
}
