import fc from 'fast-check';
import { leastRemoval, type Removal } from '../../../src/core/correction/removal';
import { axesInFace, FACES } from '../../../src/core/part/faces';
import { BLOCK } from './worked-block';

const slope = fc.integer({ min: -50, max: 50 }).map((thousandths) => thousandths / 1000);

/** Slopes to come off some face; either may be 0, not both. */
const slopesOnFace = fc
  .tuple(fc.constantFrom(...FACES), slope, slope)
  .filter(([, first, second]) => first !== 0 || second !== 0)
  .map(([face, first, second]) => {
    const [u, v] = axesInFace(face);
    return { face, slopes: { [u]: first, [v]: second } };
  });

/** The least removal of some slopes from some face. */
export const removal: fc.Arbitrary<Removal> = slopesOnFace.map(({ face, slopes }) =>
  leastRemoval(BLOCK, face, slopes),
);
