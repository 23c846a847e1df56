/** Records in the order that they were made in. */
export function oldestFirst<R extends { readonly made: string }>(records: Iterable<R>): R[] {
  return [...records].sort((a, b) => a.made.localeCompare(b.made));
}
