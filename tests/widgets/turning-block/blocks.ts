import fc from 'fast-check';
import { pressPoint } from '../../../src/core/correction/press-point';
import {
  atCorners,
  type FaceSlopes,
  highSide,
  leastRemoval,
} from '../../../src/core/correction/removal';
import type { Triple } from '../../../src/core/part/block';
import { axesInFace, FACES, type Face } from '../../../src/core/part/faces';
import type {
  ShownBlock,
  ShownRemoval,
} from '../../../src/widgets/drawings/turning-block/shown-block';
import { MOST_TILT } from '../../../src/widgets/drawings/turning-block/view';
import { highSideName } from '../../../src/words/faces';

/** A block about as wide as it is high, a bar, and a slip. */
export const SIZES = {
  block: { x: 60, y: 40, z: 90 },
  bar: { x: 200, y: 20, z: 10 },
  slip: { x: 10, y: 100, z: 20 },
} as const;

/** The least that can come off `face` with these slopes, as the core works it out. */
export function removalOn(size: Triple, face: Face, slopes: FaceSlopes): ShownRemoval {
  const block = { size };
  const removal = leastRemoval(block, face, slopes);
  const side = highSide(removal);
  return {
    face,
    corners: atCorners(block, removal),
    highSide: side,
    highText: `${highSideName(side)} high`,
    press: pressPoint(block, removal),
  };
}

/** The right leans out at the top and the bottom is to be worked: its left edge is high. */
export function obtuseBlock(size: Triple = SIZES.block): ShownBlock {
  return {
    size,
    slopes: { bottom: { x: 0, y: 0 }, right: { z: 0.02 } },
    removals: [removalOn(size, 'bottom', { x: -0.02 })],
    datum: { face: 'bottom', letter: 'A' },
  };
}

const length = fc.double({ min: 2, max: 400, noNaN: true });
/** Either way, and not so near to nothing that rounding is all there is of it. */
const slope = fc
  .integer({ min: -500, max: 500 })
  .filter((thousandths) => thousandths !== 0)
  .map((thousandths) => thousandths / 10_000);

export const anySize = fc.record({ x: length, y: length, z: length });

const anySlopes = (face: Face) => {
  const [first, second] = axesInFace(face);
  return fc.record({ [first]: slope, [second]: slope }, { requiredKeys: [] });
};

/** Any block with any errors, and a wedge to come off one face. */
export const anyBlock: fc.Arbitrary<ShownBlock> = fc
  .tuple(
    anySize,
    fc.record(Object.fromEntries(FACES.map((face) => [face, anySlopes(face)])), {
      requiredKeys: [],
    }),
    fc.constantFrom(...FACES),
    fc.tuple(slope, slope),
  )
  .map(([size, slopes, face, [first, second]]) => {
    const [u, v] = axesInFace(face);
    return { size, slopes, removals: [removalOn(size, face, { [u]: first, [v]: second })] };
  });

export const anyView = fc.record({
  turn: fc.double({ min: 0, max: 360, noNaN: true }),
  tilt: fc.double({ min: -MOST_TILT, max: MOST_TILT, noNaN: true }),
});
