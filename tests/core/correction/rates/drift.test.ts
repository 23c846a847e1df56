import { describe, expect, it } from 'vitest';
import { driftOf } from '../../../../src/core/correction/rates/drift';
import { learnRate } from '../../../../src/core/correction/rates/learn-rate';
import type { Pass } from '../../../../src/core/correction/rates/pass';
import { randomFrom } from '../../../../src/core/statistics/random';
import { known } from '../../support/known';
import { goodPasses, pass, shopFrom, USUAL } from './support/shops';

/** A tenth less from pass to pass, and a fifth up or down. */
const WEARING = Array.from({ length: 12 }, (_, index) =>
  pass(20, 8 * 0.9 ** index * Math.exp(0.2 * Math.sin(2.3 * index))),
);

function drift(passes: readonly Pass[]) {
  return driftOf(passes, learnRate(passes, USUAL));
}

describe('drift', () => {
  it('is seen where paper wears, the other way round where passes grow', () => {
    expect(drift(WEARING)).toMatchObject({ sense: 'slower', passes: 12 });
    expect(drift(WEARING.toReversed())).toMatchObject({ sense: 'faster', passes: 12 });
    expect(known(drift(WEARING)).probability).toBeLessThan(0.01);
  });

  it('is not seen in passes that only scatter', () => {
    expect(drift(goodPasses(12))?.sense).toBe('none');
  });

  it('cannot be seen in fewer than five passes, however they fall', () => {
    const falling = [9, 7, 5, 3, 1].map((wedge) => pass(20, wedge));
    const learned = learnRate(falling, USUAL);
    expect(driftOf(falling.slice(0, 4), learned)).toBeUndefined();
    expect(driftOf([], learned)).toBeUndefined();
    expect(driftOf(falling, learned)).toMatchObject({ sense: 'slower', probability: 2 / 120 });
    expect(driftOf(falling, learned, 0.01)).toBeUndefined();
  });

  it('looks at the last hundred passes', () => {
    const many = [
      ...WEARING,
      ...Array.from({ length: 100 }, (_, index) => goodPasses(100)[index]!),
    ];
    const learned = learnRate(WEARING, USUAL);
    expect(driftOf(many, learned)).toEqual(driftOf(many.slice(12), learned));
    expect(driftOf(many, learned)?.passes).toBe(100);
  });

  it.each([
    ['alike in length', () => 20],
    ['ever shorter', (count: number) => 60 * 0.7 ** count],
  ])('in passes %s is found where there is none no oftener than 1 time in 20', (_, amount) => {
    const shops = 300;
    let found = 0;
    for (let seed = 0; seed < shops; seed += 1) {
      const random = randomFrom(seed);
      const shop = shopFrom({ ...USUAL, logStandard: 0.1 }, random);
      const passes = Array.from({ length: 8 }, (_one, count) =>
        pass(amount(count), amount(count) * shop.next() + random.normal(), 1),
      );
      if (drift(passes)?.sense !== 'none') found += 1;
    }
    expect(found / shops).toBeLessThan(0.05 + 3 * Math.sqrt((0.05 * 0.95) / shops));
    expect(found).toBeGreaterThan(0);
  });

  it.each([0, 1, Number.NaN])('is refused at a significance of %d', (significance) => {
    expect(() => driftOf(WEARING, learnRate(WEARING, USUAL), significance)).toThrow(RangeError);
  });
});
