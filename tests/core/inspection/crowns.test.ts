import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { crownShapes } from '../../../src/core/inspection/crown-shapes';
import { type InspectionAnswer, inspect } from '../../../src/core/inspection/inspect';
import { indicatorDoubt } from '../../../src/core/readings/doubts';
import { combined } from '../../../src/core/readings/equation';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { expectClose } from '../support/close';
import { crowned } from '../support/crowned';
import { known } from '../support/known';
import { manyRandoms, randomFrom } from '../support/random';
import { micrometer, nose, traverse } from '../support/readings';
import { again, repeatedReadings, withBlunder } from '../support/repeated-inspection';
import { BLOCK, partWith } from '../support/worked-block';

/** Heights known for certain, so that a crown's doubt is that of the indicator alone. */
const KIT = { ...DEFAULT_KIT, heightSetting: 0 };
const PART = partWith([]);
const SIGMA = combined(indicatorDoubt(KIT));
const CASES = 500;

function answerTo(readings: readonly Reading[], kit = KIT): InspectionAnswer {
  return inspect(PART, readings, kit, 0.95);
}

/** What was told, in short: 'right z +' for a crowned right side. */
function told({ crowns }: InspectionAnswer): readonly string[] {
  return crowns.map(({ face, along, rise }) => `${face} ${along} ${rise.value > 0 ? '+' : '-'}`);
}

/** Ids of all readings that were named, by themselves or as the slip that it may be instead. */
function named({ crowns, suspects }: InspectionAnswer): readonly string[] {
  const slips = crowns.flatMap(({ orSlip }) => orSlip);
  return [...slips, ...suspects].map(({ reading }) => reading);
}

function shareOf<T>(all: readonly T[], is: (one: T) => boolean): number {
  return all.filter(is).length / all.length;
}

/** The half width of three standard deviations of a share of `count` cases. */
const sampling = (share: number, count = CASES) => 3 * Math.sqrt((share * (1 - share)) / count);

describe.each([
  ['crown', 10, '+'],
  ['hollow', -10, '-'],
] as const)(`a %s of %d sigma in ${CASES} inspections`, (_, sigmas, sign) => {
  const rise = sigmas * SIGMA;
  const answers = manyRandoms(CASES, 31).map((random) =>
    answerTo(crowned(repeatedReadings(KIT, random, 3), rise)),
  );

  it('is told as such, on its face and on no other, in 98 of 100', () => {
    const right = (answer: InspectionAnswer) => told(answer).join() === `right z ${sign}`;
    expect(shareOf(answers, right)).toBeGreaterThanOrEqual(0.98);
  });

  it('leaves no reading suspect in 95 of 100: what it is or may be is said once', () => {
    // One of 28 readings at one in a thousand each: 97 of 100 are without.
    expect(shareOf(answers, ({ suspects }) => suspects.length === 0)).toBeGreaterThan(0.95);
  });

  it('is told with its size, which lies within 1.96 standard uncertainties in 95 of 100', () => {
    const estimates = answers.flatMap(({ crowns }) =>
      crowns.filter(({ face }) => face === 'right').map((crown) => crown.rise),
    );
    const within = shareOf(
      estimates,
      ({ value, standard }) => Math.abs(value - rise) <= 1.96 * standard,
    );
    expect(Math.abs(within - 0.95)).toBeLessThan(sampling(0.95));
    const mean = estimates.reduce((sum, { value }) => sum + value, 0) / estimates.length;
    const error = known(estimates[0]).standard / Math.sqrt(estimates.length);
    expect(Math.abs(mean - rise)).toBeLessThan(3 * error);
  });
});

describe(`a slip of ten sigma in one reading up the side, in ${CASES} inspections each`, {
  timeout: 60_000,
}, () => {
  const answersTo = (height: number) => {
    const id = known(traverse('right', { [height]: 0 })[0]).id;
    return manyRandoms(CASES, 97).map((random) => ({
      id,
      answer: answerTo(withBlunder(repeatedReadings(KIT, random, 3), id, 10 * SIGMA)),
    }));
  };

  it.each([33, 57])('at %d of 10 to 80 is told as that slip, and nothing else', (height) => {
    const right = shareOf(
      answersTo(height),
      ({ id, answer }) => answer.crowns.length === 0 && named(answer).join() === id,
    );
    expect(right).toBeGreaterThan(0.98);
  });

  // At an end the other three stand nearly as a hollow does: the correlation is 0.91 for them alone.
  it.each([10, 80])('at %d, an end, is named, by itself or beside a hollow', (height) => {
    const answers = answersTo(height);
    expect(shareOf(answers, ({ id, answer }) => named(answer).includes(id))).toBeGreaterThan(0.97);
    expect(shareOf(answers, ({ answer }) => told(answer).includes('right z -'))).toBeGreaterThan(
      0.05,
    );
    expect(shareOf(answers, ({ answer }) => told(answer).includes('right z +'))).toBe(0);
  });
});

