import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { positiveRoot } from '../../../src/core/statistics/root';
import { expectClose } from '../support/close';

describe('the root of an increasing function of x > 0', () => {
  it('is found from anywhere, over hundreds of powers of ten', () => {
    const power = fc.double({ min: -250, max: 250, noNaN: true });
    fc.assert(
      fc.property(power, power, (root, start) => {
        const at = 10 ** root;
        // Flat at both ends, so that Newton's method by itself would fly off.
        const found = positiveRoot((x) => {
          const z = Math.log(x / at);
          return { value: Math.atan(z), slope: 1 / (1 + z * z) };
        }, 10 ** start);
        expectClose(found, at, { relative: 1e-12 });
      }),
    );
  });

  it('is found where the function jumps, and where it has run out of digits', () => {
    const jump = positiveRoot((x) => ({ value: x < 3 ? -1 : 1, slope: 0 }), 1);
    expectClose(jump, 3, { relative: 1e-14 });
    const ends = positiveRoot(
      (x) => ({ value: x < 1e-9 ? Number.NEGATIVE_INFINITY : Math.log(x), slope: 1 }),
      1e-200,
    );
    expectClose(ends, 1, { relative: 1e-14 });
  });

  it('is not made up where there is none', () => {
    expect(() => positiveRoot(() => ({ value: Number.NaN, slope: 1 }), 1)).toThrow(RangeError);
  });
});
