import { deviation, outOfSquare, slopeOf } from '../../../src/core/part/face-errors';
import {
  axesInFace,
  FACES,
  type Face,
  oppositeFace,
  outwardNormal,
} from '../../../src/core/part/faces';
import { evaluate } from '../../../src/core/part/linear-form';
import type { Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { leanOf, zeroOfSetting } from '../../../src/core/readings/unknowns';
import type { Random } from './random';
import { assumedParallel, micrometer, nose, traverse } from './readings';
import { BLOCK, CENTRE } from './worked-block';

/** What is true of a block and of the comparators that read it, by the names of the unknowns. */
export type Truth = ReadonlyMap<string, number>;

const ZERO = 32;
const LEAN = 0.4;
const WITHIN = 4;

/**
 * A block whose faces slope by up to 0.5 µm/mm. Back and front are parallel but for what "within
 * 4 µm" leaves open: each taper normal, with the standard uncertainty of ±4 µm over the face.
 */
export function someTruth(random: Random): Truth {
  const slopes = new Map(
    FACES.flatMap((face) =>
      axesInFace(face).map((axis) => [slopeOf(face, axis), random.between(-0.5, 0.5)] as const),
    ),
  );
  const tapers = axesInFace('front').map((axis) => {
    const taper = (random.normal() * WITHIN) / Math.sqrt(3) / BLOCK.size[axis];
    return [slopeOf('front', axis), taper - slopes.get(slopeOf('back', axis))!] as const;
  });
  return new Map([
    ...slopes,
    ...tapers,
    [zeroOfSetting('comparator'), ZERO],
    [leanOf('column'), LEAN],
  ]);
}

/**
 * Readings of that block as `kit` gives them, written apart from the equations of the core: every
 * doubt is drawn, normal, with the standard deviation that the kit states.
 */
export function simulatedReadings(truth: Truth, kit: Kit, random: Random): readonly Reading[] {
  const draw = (standard: number) => standard * random.normal();
  const step = (size: number) => draw(size / Math.sqrt(12));
  const limit = (size: number) => draw(size / Math.sqrt(3));
  const shown = () => step(kit.indicatorResolution) + limit(kit.indicatorError);
  const tilt = (face: Face) =>
    (draw(kit.seating) + limit(kit.plate)) / BLOCK.size[outwardNormal(face).axis];
  const lean = (face: Face) => evaluate(outOfSquare(face, 'bottom'), truth);

  const swing = (face: Face, setting: string) => {
    const leverError = draw(kit.heightSetting);
    return [face, oppositeFace(face)].map((side) => {
      const value = ZERO + (74 + leverError) * lean(side) + 74 * tilt(side) + shown();
      return nose(side, value, { setting });
    });
  };
  const sweep = (face: Face) =>
    [face, oppositeFace(face)].flatMap((side) => {
      const [zero, rise] = [random.between(-50, 50), LEAN + lean(side) + tilt(side)];
      const at = (height: number) => zero + (height + draw(kit.heightSetting)) * rise + shown();
      return traverse(side, { 10: at(10), 80: at(80) });
    });
  const thickness = (face: Face, y: number, z: number) => {
    const real = { ...CENTRE, y: y + draw(kit.heightSetting), z: z + draw(kit.heightSetting) };
    const departure = [face, oppositeFace(face)].reduce(
      (total, side) => total + evaluate(deviation(side, real), truth),
      step(kit.micrometerResolution) + limit(kit.micrometerError),
    );
    return micrometer(face, { y, z }, departure);
  };
  return [
    ...swing('right', 'comparator'),
    ...sweep('right'),
    // Three places fix both tapers, and so what a place that is missed along either axis does.
    thickness('right', -15, -40),
    thickness('right', 15, -40),
    thickness('right', 0, 40),
    ...swing('back', 'other comparator'),
    assumedParallel('back', WITHIN),
  ];
}
