import type { Triple } from '../../../core/part/block';
import type { Face } from '../../../core/part/faces';
import type { Point } from '../geometry';
import { outlineOf } from './block-points';
import type { Shape } from './convex';
import type { DrawnBlock } from './drawn-block';
import { onSheet, type Sheet } from './sheet';
import { isUnknown } from './shown-block';
import { type Eye, eyeOf, facesInSight, type View } from './view';

/** A block as it is looked at, on its sheet. */
export interface Stage {
  readonly block: DrawnBlock;
  readonly sheet: Sheet;
  readonly eye: Eye;
  readonly inSight: readonly Face[];
}

export function stageOf(block: DrawnBlock, sheet: Sheet, view: View): Stage {
  const eye = eyeOf(view);
  return { block, sheet, eye, inSight: facesInSight(block, eye) };
}

export function pointIn({ sheet, eye }: Stage, point: Triple): Point {
  return onSheet(sheet, eye, point);
}

export function shapeIn(stage: Stage, points: readonly Triple[]): Shape {
  return points.map((point) => pointIn(stage, point));
}

/** A face as it is now, in the picture. */
export function faceIn(stage: Stage, face: Face): Shape {
  return shapeIn(stage, outlineOf(stage.block, face));
}

export function isInSight({ inSight }: Stage, face: Face): boolean {
  return inSight.includes(face);
}

/** A face in sight, in the picture. */
export interface FaceInSight {
  readonly face: Face;
  readonly shape: Shape;
  readonly unknown: boolean;
}

export function faceInSight(stage: Stage, face: Face): FaceInSight {
  return { face, shape: faceIn(stage, face), unknown: isUnknown(stage.block.shown, face) };
}
