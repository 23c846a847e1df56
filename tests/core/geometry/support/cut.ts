import type { Plan } from '../../../../src/core/correction/plan/plan';
import { changeOfUnknowns } from '../../../../src/core/correction/removal';
import { offsetOf, slopeOf } from '../../../../src/core/part/face-errors';
import type { Axis } from '../../../../src/core/part/faces';
import type { ExactBlock } from '../../support/exact-block';
import { plus } from '../../support/exact-vectors';
import { known } from '../../support/known';

/** The block with all that the plan takes off taken off. */
export function cut(block: ExactBlock, { steps }: Plan): ExactBlock {
  const errors = { ...block.errors };
  for (const { face, removal } of steps) {
    const change = changeOfUnknowns(removal);
    const along = (axis: Axis) => change.get(slopeOf(face, axis)) ?? 0;
    errors[face] = {
      offset: errors[face].offset + known(change.get(offsetOf(face))),
      slopes: plus(errors[face].slopes, [along('x'), along('y'), along('z')]),
    };
  }
  return { ...block, errors };
}
