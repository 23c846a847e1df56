import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chooseSpread,
  ENOUGH_DEGREES,
  pooled,
  repeatability,
} from '../../../src/core/statistics/pooled';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { VOLTAGE_STANDARD } from './reference/voltage-standard';

const reading = fc.integer({ min: -500, max: 500 }).map((tenths) => tenths / 10);
const groups = fc.array(fc.array(reading, { maxLength: 6 }), { maxLength: 6 });
const CERTAIN = Number.POSITIVE_INFINITY;

describe('the voltage standard of GUM H.5', () => {
  it('the standard deviation of all days together', () => {
    const { dailyDeviations, readingsADay } = VOLTAGE_STANDARD;
    const all = known(
      pooled(dailyDeviations.map((standard) => ({ standard, degreesOfFreedom: readingsADay - 1 }))),
    );
    expect(all.standard.toFixed(0)).toBe(VOLTAGE_STANDARD.pooled);
    expect(all.degreesOfFreedom).toBe(VOLTAGE_STANDARD.degrees);
  });
});

describe('repeatability from groups of repeats', () => {
  it('of one group is its standard deviation (GUM 4.2.2)', () => {
    const all = known(repeatability([[2, 4, 4, 4, 5, 5, 7, 9]]));
    expectClose(all.standard, Math.sqrt(32 / 7));
    expect(all.degreesOfFreedom).toBe(7);
  });

  it('of pairs is the root of the mean square difference, halved (GUM 4.2.4)', () => {
    const all = known(
      repeatability([
        [1, 3],
        [100, 101],
        [-7, -7],
      ]),
    );
    expectClose(all.standard, Math.sqrt((4 + 1 + 0) / 3 / 2));
    expect(all.degreesOfFreedom).toBe(3);
  });

  it('is that of the groups pooled', () => {
    fc.assert(
      fc.property(groups, (all) => {
        const each = all.flatMap((group) => repeatability([group]) ?? []);
        const [once, parts] = [repeatability(all), pooled(each)];
        if (once === undefined) expect(parts).toBeUndefined();
        else {
          expectClose(parts?.standard, once.standard, { absolute: 1e-12, relative: 1e-12 });
          expect(parts?.degreesOfFreedom).toBe(once.degreesOfFreedom);
        }
      }),
    );
  });

  it('does not depend on what the groups read, nor on the order of anything', () => {
    fc.assert(
      fc.property(groups, reading, (all, shift) => {
        const moved = all.map((group, place) => group.map((one) => one + place * shift));
        const [here, there] = [
          repeatability(all),
          repeatability(moved.map((group) => group.toReversed()).toReversed()),
        ];
        expect(there?.degreesOfFreedom).toBe(here?.degreesOfFreedom);
        if (here !== undefined) {
          expectClose(there?.standard, here.standard, { absolute: 1e-11, relative: 1e-11 });
        }
      }),
    );
  });

  it('keeps its digits where the readings are large and alike', () => {
    const far = known(repeatability([[1e9 + 1, 1e9 + 2, 1e9 + 3]]));
    expectClose(far.standard, 1);
  });

  it('is exactly 0 for repeats all alike', () => {
    expect(repeatability([[0.1, 0.1, 0.1]])).toEqual({ standard: 0, degreesOfFreedom: 2 });
  });

  it('is unknown where nothing was repeated', () => {
    expect(repeatability([])).toBeUndefined();
    expect(repeatability([[1], [2], []])).toBeUndefined();
    expect(pooled([])).toBeUndefined();
  });
});

describe('which spread to reckon with', () => {
  const stated = { standard: 0.3, degreesOfFreedom: CERTAIN };

  it('the stated one where there are no repeats', () => {
    expect(chooseSpread(stated, undefined)).toEqual({ ...stated, from: 'stated' });
  });

  it('the observed one as soon as it is known well enough, smaller or larger', () => {
    for (const standard of [0, 0.1, 0.3, 2]) {
      const observed = { standard, degreesOfFreedom: ENOUGH_DEGREES };
      expect(chooseSpread(stated, observed)).toEqual({ ...observed, from: 'observed' });
    }
  });

  it('the stated one still, where a few repeats happen to agree better', () => {
    const lucky = { standard: 0.05, degreesOfFreedom: ENOUGH_DEGREES - 1 };
    expect(chooseSpread(stated, lucky)).toEqual({ ...stated, from: 'stated' });
  });

  it('the observed one at once, where chance does not make it so large', () => {
    // One pair: the 95 % point of chi-square with 1 degree of freedom is 1.96².
    const pair = (standard: number) => ({ standard, degreesOfFreedom: 1 });
    expect(chooseSpread(stated, pair(0.3 * 1.95)).from).toBe('stated');
    expect(chooseSpread(stated, pair(0.3 * 1.97)).from).toBe('observed');
  });

  it('not where what reading adds explains it', () => {
    // √(0.3² + 0.4²) = 0.5: by the same 1.96 as above.
    const pair = (standard: number) => ({ standard, degreesOfFreedom: 1 });
    expect(chooseSpread(stated, pair(0.5 * 1.95), 0.4).from).toBe('stated');
    expect(chooseSpread(stated, pair(0.5 * 1.97), 0.4).from).toBe('observed');
  });

  it('the observed one once it is known as well as a stated one that is itself in doubt', () => {
    const doubtful = { standard: 0.3, degreesOfFreedom: 3 };
    expect(chooseSpread(doubtful, { standard: 0.2, degreesOfFreedom: 2 }).from).toBe('stated');
    expect(chooseSpread(doubtful, { standard: 0.2, degreesOfFreedom: 3 }).from).toBe('observed');
  });

  it('any that shows, where none was stated', () => {
    const none = { standard: 0, degreesOfFreedom: CERTAIN };
    expect(chooseSpread(none, { standard: 1e-6, degreesOfFreedom: 1 }).from).toBe('observed');
    expect(chooseSpread(none, { standard: 0, degreesOfFreedom: 1 }).from).toBe('stated');
  });

  it('never one that fewer repeats than enough have made smaller', () => {
    const spread = fc.record({
      standard: fc.double({ min: 0, max: 5, noNaN: true }),
      degreesOfFreedom: fc.integer({ min: 1, max: ENOUGH_DEGREES - 1 }),
    });
    fc.assert(
      fc.property(spread, (observed) => {
        expect(chooseSpread(stated, observed).standard).toBeGreaterThanOrEqual(stated.standard);
      }),
    );
  });
});

describe('what makes no sense is refused', () => {
  it.each([Number.NaN, CERTAIN])('a reading of %d', (bad) => {
    expect(() => repeatability([[1, bad]])).toThrow(RangeError);
  });

  it.each([-1, Number.NaN, CERTAIN])('a standard deviation of %d', (standard) => {
    expect(() => pooled([{ standard, degreesOfFreedom: 2 }])).toThrow(RangeError);
    expect(() => chooseSpread({ standard, degreesOfFreedom: 2 }, undefined)).toThrow(RangeError);
  });

  it.each([0, -1, Number.NaN])('%d degrees of freedom', (degreesOfFreedom) => {
    const bad = { standard: 1, degreesOfFreedom };
    expect(() => pooled([bad])).toThrow(RangeError);
    expect(() => chooseSpread({ standard: 1, degreesOfFreedom: 2 }, bad)).toThrow(RangeError);
  });

  it('pooling what is certain', () => {
    expect(() => pooled([{ standard: 1, degreesOfFreedom: CERTAIN }])).toThrow(RangeError);
  });
});
