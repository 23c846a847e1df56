/** Positions that have been moved together: as far apart as they must be, round the mean of where they were. */
interface Group {
  readonly members: readonly number[];
  /** Of the wanted positions, each less its place in the row. */
  readonly mean: number;
}

/**
 * Moves positions apart until none is nearer than `gap` to the next, each as little as it takes, between
 * `low` and `high` as far as they all fit; in the order they were given.
 */
export function spread(
  positions: readonly number[],
  gap: number,
  low: number,
  high: number,
): readonly number[] {
  const order = positions.map((_, index) => index);
  order.sort((a, b) => (positions[a] ?? 0) - (positions[b] ?? 0));
  const wanted = order.map((index, place) => (positions[index] ?? 0) - place * gap);
  const last = high - (order.length - 1) * gap;
  const moved = [...positions];
  let place = 0;
  for (const { members, mean } of grouped(wanted)) {
    for (const _ of members) {
      moved[order[place] ?? 0] = Math.min(Math.max(mean, low), last) + place * gap;
      place += 1;
    }
  }
  return moved;
}

/** The nearest values to the wanted ones that never fall: neighbours that would are put on their mean. */
function grouped(wanted: readonly number[]): readonly Group[] {
  const groups: Group[] = [];
  for (const value of wanted) {
    let group: Group = { members: [value], mean: value };
    for (let last = groups.at(-1); last && last.mean > group.mean; last = groups.at(-1)) {
      const members = [...last.members, ...group.members];
      group = { members, mean: members.reduce((sum, one) => sum + one, 0) / members.length };
      groups.pop();
    }
    groups.push(group);
  }
  return groups;
}
