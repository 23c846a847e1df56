import type { Triple } from '../../../core/part/block';
import { FACES, type Face } from '../../../core/part/faces';
import { clamp } from '../geometry';
import type { DrawnBlock } from './drawn-block';
import { dot } from './space';

/** Where the block is looked at from, in degrees. */
export interface View {
  /** Round the vertical: 0 in front of the block, 90 at its right. */
  readonly turn: number;
  /** Up from the level: negative from below. */
  readonly tilt: number;
}

/** No higher above the block and no lower below it: its upright faces must stay to be seen. */
export const MOST_TILT = 45;

/** As the block stands before the hand: front, right and top in sight. */
export const STANDING: View = { turn: 22.5, tilt: 25 };

/** From below as far as shows the bottom well. */
export const BELOW = -35;

/** `view` moved on: its turn kept between 0 and 360, its tilt within its limits. */
export function movedOn(view: View, by: Partial<View>): View {
  return {
    turn: (((view.turn + (by.turn ?? 0)) % 360) + 360) % 360,
    tilt: clamp(view.tilt + (by.tilt ?? 0), -MOST_TILT, MOST_TILT),
  };
}

/** Degrees between the views that the buttons stop at: two upright faces are well seen in each. */
const STOP = 45;

/** From `turn` to the next stop in the direction of `sign`, in degrees; one that is near is passed over. */
export function toNextStop(turn: number, sign: 1 | -1): number {
  const stops = (sign * (turn - STANDING.turn)) / STOP;
  const next = Math.floor(stops + 1.25);
  return sign * STOP * (next - stops);
}

/** A view on the shorter way round from one to another: `share` of the way. */
export function betweenViews(from: View, to: View, share: number): View {
  const round = ((((to.turn - from.turn) % 360) + 540) % 360) - 180;
  return movedOn(from, { turn: share * round, tilt: share * (to.tilt - from.tilt) });
}

/** Directions, of length 1, that run right and up in the picture and out of it to the eye. */
export interface Eye {
  readonly right: Triple;
  readonly up: Triple;
  readonly towards: Triple;
}

/** The eye of a view: the picture is an orthographic projection along `towards`. */
export function eyeOf({ turn, tilt }: View): Eye {
  const [aside, ahead] = [Math.sin((turn * Math.PI) / 180), Math.cos((turn * Math.PI) / 180)];
  const [above, level] = [Math.sin((tilt * Math.PI) / 180), Math.cos((tilt * Math.PI) / 180)];
  return {
    right: { x: ahead, y: aside, z: 0 },
    up: { x: -above * aside, y: above * ahead, z: level },
    towards: { x: level * aside, y: -level * ahead, z: above },
  };
}

/** How squarely a face looks at the eye: 1 straight at it, 0 or less not at all. */
export function facing({ faces }: DrawnBlock, face: Face, { towards }: Eye): number {
  const { normal } = faces[face];
  return dot(normal, towards) / Math.sqrt(dot(normal, normal));
}

/** Less than this is a line, not a face. */
const EDGE_ON = 1e-6;

/** The faces in sight. The block is convex: no other hides any part of them. */
export function facesInSight(block: DrawnBlock, eye: Eye): readonly Face[] {
  return FACES.filter((face) => facing(block, face, eye) > EDGE_ON);
}
