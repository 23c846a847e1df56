/** Halvings after which an interval is taken as it is: a part in 2^40 of it is below rounding. */
const DEEPEST = 40;

/** Pieces to begin with, so that no narrow peak is stepped over. */
const PIECES = 64;

/**
 * ∫ f from `from` to `to` by adaptive Simpson quadrature with Richardson's correction (Lyness,
 * Journal of the ACM 16, 1969). A jump in f is closed in on, not refused. Where f is not a number,
 * neither is the integral.
 *
 * @param tolerance absolute error aimed at; no finer than rounding allows.
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
    total += refine(f, panelOf(a, a + step, f(a), f(a + step / 2), f(a + step)), {
      tolerance: tolerance / PIECES,
      depth: DEEPEST,
    });
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
  /** Area under |f|, and with it the size of the rounding. */
  readonly bulk: number;
}

function panelOf(a: number, b: number, fa: number, fm: number, fb: number): Panel {
  const sixth = (b - a) / 6;
  const bulk = sixth * (Math.abs(fa) + 4 * Math.abs(fm) + Math.abs(fb));
  return { a, b, fa, fm, fb, area: sixth * (fa + 4 * fm + fb), bulk };
}

function refine(
  f: (x: number) => number,
  whole: Panel,
  { tolerance, depth }: { readonly tolerance: number; readonly depth: number },
): number {
  const middle = (whole.a + whole.b) / 2;
  const left = panelOf(whole.a, middle, whole.fa, f((whole.a + middle) / 2), whole.fm);
  const right = panelOf(middle, whole.b, whole.fm, f((middle + whole.b) / 2), whole.fb);
  const change = left.area + right.area - whole.area;
  const enough = Math.max(15 * tolerance, 4 * Number.EPSILON * whole.bulk);
  // Written so that a change that is not a number ends the search too.
  const more = depth > 0 && Math.abs(change) > enough;
  if (!more) return left.area + right.area + change / 15;
  const halves = { tolerance: tolerance / 2, depth: depth - 1 };
  return refine(f, left, halves) + refine(f, right, halves);
}
