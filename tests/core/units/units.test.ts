import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fromMicrometres,
  fromMillimetres,
  LENGTH_UNITS,
  sizeUnitOf,
  toMicrometres,
  toMillimetres,
} from '../../../src/core/units/length';
import { arcSeconds, per100Millimetres, perInch } from '../../../src/core/units/slope';
import { expectClose } from '../support/close';

describe('lengths', () => {
  it.each([
    // The inch is 25.4 mm exactly (1959, by agreement of the standards laboratories).
    [1, 'tenths', 2.54],
    [1, 'thou', 25.4],
    [1, 'in', 25400],
    [1, 'mm', 1000],
    [1, 'µm', 1],
    [-2.5, 'thou', -63.5],
  ] as const)('%d %s are %d µm, and a thousandth of it in mm', (value, unit, micrometres) => {
    expect(toMicrometres(value, unit)).toBe(micrometres);
    expect(fromMicrometres(micrometres, unit)).toBe(value);
    expectClose(toMillimetres(value, unit), micrometres / 1000);
    expectClose(fromMillimetres(micrometres / 1000, unit), value);
  });

  it('have a unit of sizes in each system', () => {
    expect(LENGTH_UNITS.map(sizeUnitOf)).toEqual(['mm', 'mm', 'in', 'in', 'in']);
  });

  it('come back as they went', () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(value, fc.constantFrom(...LENGTH_UNITS), (length, unit) => {
        expectClose(fromMicrometres(toMicrometres(length, unit), unit), length);
        expectClose(fromMillimetres(toMillimetres(length, unit), unit), length);
      }),
    );
  });
});

describe('slopes', () => {
  it('are told per 100 mm and per inch', () => {
    expectClose(per100Millimetres(0.0327), 3.27);
    expectClose(perInch(0.1), 2.54);
  });

  it('are angles of 206.265 arc seconds to 1 µm/mm', () => {
    // One arc second is 0.4848137 µm over 100 mm: derived, from π/648000 rad.
    expectClose(arcSeconds(0.004848137), 1, { relative: 1e-7 });
    // A tangent, not an angle: 45° is 1000 µm/mm.
    expectClose(arcSeconds(1000), 45 * 3600);
    expectClose(arcSeconds(-1000), -45 * 3600);
  });
});
