import type { Point } from '../geometry';
import { edgeOf } from './block-points';
import { pointBetween, type Shape } from './convex';
import type { DrawnRemoval } from './drawn-block';
import { meetingPoint } from './space';
import { isInSight, pointIn, type Stage, shapeIn } from './stage';

/** What stands high: the two ends of an edge, or one corner. */
export interface HighMark {
  readonly shape: Shape;
  /** Where its name may point to, the best first. */
  readonly targets: readonly Point[];
  /** False where the block hides it. */
  readonly inSight: boolean;
  readonly text: string;
}

/** The high edge or corner of a removal; none where the cut is level. */
export function highMark(stage: Stage, { shown }: DrawnRemoval): HighMark | undefined {
  const { face, highText, highSide } = shown;
  const [side, other] = highSide;
  if (side === undefined) return undefined;
  const inSight = [face, ...highSide].some((one) => isInSight(stage, one));
  const text = inSight ? highText : `${highText}, behind`;
  if (other === undefined) {
    const shape = shapeIn(stage, edgeOf(stage.block, face, side));
    return { shape, targets: alongEdge(shape), inSight, text };
  }
  const { faces } = stage.block;
  const corner = pointIn(stage, meetingPoint(faces[face], faces[side], faces[other]));
  return { shape: [corner], targets: [corner], inSight, text };
}

const SHARES = [0.5, 0.15, 0.85];

function alongEdge([a, b]: Shape): readonly Point[] {
  if (a === undefined || b === undefined) return [];
  return SHARES.map((share) => pointBetween(a, b, share));
}
