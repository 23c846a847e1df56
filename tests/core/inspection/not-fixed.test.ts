import { describe, expect, it } from 'vitest';
import { advise } from '../../../src/core/inspection/advise';
import { inspect } from '../../../src/core/inspection/inspect';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { HALF } from '../support/advised';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, micrometer, nose, traverse } from '../support/readings';
import { partWith, requirement } from '../support/worked-block';

const TWO_HEIGHTS = { kind: 'micrometer at two heights', face: 'right', base: 'bottom' };
const PARALLEL = { kind: 'assume parallel', face: 'right' };
const BOTH_SIDES = { kind: 'compare both sides', faces: ['right', 'left'], base: 'bottom' };

function answerTo(readings: readonly Reading[], ...requirements: Parameters<typeof partWith>[0]) {
  return inspect(partWith(requirements), readings, DEFAULT_KIT, DEFAULT_LEVEL);
}

describe('both sides read and nothing said of the taper', () => {
  const answer = answerTo([nose('right', 34), nose('left', 31)], requirement('right', 'bottom'));
  const sides = known(answer.sides[0]);

  it('leaves out-of-square, taper and zero open, and knows the difference', () => {
    expect(sides.outOfSquare).toEqual([undefined, undefined]);
    expect(sides.taper).toBeUndefined();
    expect(answer.comparators[0]?.estimate).toBeUndefined();
    expectClose(sides.difference?.value, 3);
  });

  it('names exactly the two things that would settle it', () => {
    expect(sides.remedies).toEqual([[TWO_HEIGHTS], [PARALLEL]]);
    expect(answer.findings[0]).toEqual({
      fixed: false,
      requirement: requirement('right', 'bottom'),
      remedies: [[TWO_HEIGHTS], [PARALLEL]],
    });
  });

  it('gives nothing to go by for a correction', () => {
    const part = partWith([requirement('right', 'bottom')]);
    const { best, single } = advise(part, answer, HALF).plans;
    for (const plan of [best, ...single]) {
      expect(plan).toMatchObject({ possible: true, steps: [], effects: [] });
    }
  });
});

describe('only one side read', () => {
  it.each([
    [
      'nose comparator',
      [nose('right', 34)],
      { kind: 'swing to the other side', setting: 'comparator', face: 'left' },
    ],
    [
      'column',
      traverse('right', { 10: 4, 80: 31 }),
      { kind: 'traverse the other side', column: 'column', face: 'left' },
    ],
  ] as const)('with a %s: the other side and the taper are missing', (_, readings, other) => {
    const answer = answerTo(readings, requirement('right', 'bottom'));
    const sides = known(answer.sides[0]);

    expect(sides.outOfSquare).toEqual([undefined, undefined]);
    expect(sides.difference).toBeUndefined();
    expect(answer.comparators[0]?.estimate).toBeUndefined();
    expect(sides.remedies).toEqual([
      [other, TWO_HEIGHTS],
      [other, PARALLEL],
      [TWO_HEIGHTS, BOTH_SIDES],
      [PARALLEL, BOTH_SIDES],
    ]);
  });

  it('needs nothing but the swing where the taper is known', () => {
    const taper = [micrometer('right', { z: -40 }, 1), micrometer('right', { z: 40 }, 3)];
    const [sides] = answerTo([nose('right', 34), ...taper]).sides;
    const swing = { kind: 'swing to the other side', setting: 'comparator', face: 'left' };
    expect(sides?.remedies).toEqual([[swing], [BOTH_SIDES]]);
  });
});

describe('nothing compared', () => {
  it.each([
    ['one height of a column', traverse('right', { 10: 4 })],
    ['a nose as high as the indicator', [nose('right', 4, { low: 80, high: 80 })]],
  ])('has no difference to state: %s', (_, readings) => {
    expect(answerTo(readings).sides[0]?.difference).toBeUndefined();
  });

  it('says nothing of a part without readings but what to do', () => {
    const answer = answerTo([], requirement('right', 'bottom'));
    expect(answer.sides).toEqual([]);
    expect(answer.findings[0]).toMatchObject({
      fixed: false,
      remedies: [
        [TWO_HEIGHTS, BOTH_SIDES],
        [PARALLEL, BOTH_SIDES],
      ],
    });
  });
});

describe('a nose above the indicator', () => {
  it('states the difference over the same lever, the readings turned over', () => {
    const [sides] = answerTo([
      nose('right', 31, { low: 80, high: 6 }),
      nose('left', 34, { low: 80, high: 6 }),
    ]).sides;
    expect(sides?.reach).toBe(74);
    expectClose(sides?.difference?.value, 3);
  });
});

describe('parallelism', () => {
  const PARALLEL_SIDES = requirement('right', 'left');
  const corner = (y: number, z: number, departure: number) =>
    micrometer('right', { y, z }, departure);

  it('is not proved by the assumption of it', () => {
    const answer = answerTo([assumedParallel('right')], PARALLEL_SIDES);
    expect(answer.findings[0]?.fixed).toBe(false);
  });

  it('wants any three corners where none was measured', () => {
    const [finding] = answerTo([], PARALLEL_SIDES).findings;
    if (finding === undefined || finding.fixed) throw new Error('fixed by no reading');
    expect(finding.remedies).toHaveLength(4);
    for (const remedy of finding.remedies) expect(remedy).toHaveLength(3);
  });

  it('wants one of the two corners off the line of those measured, the assumption set aside', () => {
    const measured = [corner(-20, -45, 0), corner(20, 45, 2), assumedParallel('right')];
    const [finding] = answerTo(measured, PARALLEL_SIDES).findings;
    const at = (...towards: string[]) => [
      { kind: 'micrometer at a corner', face: 'right', towards },
    ];
    expect(finding).toEqual({
      fixed: false,
      requirement: PARALLEL_SIDES,
      remedies: [at('back', 'bottom'), at('front', 'top')],
    });
  });
});
