import { describe, expect, it } from 'vitest';
import type { EquationCheck } from '../../../src/core/adjustment/checks';
import type { AnyFixedFinding } from '../../../src/core/inspection/any-finding';
import { mayBeSlip, uncheckedAmong } from '../../../src/core/inspection/unchecked';
import { sitReading } from '../../../src/core/readings/unknowns';

const check = (reading: string, standardised?: number) =>
  ({ reading, standardised }) as EquationCheck;

/** A finding of `width` µm where the drawing allows 5, from the two sides. */
const found = (width: number, withForm?: object) =>
  ({
    requirement: { tolerance: 5 },
    zone: { width, standard: 1, degreesOfFreedom: 30, restsOn: new Set(['right', 'left']) },
    ...(withForm && { withForm }),
  }) as unknown as AnyFixedFinding;

const SIT = sitReading('right');
const LONE = [check('right'), check('left')];

it('readings that nothing checks are those without a standardised residual, how the block sits left out', () => {
  const checks = [check('right'), check('left', 0), check(SIT)];
  expect(uncheckedAmong(checks)).toEqual([check('right')]);
});

describe('what may be a slip', () => {
  it('is more than ten times what the drawing allows, on a reading that nothing checks', () => {
    expect(mayBeSlip(found(50.1), LONE)).toBe(true);
    expect(mayBeSlip(found(50), LONE)).toBe(false);
    expect(mayBeSlip(found(50.1), [check('right', 0.4), check('left')])).toBe(true);
  });

  it('is nothing that others check, nor what rests on other readings', () => {
    expect(mayBeSlip(found(50.1), [check('right', 0.4), check('left', -0.4)])).toBe(false);
    expect(mayBeSlip(found(50.1), [check('front'), check(SIT)])).toBe(false);
  });

  it('is told by the figure that the verdict is about', () => {
    const form = { width: 50.1, low: 49, high: 52 };
    expect(mayBeSlip(found(40, form), LONE)).toBe(true);
  });
});
