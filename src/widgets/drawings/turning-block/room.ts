import { DRAWING_WIDTH } from '../geometry';
import { boxAt, hullOf, type Shape } from './convex';
import type { CrossHair } from './cross-hair';
import type { HighMark } from './high-mark';
import type { Sheet } from './sheet';
import type { Stage } from './stage';
import type { Wedge } from './wedge';

/** Where marks and texts may stand. */
export interface Room {
  readonly sheet: Shape;
  /** The outline of the whole block in the picture. */
  readonly block: Shape;
  /** What is there already: no text stands on it, and no line crosses it if it can help it. */
  readonly taken: readonly Shape[];
  /** What a text may not hide, but a line may cross. */
  readonly marks: readonly Shape[];
  /** What else no line crosses if it can help it. */
  readonly uncrossed: readonly Shape[];
}

/** What is drawn of the removals. */
export interface RemovalMarks {
  readonly wedges: readonly Wedge[];
  readonly highs: readonly HighMark[];
  readonly crossHairs: readonly CrossHair[];
}

export function roomAbout(
  { sheet }: Stage,
  faces: readonly { readonly shape: Shape }[],
  { wedges, highs, crossHairs }: RemovalMarks,
): Room {
  const { height, centre } = sheet;
  const hairs = crossHairs.map(({ arms }) => hullOf(arms.flat()));
  return {
    sheet: boxAt(centre, DRAWING_WIDTH - 6, height - 4),
    block: hullOf(faces.flatMap(({ shape }) => shape)),
    taken: [handleBox(sheet)],
    marks: [...hairs, ...highs.map(({ shape }) => shape), ...wedges.flatMap(({ sides }) => sides)],
    uncrossed: hairs,
  };
}

/** Side of the corner of the sheet that the handle lies over; its px are more units on a narrow screen. */
const HANDLE = 62;

function handleBox({ height }: Sheet): Shape {
  return boxAt({ x: DRAWING_WIDTH - HANDLE / 2, y: height - HANDLE / 2 }, HANDLE, HANDLE);
}
