import type { Estimate } from '../core/adjustment/adjustment';
import { type Face, oppositeFace } from '../core/part/faces';
import { faceLabel } from './faces';

/** Slopes below this, µm/mm, are nothing that could be shown. */
const NOTHING = 5e-6;

/** Which way a face leans: 'Right leans out at the top'. */
export function leanInWords(face: Face, base: Face, estimate: Pick<Estimate, 'value'>): string {
  if (Math.abs(estimate.value) < NOTHING) return `${faceLabel(face)} stands square`;
  const way = estimate.value > 0 ? 'out' : 'in';
  return `${faceLabel(face)} leans ${way} at the ${oppositeFace(base)}`;
}

/** How the thickness changes: 'Thicker towards the top'. */
export function taperInWords(base: Face, estimate: Pick<Estimate, 'value'>): string {
  if (Math.abs(estimate.value) < NOTHING) return 'No taper';
  return `Thicker towards the ${estimate.value > 0 ? oppositeFace(base) : base}`;
}

/** The length, mm, that the lean of a column is told over, by the unit of sizes. */
export const LEAN_OVER = {
  mm: { length: 100, name: 'per 100 mm' },
  in: { length: 25.4, name: 'per inch' },
} as const;