describe('on flat faces', { timeout: 60_000 }, () => {
  const COUNT = 4000;
  const shapes = crownShapes(repeatedReadings(KIT, randomFrom(1), 3), BLOCK);
  const statistics = manyRandoms(COUNT, 4711).map((random) => {
    const adjustment = adjust(equationsOf(repeatedReadings(KIT, random, 3), BLOCK, KIT));
    return shapes.map(({ effects }) => known(adjustment.test(effects)).statistic);
  });

  it('right and left can be crowned, and are tested each', () => {
    expect(shapes.map(({ face, of, along, span }) => [face, of, along, span])).toEqual([
      ['right', 'face', 'z', 80],
      ['left', 'face', 'z', 80],
    ]);
  });

  // Two-sided points of the normal distribution, from any table.
  it.each([
    [3.290527, 0.001],
    [2.575829, 0.01],
    [1.959964, 0.05],
  ])('a crown beyond %d is found in a share of %d', (limit, share) => {
    shapes.forEach((_, index) => {
      const beyond = shareOf(statistics, (all) => Math.abs(all[index]!) > limit);
      expect(Math.abs(beyond - share)).toBeLessThan(sampling(share, COUNT));
      expect(beyond).toBeGreaterThan(0);
    });
  });

  it('a whole inspection tells of one no more often than that', () => {
    const answers = manyRandoms(1000, 8).map((random) =>
      answerTo(repeatedReadings(KIT, random, 3)),
    );
    // Two faces at one in a thousand: 2 ± 3·√2.
    expect(shareOf(answers, ({ crowns }) => crowns.length > 0)).toBeLessThanOrEqual(0.006);
  });
});

describe('a side read at three heights', () => {
  // 29.5 stands 12 µm over the chord of 4 and 31. Its variance is σ²·(1 + 1/4 + 1/4), by hand.
  const readings = traverse('right', { 10: 4, 45: 29.5, 80: 31 });

  it('has its crown, and a slip in any of the three would be as good', () => {
    const { crowns, suspects } = answerTo(readings);
    expect(crowns).toHaveLength(1);
    const crown = known(crowns[0]);
    expect(crown).toMatchObject({ face: 'right', of: 'face', along: 'z', byColumn: true });
    expectClose(crown.span, 70);
    expectClose(crown.rise.value, 12, { absolute: 1e-9 });
    expectClose(crown.rise.standard, SIGMA * Math.sqrt(1.5), { relative: 1e-9 });
    expect(crown.readings).toEqual(readings.map(({ id }) => id));
    expect(crown.orSlip.map(({ reading }) => reading)).toEqual(crown.readings);
    // By hand: the ends would be 24 low each, the middle 12 high.
    expect(crown.orSlip.map(({ blunder }) => Math.round(known(blunder)))).toEqual([-24, 12, -24]);
    expect(suspects).toEqual([]);
  });

  it('reads hollow where the middle stands back', () => {
    const [crown] = answerTo(traverse('right', { 10: 4, 45: 5.5, 80: 31 })).crowns;
    expectClose(crown?.rise.value, -12, { absolute: 1e-9 });
  });

  it('is crowned as much standing on its top', () => {
    const turned = traverse('right', { 10: 31, 45: 29.5, 80: 4 }, { base: 'top' });
    const [crown] = answerTo(turned).crowns;
    expectClose(crown?.rise.value, 12, { absolute: 1e-9 });
  });

  it('says nothing where the middle half was left out, or the indicator moved along the other axis', () => {
    expect(answerTo(traverse('right', { 10: 4, 12: 29.5, 80: 31 })).crowns).toEqual([]);
    expect(crownShapes(traverse('right', { 10: 0, 12: 0, 80: 0 }), BLOCK)).toEqual([]);
    expect(crownShapes(traverse('right', { 10: 0, 80: 0 }), BLOCK)).toEqual([]);
    const back = traverse('right', { 5: 0, 20: 0, 35: 0 }, { base: 'back' });
    expect(crownShapes(back, BLOCK).map(({ along }) => along)).toEqual(['y']);
  });

  it('is not crowned by what the heights may have been off', () => {
    // Leaning 20 µm a mm: a height that is out by 0.3 mm is 6 µm out.
    const leaning = traverse('right', { 10: 200, 45: 906, 80: 1600 });
    expect(answerTo(leaning).crowns).toHaveLength(1);
    const { crowns, suspects } = answerTo(leaning, DEFAULT_KIT);
    expect(crowns).toEqual([]);
    expect(suspects).toHaveLength(3);
  });
});

