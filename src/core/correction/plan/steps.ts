import type { Block } from '../../part/block';
import { axesInFace, type Face, faceTowards } from '../../part/faces';
import { pressDistances, pressPoint } from '../press-point';
import { atCorners, highSide, type Removal, volumeOf, wedgeOf } from '../removal';
import type { PlanStep } from './plan';
import type { PlanSolution } from './problem';
import { NOTHING } from './rounding';
import { meanOf, riseOf } from './rows';

/** The faces that a solution works; a face that nothing comes off is not among them. */
export function stepsOf(
  block: Block,
  faces: readonly Face[],
  solution: PlanSolution,
): readonly PlanStep[] {
  return faces.flatMap((face) => {
    const mean = solution.get(meanOf(face))!;
    if (mean < NOTHING) return [];
    const slopes = axesInFace(face).map((axis) => {
      const [up, down] = [1, -1].map(
        (sign) => solution.get(riseOf(face, faceTowards(axis, sign)))!,
      );
      const rise = up! - down!;
      return [axis, Math.abs(rise) < NOTHING ? 0 : rise / block.size[axis]] as const;
    });
    return [stepOf(block, { face, mean, slopes: Object.fromEntries(slopes) })];
  });
}

/** `removal` as a step: where it is high, how much, where to press. */
export function stepOf(block: Block, removal: Removal): PlanStep {
  return {
    face: removal.face,
    removal,
    corners: atCorners(block, removal),
    highSide: highSide(removal),
    wedge: wedgeOf(block, removal),
    volume: volumeOf(block, removal),
    pressPoint: pressPoint(block, removal),
    pressDistances: pressDistances(block, removal),
  };
}
