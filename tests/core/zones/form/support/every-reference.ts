import type { AnyPoint } from './certificate';

/**
 * The minimum zone as the greatest of those of all references (de la Vallée Poussin 1911): two
 * points and one more for each direction. Whole numbers keep every sum exact, so that only the
 * quotient is rounded.
 */
export function widthByEveryReference(points: readonly AnyPoint[], directions: 1 | 2): number {
  let width = 0;
  for (const some of subsets(points, directions + 2)) {
    const multipliers = some.map((_, left) => {
      const rest = some.filter((_point, index) => index !== left);
      return (left % 2 === 0 ? 1 : -1) * extent(rest, directions);
    });
    const total = multipliers.reduce((sum, one) => sum + Math.abs(one), 0);
    const apart = multipliers.reduce((sum, one, i) => sum + one * some[i]!.deviation, 0);
    if (total > 0) width = Math.max(width, (2 * Math.abs(apart)) / total);
  }
  return width;
}

/** Length from one point to another, or twice the area of three, with a sign. */
function extent(some: readonly AnyPoint[], directions: 1 | 2): number {
  const [a, b, c] = some as [AnyPoint, AnyPoint, AnyPoint];
  if (directions === 1) return b.u - a.u;
  return (b.u - a.u) * (c.v! - a.v!) - (c.u - a.u) * (b.v! - a.v!);
}

function* subsets<T>(all: readonly T[], size: number, from = 0): Generator<readonly T[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let i = from; i <= all.length - size; i += 1) {
    for (const rest of subsets(all, size - 1, i + 1)) yield [all[i]!, ...rest];
  }
}