describe('beside a crown', () => {
  const heights = [10, 24, 38, 52, 66, 80];
  const side = (face: 'right' | 'left', bow: number) =>
    traverse(
      face,
      Object.fromEntries(heights.map((height) => [height, bow * (1 - ((height - 45) / 35) ** 2)])),
    );

  it('the other side’s is told as well, and no reading blamed', () => {
    const answer = answerTo([...side('right', 8), ...side('left', -6)]);
    expect(told(answer)).toEqual(['right z +', 'left z -']);
    expect(named(answer)).toEqual([]);
  });

  it('a slip that it does not explain is still named', () => {
    const seated = [0, 1, 2].flatMap((index) => [
      again(nose('right', 34), index),
      again(nose('left', index === 2 ? 51 : 31), index),
    ]);
    const answer = answerTo([...side('right', 20), ...seated]);
    expect(told(answer)).toEqual(['right z +']);
    expect(named(answer)).toEqual([known(seated.at(-1)).id]);
  });

  it('one slip that explains clearly more comes first', () => {
    const id = known(side('right', 0)[2]).id;
    const { crowns, suspects } = answerTo(withBlunder(side('right', 2), id, 40));
    expect(crowns).toEqual([]);
    expect(suspects.map(({ reading }) => reading)).toEqual([id]);
  });
});

describe('a face read over a grid', () => {
  const steps = [-1, 0, 1] as const;
  /** Nine places on the top, `shown` by x and y in steps. */
  const overTop = (shown: (x: number, y: number) => number): readonly Reading[] =>
    steps.flatMap((x) =>
      steps.map((y) => ({
        ...({ kind: 'over the top', placing: 'map', face: 'top' } as const),
        ...{ id: `${x} ${y}`, point: { x: 25 * x, y: 15 * y, z: 45 }, value: shown(x, y) },
      })),
    );

  it('is crowned along one axis and hollow along the other', () => {
    const answer = answerTo(overTop((x, y) => 9 * (1 - x * x) - 6 * (1 - y * y) + 2 * x + 5));
    expect(told(answer)).toEqual(['top x +', 'top y -']);
    expect(answer.crowns.map(({ span }) => span)).toEqual([50, 30]);
    answer.crowns.forEach(({ rise }, index) => {
      expectClose(rise.value, [9, -6][index]!, { absolute: 1e-9 });
      // The mean of the three in the middle less that of the six at the ends: σ²·(1/3 + 1/6).
      expectClose(rise.standard, SIGMA * Math.sqrt(0.5), { relative: 1e-9 });
    });
    expect(named(answer)).toEqual([]);
  });

  it('has a slip, not a crown, where one place stands out', () => {
    const answer = answerTo(overTop((x, y) => (x === 0 && y === 0 ? 9 : 0)));
    expect(answer.crowns).toEqual([]);
    expect(named(answer)).toEqual(['0 0']);
  });

  it('with the micrometer, is told of both faces together', () => {
    const readings = steps.flatMap((y) =>
      steps.map((z) => micrometer('left', { y: 15 * y, z: 40 * z }, 7 * (1 - z * z))),
    );
    const { crowns } = answerTo(readings);
    expect(crowns).toHaveLength(1);
    expect(crowns[0]).toMatchObject({
      of: 'thickness',
      face: 'right',
      along: 'z',
      byColumn: false,
    });
    expectClose(crowns[0]?.rise.value, 7, { absolute: 1e-9 });
  });

  it('with the micrometer as well as a column, is told of the face that the column shows', () => {
    const thick = [-40, -20, 0, 20, 40].map((z) => micrometer('right', { z }, 0));
    const both = crowned([...traverse('right', { 5: 0, 25: 0, 45: 0, 65: 0, 85: 0 }), ...thick], 6);
    expect(told(answerTo(both))).toEqual(['right z +']);
    // The column on the flat side: then it is the other face, or both together.
    const columnOnLeft = [...traverse('left', { 5: 0, 25: 0, 45: 0, 65: 0, 85: 0 })];
    const other = answerTo(crowned([...columnOnLeft, ...thick], 6));
    expect(other.crowns).toMatchObject([{ of: 'thickness', face: 'right', along: 'z' }]);
  });
});
