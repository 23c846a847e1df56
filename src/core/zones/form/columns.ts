import { dot } from './vectors';

/** One to three columns of a fit, all of one length. Those beyond `count` stand in for none. */
export interface Columns {
  readonly count: number;
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly c: Float64Array;
}

/** A factor for each column; 0 beyond the count. */
export interface Factors {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** @throws RangeError where there are not one to three columns. */
export function columnsOf(columns: readonly Float64Array[]): Columns {
  const [a, b = a, c = b] = columns;
  if (!a || !b || !c || columns.length > 3) throw new RangeError('One to three columns are needed');
  return { count: columns.length, a, b, c };
}

/** Σ column·numbers for each column. */
export function productsWith({ count, a, b, c }: Columns, numbers: Float64Array): Factors {
  return {
    a: dot(a, numbers),
    b: count > 1 ? dot(b, numbers) : 0,
    c: count > 2 ? dot(c, numbers) : 0,
  };
}

/** `from` less Σ factor·column, into `to`. */
export function takeOff(
  { a, b, c }: Columns,
  factors: Factors,
  from: Float64Array,
  to: Float64Array,
): void {
  const { a: p, b: q, c: r } = factors;
  for (let i = 0; i < to.length; i += 1) to[i] = from[i]! - p * a[i]! - q * b[i]! - r * c[i]!;
}

/** What `takeOff` leaves at one place. */
export function errorAt(
  { a, b, c }: Columns,
  factors: Factors,
  from: Float64Array,
  i: number,
): number {
  return from[i]! - factors.a * a[i]! - factors.b * b[i]! - factors.c * c[i]!;
}

/** Where `takeOff` would leave the greatest size. */
export function worstAt({ a, b, c }: Columns, factors: Factors, from: Float64Array): number {
  const { a: p, b: q, c: r } = factors;
  let worst = 0;
  let greatest = -1;
  for (let i = 0; i < from.length; i += 1) {
    const error = Math.abs(from[i]! - p * a[i]! - q * b[i]! - r * c[i]!);
    if (error > greatest) {
      worst = i;
      greatest = error;
    }
  }
  return worst;
}

/** Where the size of Σ factor·column is greatest, when each counts `floor` + |weight| times. */
export function furthestAt(
  { a, b, c }: Columns,
  factors: Factors,
  weights: Float64Array,
  floor: number,
): number {
  const { a: p, b: q, c: r } = factors;
  let furthest = 0;
  let greatest = -1;
  for (let i = 0; i < a.length; i += 1) {
    const along = p * a[i]! + q * b[i]! + r * c[i]!;
    const size = (floor + Math.abs(weights[i]!)) * Math.abs(along);
    if (size > greatest) {
      furthest = i;
      greatest = size;
    }
  }
  return furthest;
}
