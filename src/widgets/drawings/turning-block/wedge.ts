import type { Triple } from '../../../core/part/block';
import { areNeighbours, axesInFace, type Face } from '../../../core/part/faces';
import { outlineOf, squareOutlineOf } from './block-points';
import type { Shape } from './convex';
import type { DrawnBlock, DrawnRemoval } from './drawn-block';
import { cutBy, dot, type Plane, partOutOf } from './space';
import { faceIn, isInSight, type Stage, shapeIn } from './stage';

/*
 * The wedge to come off is the part of the block out of the finished plane. In the picture it is the
 * whole of the worked face, and a strip of each neighbour; strokes run round it like slices, closer
 * together where more comes off.
 */

export interface Wedge {
  /** The face to work, in sight or not. */
  readonly face: Shape;
  readonly inSight: boolean;
  /** Strokes over the face. */
  readonly strokes: readonly Shape[];
  /** What is seen of its sides, on the neighbours in sight. */
  readonly sides: readonly Shape[];
  readonly sideStrokes: readonly Shape[];
}

const SLICES = 15;

export function wedgeIn(stage: Stage, removal: DrawnRemoval): Wedge {
  const { block } = stage;
  const { face } = removal.shown;
  const inSight = isInSight(stage, face);
  const slices = slicesOf(block, removal);
  const sides = stage.inSight
    .filter((side) => areNeighbours(side, face))
    .map((side) => sideOf(block, removal, side));
  return {
    face: faceIn(stage, face),
    inSight,
    strokes: inSight ? strokesOn(stage, slices, outlineOf(block, face)) : [],
    sides: sides.filter((side) => side.length > 0).map((side) => shapeIn(stage, side)),
    sideStrokes: sides.flatMap((side) => strokesOn(stage, slices, side)),
  };
}

/** The side of the wedge that lies on a neighbour of the worked face; empty where nothing comes off there. */
export function sideOf(block: DrawnBlock, { finished }: DrawnRemoval, on: Face): readonly Triple[] {
  return partOutOf(finished, outlineOf(block, on));
}

/** Planes square to the worked face through places of equal removal. */
function slicesOf(block: DrawnBlock, { shown, growth }: DrawnRemoval): readonly Plane[] {
  const level = Math.sqrt(dot(growth, growth)) < 1e-12;
  const [first] = axesInFace(shown.face);
  const normal = level ? { x: 0, y: 0, z: 0, [first]: 1 } : growth;
  const heights = squareOutlineOf(block, shown.face).map((corner) => dot(normal, corner));
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  return Array.from({ length: SLICES }, (_, index) => {
    const share = ((index + 0.6) / SLICES) ** (level ? 1 : 1.5);
    return { normal, distance: high - (high - low) * share };
  });
}

function strokesOn(
  stage: Stage,
  slices: readonly Plane[],
  outline: readonly Triple[],
): readonly Shape[] {
  return slices.flatMap((slice) => {
    const stroke = cutBy(slice, outline);
    return stroke ? [shapeIn(stage, stroke)] : [];
  });
}
