import { expect, it } from 'vitest';
import type { AnyFixedFinding } from '../../../src/core/inspection/any-finding';
import { foundOf, rangeOf } from '../../../src/core/inspection/found';
import { COVERAGE } from '../../../src/core/statistics/coverage';
import { coverageFactor } from '../../../src/core/statistics/effective-degrees';
import { expectClose } from '../support/close';

const zone = { width: 2.5, standard: 0.8, degreesOfFreedom: 30 };

it('is the zone of the plane where there is no form, as far each way as the doubt', () => {
  const found = foundOf({ fixed: true, zone } as unknown as AnyFixedFinding);
  expect(found.value).toBe(2.5);
  const { low, high } = rangeOf(found);
  expectClose(high - 2.5, 0.8 * coverageFactor(COVERAGE, 30));
  expectClose(2.5 - low, high - 2.5);
});

it('is the zone with form where the verdict is about that', () => {
  const withForm = { width: 10.89, low: 10.22, high: 12.34 };
  const found = foundOf({ fixed: true, zone, withForm } as unknown as AnyFixedFinding);
  expect(found.value).toBe(10.89);
  expect(rangeOf(found)).toEqual({ low: 10.22, high: 12.34 });
});
