import { deviation, outOfSquare } from '../../../src/core/part/face-errors';
import type { Face } from '../../../src/core/part/faces';
import { evaluate } from '../../../src/core/part/linear-form';
import type { Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import type { Random } from './random';
import { micrometer, nose, traverse } from './readings';
import { someTruth } from './simulated-inspection';
import { BLOCK, CENTRE } from './worked-block';

const SIDES = ['right', 'left'] as const;
const PLACES = [
  [-15, -40],
  [15, -40],
  [-15, 40],
  [15, 40],
] as const;
const HEIGHTS = [10, 33, 57, 80] as const;
const LEAN = 0.4;
const ZERO = 32;

/**
 * Right and left read over and over: a nose comparator with `seatings` of each side, a micrometer
 * twice at each of four places, and a column up each side. The doubts of single readings are drawn
 * from `kit`, normal, apart from the equations of the core; heights are as they are set.
 */
export function repeatedReadings(
  kit: Kit,
  random: Random,
  seatings: number,
  seating = kit.seating,
): readonly Reading[] {
  const truth = someTruth(random);
  const draw = (standard: number) => standard * random.normal();
  const limit = (size: number) => draw(size / Math.sqrt(3));
  const shown = () => draw(kit.indicatorResolution / Math.sqrt(12)) + limit(kit.indicatorError);
  const tilt = () => (draw(seating) + limit(kit.plate)) / BLOCK.size.x;
  const rise = (side: Face) => evaluate(outOfSquare(side, 'bottom'), truth) + tilt();

  const swings = SIDES.flatMap((side) =>
    Array.from({ length: seatings }, (_, index) =>
      again(nose(side, ZERO + 74 * rise(side) + shown()), index),
    ),
  );
  const sweeps = SIDES.flatMap((side) => {
    const [zero, slope] = [random.between(-50, 50), LEAN + rise(side)];
    const at = HEIGHTS.map((height) => [height, zero + slope * height + shown()]);
    return traverse(side, Object.fromEntries(at));
  });
  const thicknesses = PLACES.flatMap(([y, z]) =>
    [0, 1].map((index) => {
      const real = SIDES.reduce(
        (total, side) => total + evaluate(deviation(side, { ...CENTRE, y, z }), truth),
        0,
      );
      const off = draw(kit.micrometerResolution / Math.sqrt(12)) + limit(kit.micrometerError);
      return again(micrometer('right', { y, z }, real + off), index);
    }),
  );
  return [...swings, ...thicknesses, ...sweeps];
}

/** The reading with an id of its own, as it is repeated. */
export function again<R extends Reading>(reading: R, index: number): R {
  return { ...reading, id: `${reading.id}, seating ${index + 1}` };
}

/** The same readings, `amount` µm on the one called `id`. */
export function withBlunder(
  readings: readonly Reading[],
  id: string,
  amount: number,
): readonly Reading[] {
  return readings.map((reading) => {
    if (reading.id !== id || reading.kind === 'assumed parallel') return reading;
    return reading.kind === 'micrometer'
      ? { ...reading, departure: reading.departure + amount }
      : { ...reading, value: reading.value + amount };
  });
}
