/** Halvings after which an interval is taken as it is: a part in 2^40 of it is below rounding. */
const DEEPEST = 40;

/** Pieces to begin with, so that no narrow peak is stepped over. */
const PIECES = 64;

/**
 * ∫ f from `from` to `to` by adaptive Simpson quadrature with Richardson's correction (Lyness,
 * Journal of the ACM 16, 1969). A jump in f is closed in on, not refused.
 *
 * @param tolerance absolute error aimed at.
 */
export function integrate(
  f: (x: number) => number,
  from: number,
  to: number,
  tolerance: number,
): number {
  if (to <= from) return 0;
  const step = (to - from) / PIECES;
  let total = 0;
  for (let i = 0; i < PIECES; i += 1) {
    const a = from + i * step;
    total += refine(f, panel(f, a, a + step), tolerance / PIECES, DEEPEST);
  }
  return total;
}

interface Panel {
  readonly a: number;
  readonly b: number;
  readonly fa: number;
  readonly fm: number;
  readonly fb: number;
  readonly area: number;
}

function panel(f: (x: number) => number, a: number, b: number): Panel {
  return panelOf(a, b, f(a), f((a + b) / 2), f(b));
}

function panelOf(a: number, b: number, fa: number, fm: number, fb: number): Panel {
  return { a, b, fa, fm, fb, area: ((b - a) / 6) * (fa + 4 * fm + fb) };
}

function refine(f: (x: number) => number, whole: Panel, tolerance: number, depth: number): number {
  const middle = (whole.a + whole.b) / 2;
  const left = panelOf(whole.a, middle, whole.fa, f((whole.a + middle) / 2), whole.fm);
  const right = panelOf(middle, whole.b, whole.fm, f((middle + whole.b) / 2), whole.fb);
  const change = left.area + right.area - whole.area;
  if (depth === 0 || Math.abs(change) <= 15 * tolerance)
    return left.area + right.area + change / 15;
  return refine(f, left, tolerance / 2, depth - 1) + refine(f, right, tolerance / 2, depth - 1);
}
