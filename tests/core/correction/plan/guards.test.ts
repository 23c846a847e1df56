import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plansFor } from '../../../../src/core/correction/plan/plans-for';
import { studentQuantile } from '../../../../src/core/statistics/student';
import type { Zone } from '../../../../src/core/zones/zone';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { partWith, requirement } from '../../support/worked-block';
import { doubleZone, simpleZone } from '../../support/zones';
import { NO_SIZES } from './support/problems';

/** Φ⁻¹(0.95), and the same of Student's distribution with 10 degrees of freedom (GUM Table G.2, 90 %: 1.81). */
const NORMAL = 1.6448536269514722;
const STUDENT = 1.8124611228107335;

const SQUARE = requirement('right', 'bottom', 10);
const PARALLEL = requirement('right', 'left', 10);

function bestFor(
  one: typeof SQUARE,
  zone: Zone,
  demand = { level: 0.95, share: 0.5 },
  finished = [] as Parameters<typeof partWith>[1],
) {
  const measured = [{ requirement: one, zone, formPoints: [] }];
  const { best } = plansFor(partWith([one], finished), measured, NO_SIZES, demand);
  return { best, effect: known(best.effects[0]) };
}

/** Each sign of the two parts, with the standard uncertainty of their sum at these signs. */
function sumsOf({ parts, covariance }: Zone, values: readonly number[]) {
  return [1, -1].flatMap((p) =>
    [1, -1].map((q) => {
      const variance = parts[0]!.standard ** 2 + parts[1]!.standard ** 2 + 2 * p * q * covariance;
      return {
        sum: p * values[0]! + q * values[1]!,
        standard: Math.sqrt(Math.max(0, variance)),
      };
    }),
  );
}

describe('the guard of squareness', () => {
  it.each([
    [Number.POSITIVE_INFINITY, NORMAL],
    [10, STUDENT],
  ])('is the quantile of the doubt: of %d degrees of freedom %d', (degreesOfFreedom, factor) => {
    for (const sign of [1, -1]) {
      const zone = { ...simpleZone(8 * sign, 0.6), degreesOfFreedom };
      const { best, effect } = bestFor(SQUARE, zone);
      expect(best.possible).toBe(true);
      expectClose(effect.guard, 0.6 * factor, { absolute: 1e-9 });
      expectClose(effect.withForm.after, 5 - 0.6 * factor, { absolute: 1e-9 });
      expect(effect.doubtAlone).toBe(false);
      expect(effect.allowed).toBe(5);
    }
  });

  it('that is more than the share leaves nothing to aim at but no error at all', () => {
    // 1.645·3.1 µm is more than the 5 µm that are allowed.
    const { best, effect } = bestFor(SQUARE, simpleZone(8, 3.1));
    expect(effect.doubtAlone).toBe(true);
    expect(best.possible).toBe(true);
    expectClose(effect.withForm.after, 0);
    const within = bestFor(SQUARE, simpleZone(8, 3.0));
    expect(within.effect.doubtAlone).toBe(false);
    expectClose(within.effect.withForm.after, 5 - NORMAL * 3, { absolute: 1e-9 });
  });
});

describe('the four guards of parallelism', { timeout: 60_000 }, () => {
  it('differ with the signs: parts that err together are sure of their difference', () => {
    // Standard uncertainties 1 and 1.5, correlation 1: p + q is within 2.5, p - q within 0.5.
    const together = doubleZone([6, 6], [1, 1.5], 1);
    const apart = doubleZone([6, -6], [1, 1.5], 1);
    const [plus, minus] = [bestFor(PARALLEL, together), bestFor(PARALLEL, apart)];
    expectClose(plus.effect.withForm.after, 5 - NORMAL * 2.5, { absolute: 1e-9 });
    expectClose(minus.effect.withForm.after, 5 - NORMAL * 0.5, { absolute: 1e-9 });
  });

  it('do not take a part through 0 and beyond where that saves nothing', () => {
    // 11.1 µm have to come off p + q: as well off p as off q, but of q there are only 6.
    const { effect } = bestFor(PARALLEL, doubleZone([6, 6], [1, 1.5], 1));
    for (const { value } of effect.after.parts) expect(value).toBeGreaterThan(-1e-9);
  });

  it('hold at signs that the parts do not have: p = 2.5 and q = -0.1 have little doubt, q = 0 more', () => {
    // As it is: 2.6 + 1.645·0.5 is well within 5. But 2.4 + 1.645·2.5 is not: the width may as well
    // be p + q, which is that little known.
    const { best, effect } = bestFor(PARALLEL, doubleZone([2.5, -0.1], [1, 1.5], 1));
    expect(best.steps).toHaveLength(1);
    const [p, q] = effect.after.parts.map(({ value }) => value);
    expectClose(p! + q!, 5 - NORMAL * 2.5, { absolute: 1e-9 });
  });

  it('are all kept to by every plan, and one is just met where something is worked', () => {
    const tenths = fc.integer({ min: -90, max: 90 }).map((n) => n / 10);
    const standard = fc.integer({ min: 0, max: 30 }).map((n) => n / 12);
    const correlation = fc.integer({ min: -10, max: 10 }).map((n) => n / 10);
    const degrees = fc.constantFrom(3, 12, Number.POSITIVE_INFINITY);
    let [worked, doubtful] = [0, 0];
    fc.assert(
      fc.property(tenths, tenths, standard, standard, correlation, degrees, (p, q, s, t, r, n) => {
        const zone = { ...doubleZone([p, q], [s, t], r), degreesOfFreedom: n };
        const { best, effect } = bestFor(PARALLEL, zone);
        const factor = studentQuantile(0.95, n);
        const room = sumsOf(
          zone,
          effect.after.parts.map(({ value }) => value),
        ).map(({ sum, standard: of }) => Math.max(0, 5 - factor * of) - sum);
        expect(best.possible).toBe(true);
        expect(Math.min(...room)).toBeGreaterThan(-1e-9);
        if (best.steps.length > 0) {
          worked += 1;
          expect(Math.min(...room)).toBeLessThan(1e-9);
        }
        const most = Math.max(...sumsOf(zone, [0, 0]).map((one) => factor * one.standard));
        expect(effect.doubtAlone).toBe(most > 5);
        if (most > 5) doubtful += 1;
        if (most <= 5) expect(effect.withForm.after + effect.guard).toBeLessThan(5 + 1e-9);
      }),
      { numRuns: 500, seed: 1 },
    );
    expect(Math.min(worked, doubtful)).toBeGreaterThan(30);
  });
});

describe('the share of the tolerance', () => {
  it('is what width and guard may take up together', () => {
    for (const share of [0.3, 0.5, 0.8, 1]) {
      const { effect } = bestFor(SQUARE, simpleZone(12, 0.5), { level: 0.95, share });
      expectClose(effect.withForm.after + effect.guard, 10 * share, { absolute: 1e-9 });
    }
  });

  it('met by a stopped plan is not claimed: it stays over by what is missing', () => {
    const { best } = bestFor(SQUARE, simpleZone(12, 0.5), undefined, ['right', 'bottom']);
    const [stop] = best.stops;
    const excess = stop?.kind === 'requirement' ? stop.excess : undefined;
    expectClose(excess, 12 + NORMAL * 0.5 - 5, { absolute: 1e-9 });
  });
});
