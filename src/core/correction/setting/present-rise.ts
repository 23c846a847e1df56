import type { Block } from '../../part/block';
import { type Axis, axesInFace, type Face, outwardNormal } from '../../part/faces';
import { highSide, type Removal } from '../removal';

/** How far a face must rise over its own length before a cut, as an indicator run over it shows. */
export interface PresentRise {
  readonly axis: Axis;
  /** The neighbour at the edge that must stand high. */
  readonly high: Face;
  /** µm from the low edge to the high one, above 0. */
  readonly rise: number;
}

/**
 * How the face must lie in the machine, so that a cut level with the machine takes `removal` off it:
 * the new face is to be level, and the face as it is stands above that by what comes off, high where
 * more comes off. Only the face itself is looked at; the one that it lies on may be as it will. An
 * axis along which it must indicate level is not among them.
 */
export function presentRises(block: Block, removal: Removal): readonly PresentRise[] {
  const high = highSide(removal);
  return axesInFace(removal.face).flatMap((axis) => {
    const edge = high.find((one) => outwardNormal(one).axis === axis);
    if (edge === undefined) return [];
    return [{ axis, high: edge, rise: Math.abs(removal.slopes[axis]!) * block.size[axis] }];
  });
}
