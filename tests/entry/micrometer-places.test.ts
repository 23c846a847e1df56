import { describe, expect, it } from 'vitest';
import { depthBehind } from '../../src/core/part/block';
import { FACES, type Face, oppositeFace, outwardNormal } from '../../src/core/part/faces';
import type { MicrometerReading } from '../../src/core/readings/reading';
import { isUpright, placeEdges } from '../../src/entry/place-edges';
import { readSetups } from '../../src/entry/read-setups';
import { PART } from './support/part';
import { micrometerSetup } from './support/setups';

/*
 * A place 10 mm up and 4 mm in, on the block whose faces lie at x = ±30, y = ±20 and z = ±45: for
 * each face and each datum the two edges that it is measured from, and the point worked by hand.
 */
type Row = readonly [datum: Face, up: Face, across: Face, x: number, y: number, z: number];

const ON_SIDES: readonly Row[] = [
  ['bottom', 'bottom', 'front', 0, -16, -35],
  ['top', 'top', 'front', 0, -16, 35],
  ['front', 'front', 'bottom', 0, -10, -41],
  ['back', 'back', 'bottom', 0, 10, -41],
  ['right', 'bottom', 'front', 0, -16, -35],
  ['left', 'bottom', 'front', 0, -16, -35],
];

const ON_ENDS: readonly Row[] = [
  ['bottom', 'bottom', 'left', -26, 0, -35],
  ['top', 'top', 'left', -26, 0, 35],
  ['right', 'right', 'bottom', 20, 0, -41],
  ['left', 'left', 'bottom', -20, 0, -41],
  ['back', 'bottom', 'left', -26, 0, -35],
  ['front', 'bottom', 'left', -26, 0, -35],
];

const ON_FLATS: readonly Row[] = [
  ['right', 'right', 'front', 20, -16, 0],
  ['left', 'left', 'front', -20, -16, 0],
  ['front', 'front', 'left', -26, -10, 0],
  ['back', 'back', 'left', -26, 10, 0],
  ['top', 'front', 'left', -26, -10, 0],
  ['bottom', 'front', 'left', -26, -10, 0],
];

const ROWS: Readonly<Record<Face, readonly Row[]>> = {
  right: ON_SIDES,
  left: ON_SIDES,
  back: ON_ENDS,
  front: ON_ENDS,
  top: ON_FLATS,
  bottom: ON_FLATS,
};

describe.each(FACES)('places on the %s', (face) => {
  const nominal = String(depthBehind(PART.block, face));

  function pointOf(datum: Face, across: string) {
    const setup = micrometerSetup([['10', across, nominal]], [face, oppositeFace(face)]);
    const [reading] = readSetups([setup], { ...PART, datum }).readings as MicrometerReading[];
    return reading?.point;
  }

  it.each(ROWS[face])(
    'with the %s as datum: up from %s, in from %s',
    (datum, up, across, ...at) => {
      expect(placeEdges(face, datum)).toEqual({ up, across });
      const [x, y, z] = at;
      expect(pointOf(datum, '4')).toEqual({ x, y, z });
    },
  );

  it.each(ROWS[face])(
    'with the %s as datum, none across is the middle',
    (datum, _, across, ...at) => {
      const [x, y, z] = at;
      const { axis } = outwardNormal(across);
      expect(pointOf(datum, '')).toEqual({ x, y, z, [axis]: 0 });
    },
  );
});

it.each([
  ['right', 'bottom', true],
  ['front', 'top', true],
  ['top', 'bottom', false],
  ['left', 'right', false],
] as const)('the %s of a part that stands on its %s is upright: %s', (face, datum, upright) => {
  expect(isUpright(face, datum)).toBe(upright);
});
