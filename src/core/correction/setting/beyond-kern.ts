import type { Block } from '../../part/block';
import { axesInFace, type Face } from '../../part/faces';
import type { FacePoint } from './kern';
import { type Contact, pressedAt } from './pressed-at';

/** A face that is pressed further out than it should be. */
export interface PressedBeyond {
  /** mm from where it should be pressed. */
  readonly further: number;
  readonly contact: Contact;
}

/**
 * How `face` lies where a hand presses not at `point` but further out, by `share` of the way from
 * there to the edges that it lies towards.
 *
 * @throws RangeError where the share is not from 0 up to, but not, 1.
 */
export function pressedBeyond(
  block: Block,
  face: Face,
  point: FacePoint,
  share: number,
): PressedBeyond {
  if (!(share >= 0 && share < 1)) throw new RangeError('A share lies between 0 and 1');
  const moves = axesInFace(face).map((axis) => {
    const from = point[axis] ?? 0;
    const by = Math.sign(from) * share * (block.size[axis] / 2 - Math.abs(from));
    return { axis, to: from + by, by };
  });
  const moved = Object.fromEntries(moves.map(({ axis, to }) => [axis, to]));
  return {
    further: Math.hypot(...moves.map(({ by }) => by)),
    contact: pressedAt(block, face, moved),
  };
}
