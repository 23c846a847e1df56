import { clamp, drawable, finite } from './geometry';

/** Slopes in µm/mm, positive where the face leans outward at the top. */
export interface Leans {
  readonly left: number;
  readonly right: number;
}

export interface DrawnLeans {
  /** How far the top of each face stands outward, in units of the drawing. */
  readonly left: number;
  readonly right: number;
  /** How many times the drawn slopes are the true ones; absent where the block is drawn square. */
  readonly factor?: number;
}

/** Beyond this, what is drawn would be less than any comparator sees. */
const MOST = 100_000;

/** Room that the two faces take beside the base where the larger lean reaches out by `reach`. */
export function roomForLeans(leans: Leans | undefined, reach: number): Leans {
  const left = finite(leans?.left ?? 0);
  const right = finite(leans?.right ?? 0);
  const larger = Math.max(Math.abs(left), Math.abs(right)) || 1;
  return { left: Math.max(0, left / larger) * reach, right: Math.max(0, right / larger) * reach };
}

/** The leans as they are drawn on a face `height` units high: the larger one `reach` units out at the top. */
export function drawnLeans(leans: Leans | undefined, height: number, reach: number): DrawnLeans {
  const left = finite(leans?.left ?? 0) / 1000;
  const right = finite(leans?.right ?? 0) / 1000;
  const larger = Math.max(Math.abs(left), Math.abs(right));
  if (larger === 0) return { left: 0, right: 0 };
  const exact = Math.min(MOST, reach / (larger * drawable(height)));
  const factor = Number(exact.toPrecision(2));
  // Rounding the factor may go over the reach by a hair, which the room beside the block takes.
  const drawn = (slope: number) => clamp(slope * factor * height, -reach * 1.1, reach * 1.1);
  return { left: drawn(left), right: drawn(right), factor };
}

/** The factor as it is written: '4300', '43 000'. */
export function factorInWords(factor: number): string {
  const text = String(factor);
  return factor < 10_000 ? text : text.replace(/\B(?=(\d{3})+$)/g, '\u202f');
}
