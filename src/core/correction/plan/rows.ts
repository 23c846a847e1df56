import { type Block, cornersOf } from '../../part/block';
import { offsetOf, slopeOf } from '../../part/face-errors';
import { axesInFace, FACES, type Face, faceTowards } from '../../part/faces';
import type { LinearForm } from '../../part/linear-form';

/** A limit of the program, by the names of its variables: `form` ≤ `limit`, both in µm. */
export interface PlanRow {
  readonly form: LinearForm;
  readonly limit: number;
}

/** Name of the mean removal from `face`, 0 or more, µm. */
export function meanOf(face: Face): string {
  return `mean off ${face}`;
}

/**
 * Name of how much more comes off `face` at its edge to `side` than at the one across, 0 or more,
 * µm. A rise, not a slope: then all variables are µm of about one size.
 */
export function riseOf(face: Face, side: Face): string {
  return `rise off ${face} towards ${side}`;
}

/** The neighbours that the removal from `face` may rise towards. */
export function sidesOf(face: Face): readonly Face[] {
  return axesInFace(face).flatMap((axis) => [faceTowards(axis, 1), faceTowards(axis, -1)]);
}

/** What cuts do to a `form` of the unknowns of faces, as a form of means and rises. */
export function changeByCuts(form: LinearForm, block: Block): LinearForm {
  const change = new Map<string, number>();
  for (const face of FACES) {
    const offset = form.get(offsetOf(face));
    if (offset !== undefined) change.set(meanOf(face), -offset);
    for (const axis of axesInFace(face)) {
      const slope = form.get(slopeOf(face, axis));
      if (slope === undefined) continue;
      const byRise = slope / block.size[axis];
      change.set(riseOf(face, faceTowards(axis, 1)), -byRise);
      change.set(riseOf(face, faceTowards(axis, -1)), byRise);
    }
  }
  return change;
}

/** Nothing may be put on: removal at the four corners of `face` is 0 or more. */
export function cornerRows(face: Face, block: Block): readonly PlanRow[] {
  return cornersOf(block, face).map(({ towards }) => {
    const rises = sidesOf(face).map(
      (side) => [riseOf(face, side), towards.includes(side) ? -1 / 2 : 1 / 2] as const,
    );
    return { form: new Map([[meanOf(face), -1], ...rises]), limit: 0 };
  });
}
