/** A corner of a polygon in a plane. */
export type Corner = readonly [u: number, v: number];

/** a + b·u + c·v over the plane. */
export type Plane = readonly [a: number, b: number, c: number];

export function heightAt([a, b, c]: Plane, [u, v]: Corner): number {
  return a + b * u + c * v;
}

/**
 * The part of a convex polygon where `plane` is above 0: Sutherland and Hodgman, Communications of
 * the ACM 17 (1974), for one edge.
 */
export function wherePositive(polygon: readonly Corner[], plane: Plane): readonly Corner[] {
  return polygon.flatMap((corner, index) => {
    const next = polygon[(index + 1) % polygon.length]!;
    const [here, there] = [heightAt(plane, corner), heightAt(plane, next)];
    const kept = here > 0 ? [corner] : [];
    if (here > 0 === there > 0) return kept;
    const share = here / (here - there);
    const crossing: Corner = [
      corner[0] + share * (next[0] - corner[0]),
      corner[1] + share * (next[1] - corner[1]),
    ];
    return [...kept, crossing];
  });
}

/** Area of a convex polygon whose corners go round to the left. */
export function areaOf(polygon: readonly Corner[]): number {
  return momentsOf(polygon)[0]!;
}

/**
 * ∫ over a convex polygon of 1, u, v times 1, u, v: nine numbers in rows. Exact, over triangles T:
 * ∫ f·g = |T|/12·(Σf·Σg + Σf·g) for linear f and g, summed over the corners.
 */
export function momentsOf(polygon: readonly Corner[]): readonly number[] {
  const moments = new Array<number>(9).fill(0);
  for (let index = 1; index + 1 < polygon.length; index += 1) {
    const corners = [polygon[0]!, polygon[index]!, polygon[index + 1]!] as const;
    const values = [[1, 1, 1], corners.map(([u]) => u), corners.map(([, v]) => v)] as const;
    const area = triangleArea(corners);
    for (let row = 0; row < 3; row += 1) {
      for (let column = 0; column < 3; column += 1) {
        const [f, g] = [values[row]!, values[column]!];
        const products = f.reduce((total, one, at) => total + one * g[at]!, 0);
        moments[3 * row + column]! += (area / 12) * (sum(f) * sum(g) + products);
      }
    }
  }
  return moments;
}

function triangleArea([a, b, c]: readonly [Corner, Corner, Corner]): number {
  return ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
