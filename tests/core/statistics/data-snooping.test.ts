import { describe, expect, it } from 'vitest';
import { solveLeastSquares } from '../../../src/core/adjustment/least-squares';
import { globalTest } from '../../../src/core/statistics/global-test';
import {
  likelyBlunder,
  snoopingLimit,
  standardisedResidual,
} from '../../../src/core/statistics/outliers';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { LEVEL_NET, SNOOPING_LIMITS, WITH_BLUNDER } from './reference/level-net';

const { observations, preliminary, fixed, perKilometre } = LEVEL_NET;

/** The net adjusted, in mm about the preliminary heights, `added` m to the observation at `place`. */
function adjustNet(added = 0, place = 0) {
  const free = preliminary.map((_, point) => point + 1).filter((point) => point !== fixed);
  const standards = observations.map(([, , , length]) => perKilometre * length);
  const matrix = Float64Array.from(
    free.flatMap((point) =>
      observations.map(([from, to]) => (to === point ? 1 : 0) - (from === point ? 1 : 0)),
    ),
  );
  const values = observations.map(([from, to, rise], row) => {
    const computed = preliminary[to - 1]! - preliminary[from - 1]!;
    return 1000 * (rise + (row === place ? added : 0) - computed);
  });
  const fit = solveLeastSquares(matrix, values, standards);
  const w = standards.map((standard, row) =>
    known(standardisedResidual(fit.residuals[row]!, standard, fit.redundancies[row]!)),
  );
  return { fit, w, free };
}

describe('data snooping of the levelling network', () => {
  const { fit, w, free } = adjustNet();

  it('the adjustment itself comes out as printed', () => {
    const corrections = [...fit.residuals].map((residual) => (0 - residual).toFixed(2));
    expect(corrections.map((text) => text.replace(/^-0\.00$/, '0.00'))).toEqual(
      LEVEL_NET.corrections,
    );
    free.forEach((point, column) => {
      const height = preliminary[point - 1]! + fit.solution[column]! / 1000;
      expect(height.toFixed(4)).toBe(LEVEL_NET.heights[column]);
    });
    expect([...fit.redundancies].map((part) => part.toFixed(1))).toEqual(LEVEL_NET.redundancies);
    const scatter = Math.sqrt(fit.chiSquare / LEVEL_NET.degrees);
    const standards = free.map(
      (_, column) =>
        known(fit.estimate(free.map((__, other) => (other === column ? 1 : 0)))).standard,
    );
    expect(standards.map((one) => (scatter * one).toFixed(2))).toEqual(LEVEL_NET.standards);
    expect(fit.chiSquare.toFixed(3)).toBe(LEVEL_NET.chiSquare);
    expect(observations.length - fit.rank).toBe(LEVEL_NET.degrees);
  });

  it('standardised residuals', () => {
    expect(w.map((one) => Math.abs(one).toFixed(1))).toEqual(LEVEL_NET.w);
  });

  it('the same as tests of an error in one observation each', () => {
    const tested = observations.map((_, row) =>
      known(fit.test(observations.map((__, i) => (i === row ? 1 : 0)))),
    );
    tested.forEach(({ statistic }, row) => {
      expectClose(statistic, w[row]!);
    });
    expect(tested.map(({ statistic }) => Math.abs(statistic).toFixed(1))).toEqual(LEVEL_NET.w);
  });

  it('suspects nothing at one in a thousand, and fails the global test at one in twenty', () => {
    const greatest = Math.max(...w.map(Math.abs));
    expect(greatest).toBeLessThan(snoopingLimit(0.001));
    expect(greatest).toBeGreaterThan(snoopingLimit(0.01));
    const test = known(globalTest(fit.chiSquare, LEVEL_NET.degrees));
    // The 95 % point with 3 degrees of freedom is 7.815, in every table.
    expect(test.passes).toBe(false);
    expect(known(globalTest(7.81, 3)).passes).toBe(true);
    expect(known(globalTest(7.82, 3)).passes).toBe(false);
  });
});

describe('the same with a blunder of 10 mm', () => {
  const { fit, w } = adjustNet(WITH_BLUNDER.added, WITH_BLUNDER.place);

  it('peaks on it, beyond the limit', () => {
    w.forEach((one, row) => {
      expectClose(Math.abs(one), WITH_BLUNDER.w[row]!, { absolute: 5.1e-6 });
    });
    const sizes = w.map(Math.abs);
    expect(sizes.indexOf(Math.max(...sizes))).toBe(WITH_BLUNDER.place);
    expect(Math.max(...sizes)).toBeGreaterThan(snoopingLimit(0.001));
  });

  it('says how large it likely is, with its sign', () => {
    const { place } = WITH_BLUNDER;
    const size = likelyBlunder(fit.residuals[place]!, fit.redundancies[place]!);
    expectClose(size, WITH_BLUNDER.likelyBlunder, { absolute: 5.1e-6 });
    // 10 mm on top of what the observation was off before.
    const before = adjustNet();
    const random = known(
      likelyBlunder(before.fit.residuals[place]!, before.fit.redundancies[place]!),
    );
    expectClose(known(size) - random, 10, { absolute: 1e-9 });
  });
});

describe('the limit', () => {
  it.each(SNOOPING_LIMITS)('at a significance of %d is %s', (significance, printed) => {
    const decimals = printed.split('.')[1]!.length;
    expect(snoopingLimit(significance).toFixed(decimals)).toBe(printed);
  });

  it.each([0, 1, -0.05, Number.NaN])('is refused at a significance of %d', (significance) => {
    expect(() => snoopingLimit(significance)).toThrow(RangeError);
  });
});

describe('a reading that nothing checks', () => {
  it('has no standardised residual and no likely blunder', () => {
    for (const redundancy of [0, 1e-15]) {
      expect(standardisedResidual(0, 1, redundancy)).toBeUndefined();
      expect(likelyBlunder(0, redundancy)).toBeUndefined();
    }
  });
});

describe('the global test', () => {
  it('with nothing to test says nothing', () => {
    expect(globalTest(0, 0)).toBeUndefined();
  });

  it('gives the probability of a chi-square as large', () => {
    expectClose(known(globalTest(2 * Math.log(20), 2)).probability, 0.05);
    expect(known(globalTest(0, 4))).toEqual({ probability: 1, passes: true });
    expect(known(globalTest(5, 1, 0.01)).passes).toBe(true);
    expect(known(globalTest(5, 1, 0.05)).passes).toBe(false);
  });

  it('of nonsense is refused', () => {
    expect(() => globalTest(-1, 3)).toThrow(RangeError);
    expect(() => globalTest(Number.NaN, 3)).toThrow(RangeError);
    expect(() => globalTest(1, -3)).toThrow(RangeError);
    expect(() => globalTest(1, 3, 0)).toThrow(RangeError);
    expect(() => globalTest(1, 0, 2)).toThrow(RangeError);
  });
});
