import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { inspect } from '../../../src/core/inspection/inspect';
import { outOfSquare } from '../../../src/core/part/face-errors';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, micrometer, nose, traverse } from '../support/readings';
import { BLOCK, partWith } from '../support/worked-block';

describe('right and left by nose comparator, back and front by column', () => {
  // The two pairs share no slope: right and left see the bottom's slope along x, back and front
  // the one along y. So each pair has the closed form of worked-cases.test.ts.
  const readings = [
    nose('right', 34),
    nose('left', 31),
    micrometer('right', { z: -40 }, 1),
    micrometer('right', { z: 40 }, 3),
    ...traverse('back', { 10: 4, 80: 31 }),
    ...traverse('front', { 10: 7, 80: 24 }),
    assumedParallel('back'),
  ];
  const answer = inspect(partWith([]), readings, DEFAULT_KIT, DEFAULT_LEVEL);

  it('answers each pair as it would alone', () => {
    expect(answer.sides.map((side) => side.faces)).toEqual([
      ['right', 'left'],
      ['back', 'front'],
    ]);
    const [right, left, back, front] = answer.sides
      .flatMap((side) => side.outOfSquare)
      .map((estimate) => known(estimate).value);
    expectClose(right, 3 / 148 + 0.0125);
    expectClose(left, -3 / 148 + 0.0125);
    expectClose(back, 5 / 70);
    expectClose(front, -5 / 70);
  });

  it('knows which of the pairs leans on an assumption', () => {
    expect(answer.sides.map((side) => side.assumed)).toEqual([false, true]);
  });
});

describe('one pair by nose comparator and by column, with two micrometer readings', () => {
  // Twice the same difference e(right) - e(left): 3/74 by the nose, 10/70 by the column. The best
  // value is their mean, weighted with 1/u². Heights set without doubt keep the sums short.
  const kit = { ...DEFAULT_KIT, heightSetting: 0 };
  const indicator = 1 / 12 + 0.5 ** 2 / 3; // µm²: resolution, then error
  const sit = (0.3 ** 2 + 0.5 ** 2 / 3) / 60 ** 2; // (µm/mm)²: seating, then plate
  const byNose = { value: 3 / 74, variance: 2 * (indicator / 74 ** 2 + sit) };
  const byColumn = { value: 10 / 70, variance: 2 * ((2 * indicator) / 70 ** 2 + sit) };
  const weights = [1 / byNose.variance, 1 / byColumn.variance] as const;
  const variance = 1 / (weights[0] + weights[1]);
  const difference = (byNose.value * weights[0] + byColumn.value * weights[1]) * variance;

  const equations = equationsOf(
    [
      nose('right', 34),
      nose('left', 31),
      ...traverse('right', { 10: 4, 80: 31 }),
      ...traverse('left', { 10: 7, 80: 24 }),
      micrometer('right', { z: -40 }, 1),
      micrometer('right', { z: 40 }, 3),
    ],
    BLOCK,
    kit,
  );
  const adjustment = adjust(equations);

  it('weighs the two differences by what they are worth', () => {
    const right = known(adjustment.estimate(outOfSquare('right', 'bottom')));
    expectClose(right.value, difference / 2 + 0.0125, { relative: 1e-9 });
  });

  it('states the standard uncertainty of the mean', () => {
    const right = known(adjustment.estimate(outOfSquare('right', 'bottom')));
    const taper = (2 * (1 / 12 + 0.5 ** 2 / 3)) / 80 ** 2;
    expectClose(right.standard, Math.sqrt(variance + taper) / 2, { relative: 1e-9 });
  });

  it('has one degree of freedom, and the misclosure of the two as its chi-square', () => {
    const misclosure = byNose.value - byColumn.value;
    expect(adjustment.degreesOfFreedom).toBe(1);
    expectClose(adjustment.chiSquare, misclosure ** 2 / (byNose.variance + byColumn.variance), {
      relative: 1e-9,
    });
  });
});
