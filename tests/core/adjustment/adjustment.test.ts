import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { taper } from '../../../src/core/part/face-errors';
import { type LinearForm, scaled, sum, unknown } from '../../../src/core/part/linear-form';
import type { Equation } from '../../../src/core/readings/equation';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, micrometer, nose } from '../support/readings';
import { BLOCK } from '../support/worked-block';

const [a, b] = [unknown('a'), unknown('b')];

/** Equations as the core makes them, with their form, value and doubt replaced. */
function measured(form: LinearForm, value: number, standard: number, reading: string): Equation {
  const [equation] = equationsOf([assumedParallel('right')], BLOCK, DEFAULT_KIT);
  const components = [{ cause: 'assumption' as const, standard }];
  return { ...equation!, form, value, components, reading };
}

describe('an adjustment', () => {
  it('of nothing fixes nothing, and has nothing to spare', () => {
    const empty = adjust([]);
    expect(empty.estimate(a)).toBeUndefined();
    expect(empty.covariance(a, a)).toBeUndefined();
    expect(empty.checks).toEqual([]);
    expect([empty.degreesOfFreedom, empty.chiSquare]).toEqual([0, 0]);
  });

  it('weighs readings of the same by 1/u²', () => {
    const twice = adjust([measured(a, 10, 1, 'first'), measured(a, 13, 2, 'second')]);
    const mean = known(twice.estimate(a));
    expectClose(mean.value, (10 / 1 + 13 / 4) / (1 + 1 / 4));
    expectClose(mean.standard, Math.sqrt(1 / (1 + 1 / 4)));
    expectClose(twice.chiSquare, 3 ** 2 / (1 + 4));
    expect(twice.degreesOfFreedom).toBe(1);
  });

  it('names the redundancy and the residual of each reading', () => {
    const { checks } = adjust([
      measured(a, 10, 1, 'first'),
      measured(a, 13, 2, 'second'),
      measured(b, 5, 1, 'alone'),
    ]);
    expect(checks.map((check) => check.reading)).toEqual(['first', 'second', 'alone']);
    [1 / 5, 4 / 5, 0].forEach((redundancy, index) => {
      expectClose(checks[index]?.redundancy, redundancy);
    });
    [10 - 10.6, 13 - 10.6, 0].forEach((residual, index) => {
      expectClose(checks[index]?.residual, residual);
    });
  });

  it('leaves an unchecked reading unchecked to the last digit', () => {
    const { checks } = adjust(
      equationsOf(
        [nose('right', 34), nose('left', 31), assumedParallel('right')],
        BLOCK,
        DEFAULT_KIT,
      ),
    );
    expect(checks.slice(0, 3).map((check) => check.redundancy)).toEqual([0, 0, 0]);
  });

  it('knows what goes together', () => {
    // a = 10 ± 1, a + b = 15 ± 2: b has the variance 1 + 4, and shares that of a, the other way.
    const both = adjust([measured(a, 10, 1, 'one'), measured(sum(a, b), 15, 2, 'other')]);
    expectClose(both.covariance(a, b), -1);
    expectClose(both.covariance(b, b), 5);
    expectClose(both.covariance(b, scaled(a, -2)), 2);
    expect(both.covariance(a, unknown('c'))).toBeUndefined();
  });

  it('fixes a sum whose parts it leaves open, and weights of 0 need nothing', () => {
    const only = adjust([measured(sum(a, b), 15, 2, 'sum')]);
    expect(only.estimate(a)).toBeUndefined();
    expectClose(only.estimate(sum(a, b))?.value, 15);
    expectClose(only.estimate(sum(a, b, scaled(unknown('c'), 0)))?.value, 15);
    expect(only.estimate(sum(a, b, unknown('c')))).toBeUndefined();
  });

  it('names just the readings that a value rests on', () => {
    const readings = [
      nose('right', 34),
      nose('left', 31),
      micrometer('right', { z: -40 }, 1),
      micrometer('right', { z: 40 }, 3),
    ];
    const adjustment = adjust(equationsOf(readings, BLOCK, DEFAULT_KIT));
    const { restsOn } = known(adjustment.estimate(taper('right', 'top')));
    expect([...restsOn].sort()).toEqual(
      readings
        .slice(2)
        .map(({ id }) => id)
        .sort(),
    );
  });
});
