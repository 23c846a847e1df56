import type { Triple } from '../../../core/part/block';
import { type Axis, axesInFace, type Face, oppositeFace } from '../../../core/part/faces';
import type { Point } from '../geometry';
import { pointOn } from './block-points';
import type { Shape } from './convex';
import type { DrawnRemoval } from './drawn-block';
import { pointIn, type Stage, shapeIn } from './stage';
import { facing } from './view';

/** A cross in a ring that lies flat on a face. */
export interface CrossHair {
  readonly centre: Point;
  readonly ring: Shape;
  readonly arms: readonly Shape[];
}

/** Units of the drawing on a face that is seen squarely. */
const RING = 10;
const ARM = 19;
/** A face seen at a flatter angle shows no cross. */
const FLATTEST = 0.15;

/**
 * Where to press: on the worked face, and on the opposite one, which looks up while the other lies
 * on the paper and takes the finger.
 */
export function crossHairs(stage: Stage, { shown }: DrawnRemoval): readonly CrossHair[] {
  const { press, face } = shown;
  if (press === undefined) return [];
  return [face, oppositeFace(face)]
    .filter((one) => facing(stage.block, one, stage.eye) > FLATTEST)
    .map((one) => crossHair(stage, one, press));
}

function crossHair(
  stage: Stage,
  face: Face,
  place: Readonly<Partial<Record<Axis, number>>>,
): CrossHair {
  const centre = pointOn(stage.block, face, place);
  const [u, v] = axesInFace(face);
  const unit = 1 / stage.sheet.scale;
  const beside = (along: number, up: number): Triple => ({
    ...centre,
    [u]: centre[u] + along * unit,
    [v]: centre[v] + up * unit,
  });
  const ring = Array.from({ length: 32 }, (_, index) => {
    const angle = (index * Math.PI) / 16;
    return beside(RING * Math.cos(angle), RING * Math.sin(angle));
  });
  return {
    centre: pointIn(stage, centre),
    ring: shapeIn(stage, ring),
    arms: [
      shapeIn(stage, [beside(-ARM, 0), beside(ARM, 0)]),
      shapeIn(stage, [beside(0, -ARM), beside(0, ARM)]),
    ],
  };
}
