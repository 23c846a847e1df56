import { describe, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { outOfSquare, taper } from '../../../src/core/part/face-errors';
import { unknown } from '../../../src/core/part/linear-form';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { leanOf } from '../../../src/core/readings/unknowns';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, micrometer, nose, traverse } from '../support/readings';
import { BLOCK } from '../support/worked-block';

/*
 * Standard uncertainties in closed form, one cause at a time: the others are made so small that
 * they do not show. Limits count as rectangular (GUM 4.3.7: a/√3), a step as step/√12 (F.2.2.1).
 */
const NOTHING = 1e-9;
const EXACT: Kit = {
  indicatorResolution: NOTHING,
  indicatorError: NOTHING,
  seating: NOTHING,
  plate: NOTHING,
  micrometerResolution: NOTHING,
  micrometerError: NOTHING,
  heightSetting: 0,
  leverAngle: 0,
  leverWithin: 0,
  seatingDegrees: Number.POSITIVE_INFINITY,
  warmth: 0,
};
const SWUNG = [nose('right', 34), nose('left', 31), assumedParallel('right', NOTHING)];
const SWEPT = [
  ...traverse('right', { 10: 4, 80: 31 }),
  ...traverse('left', { 10: 7, 80: 24 }),
  assumedParallel('right', NOTHING),
];

function standardOf(
  form: ReturnType<typeof unknown>,
  readings: readonly Reading[],
  cause: Partial<Kit>,
) {
  const equations = equationsOf(readings, BLOCK, { ...EXACT, ...cause });
  return known(adjust(equations).estimate(form)).standard;
}

const ofRight = outOfSquare('right', 'bottom');

describe('the standard uncertainty of e(right) = (r - l)/2L + t/2 by a swung comparator', () => {
  it.each([
    ['resolution', { indicatorResolution: 1 }, Math.SQRT1_2 / 74 / Math.sqrt(12)],
    ['indicator error', { indicatorError: 0.5 }, (Math.SQRT1_2 / 74) * (0.5 / Math.sqrt(3))],
    // A block lifted by s over its length of 60 mm leans by s/60, whatever the lever.
    ['seating', { seating: 0.3 }, Math.SQRT1_2 * (0.3 / 60)],
    ['plate', { plate: 0.5 }, Math.SQRT1_2 * (0.5 / 60 / Math.sqrt(3))],
    // Both readings of the setting share the lever, and e scales with it; its ends are set apart.
    ['height', { heightSetting: 0.3 }, (3 / 148) * ((0.3 * Math.SQRT2) / 74)],
  ])('from %s', (_, cause, expected) => {
    expectClose(standardOf(ofRight, SWUNG, cause), expected, { relative: 1e-6 });
  });

  it('from the assumption: half of within/√3 over the height', () => {
    const loose = [nose('right', 34), nose('left', 31), assumedParallel('right', 2)];
    expectClose(standardOf(ofRight, loose, {}), 2 / Math.sqrt(3) / 90 / 2, { relative: 1e-6 });
  });
});

describe('the standard uncertainty by a column swept over 70 mm on both sides', () => {
  // e(right) = (slope right - slope left)/2, and each slope = (high - low)/70.
  it.each([
    ['resolution', { indicatorResolution: 1 }, 1 / 70 / Math.sqrt(12)],
    ['seating', { seating: 0.3 }, Math.SQRT1_2 * (0.3 / 60)],
    // Each height is set afresh. An error δ moves a reading by what the side rises there.
    [
      'height',
      { heightSetting: 0.3 },
      (0.3 / 140) * Math.sqrt(2 * ((27 / 70) ** 2 + (17 / 70) ** 2)),
    ],
  ])('from %s', (_, cause, expected) => {
    expectClose(standardOf(ofRight, SWEPT, cause), expected, { relative: 1e-6 });
  });

  it('is the same for the lean of the column', () => {
    const seating = standardOf(unknown(leanOf('column')), SWEPT, { seating: 0.3 });
    expectClose(seating, Math.SQRT1_2 * (0.3 / 60), { relative: 1e-6 });
  });
});

describe('the standard uncertainty of a taper by micrometer', () => {
  const upwards = taper('right', 'top');
  const corners = (rise: (y: number, z: number) => number) =>
    [-15, 15].flatMap((y) => [-40, 40].map((z) => micrometer('right', { y, z }, rise(y, z))));

  it('comes from the error between two places 80 mm apart', () => {
    const pair = [micrometer('right', { z: -40 }, 1), micrometer('right', { z: 40 }, 3)];
    const expected = (Math.SQRT2 / 80) * (0.5 / Math.sqrt(3));
    expectClose(standardOf(upwards, pair, { micrometerError: 0.5 }), expected, { relative: 1e-6 });
  });

  it.each([
    [1, 1],
    [1, -1],
    [0.5, 0],
  ])(
    'comes from places missed along both axes alike: tapers of %d and %d µm/mm',
    (alongY, alongZ) => {
      // t = mean of the upper two less mean of the lower two, over 80: four readings, each off by
      // alongY·δy + alongZ·δz with δy and δz independent.
      const readings = corners((y, z) => alongY * y + alongZ * z);
      const expected = (0.3 * Math.hypot(alongY, alongZ)) / 80;
      expectClose(standardOf(upwards, readings, { heightSetting: 0.3 }), expected, {
        relative: 1e-6,
      });
    },
  );

  it.each([0, 30, 1000])('is not touched by a size %d µm off the drawing', (off) => {
    const pair = [
      micrometer('right', { y: 10, z: -40 }, off + 1),
      micrometer('right', { y: 10, z: 40 }, off + 3),
    ];
    const expected = 0.3 * 0.025 * (Math.SQRT2 / 80);
    expectClose(standardOf(upwards, pair, { heightSetting: 0.3 }), expected, { relative: 1e-6 });
  });
});

describe('an assumption that says next to nothing', () => {
  it('still fixes the answer, and leaves it as doubtful as it is', () => {
    const vague = [nose('right', 34), nose('left', 31), assumedParallel('right', 1e6)];
    const expected = 1e6 / Math.sqrt(3) / 90 / 2;
    expectClose(standardOf(ofRight, vague, DEFAULT_KIT), expected, { relative: 1e-6 });
  });
});
