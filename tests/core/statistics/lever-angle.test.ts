import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrate } from '../../../src/core/statistics/integrate';
import { leverMovement, leverUncertainty } from '../../../src/core/statistics/lever-angle';
import { expectClose } from '../support/close';
import { LEVER_EXAMPLES, LEVER_TABLES } from './reference/lever';

const angle = fc.double({ min: -80, max: 80, noNaN: true });
const radians = (degrees: number) => (degrees * Math.PI) / 180;

describe('what a lever indicator makes of a movement', () => {
  it('is that of the trade tables, the one rounded and the other within 0.01', () => {
    const factors = LEVER_TABLES.angles.map((at) => leverMovement(1, at));
    expect(factors.map((factor) => factor.toFixed(2))).toEqual(LEVER_TABLES.rounded);
    factors.forEach((factor, place) => {
      expectClose(factor, LEVER_TABLES.rough[place]!, { absolute: 0.01 });
    });
  });

  it.each(LEVER_EXAMPLES)('$reading at $angle° is $movement', ({ reading, angle, movement }) => {
    expect(leverMovement(reading, angle).toFixed(4)).toBe(movement);
  });

  it('keeps its sign, and is the same on either side', () => {
    fc.assert(
      fc.property(angle, (at) => {
        expect(leverMovement(5, -at)).toBe(leverMovement(5, at));
        expect(leverMovement(-5, at)).toBe(-leverMovement(5, at));
        expect(leverMovement(5, at)).toBeLessThanOrEqual(5);
      }),
    );
    expect(leverMovement(5, 0)).toBe(5);
  });
});

describe('its standard uncertainty', () => {
  it('is the root mean square error over all angles that may be, to 1 % up to ±15°', () => {
    const within = fc.double({ min: 0.5, max: 15, noNaN: true });
    fc.assert(
      fc.property(angle, within, (at, limit) => {
        const [a, delta] = [radians(at), radians(limit)];
        const square = (off: number) => (Math.cos(a + off) - Math.cos(a)) ** 2 / (2 * delta);
        const exact = Math.sqrt(integrate(square, -delta, delta, 1e-14));
        expectClose(leverUncertainty(1, at, limit), exact, { relative: 0.01 });
      }),
    );
  });

  it('at an angle is nearly the slope of the cosine times a rectangular angle', () => {
    // GUM 5.1.2 and 4.3.7, worked by hand: 100·sin 30°·(1° in radians)/√3.
    expectClose(leverUncertainty(100, 30, 1), (50 * radians(1)) / Math.sqrt(3), {
      relative: 1e-3,
    });
  });

  it('along the face is of the second order, and nothing where the angle is certain', () => {
    expectClose(leverUncertainty(100, 0, 10), (100 * radians(10) ** 2) / Math.sqrt(20));
    expect(leverUncertainty(100, 30, 0)).toBe(0);
    expect(leverUncertainty(-100, 30, 1)).toBe(leverUncertainty(100, 30, 1));
  });
});

describe('what makes no sense is refused', () => {
  it.each([90, -90, 120, Number.NaN])('an angle of %d°', (bad) => {
    expect(() => leverMovement(1, bad)).toThrow(RangeError);
    expect(() => leverUncertainty(1, bad, 1)).toThrow(RangeError);
  });

  it.each([-1, 90, Number.NaN])('an angle within ±%d°', (bad) => {
    expect(() => leverUncertainty(1, 10, bad)).toThrow(RangeError);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('a reading of %d', (bad) => {
    expect(() => leverMovement(bad, 10)).toThrow(RangeError);
    expect(() => leverUncertainty(bad, 10, 1)).toThrow(RangeError);
  });
});
