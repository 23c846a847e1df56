/** All of them by what `nameOf` says of each, groups and members in the order that they come in. */
export function groupedBy<T, K>(all: Iterable<T>, nameOf: (one: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const one of all) {
    const name = nameOf(one);
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [one]);
    else group.push(one);
  }
  return groups;
}
