import { describe, expect, it } from 'vitest';
import { shapeOf } from '../../../../src/core/correction/rates/scatter-shape';
import { normalBelow, normalDensity } from '../../../../src/core/statistics/normal';
import { studentBelow, studentDensity } from '../../../../src/core/statistics/student';
import { expectClose } from '../../support/close';

const PLACES = [-1e6, -300, -20, -4, -1, -0.1, 0, 0.3, 2, 7, 50, 1e4];

describe('the scatter of passes', () => {
  it.each(PLACES)('is Student’s with 4 degrees of freedom at %d', (z) => {
    const { below, density } = shapeOf('student');
    expectClose(below(z), studentBelow(z, 4), { relative: 1e-12 });
    expectClose(density(z), studentDensity(z, 4), { relative: 1e-12 });
  });

  it('is as tabulated: t for 0.95 and 4 degrees of freedom is 2.132, for 0.995 4.604', () => {
    // Two of the most printed numbers there are; from memory.
    const { below } = shapeOf('student');
    expectClose(below(2.132), 0.95, { absolute: 5e-5 });
    expectClose(below(-4.604), 0.005, { absolute: 5e-6 });
  });

  it('can be normal', () => {
    const { below, density } = shapeOf('normal');
    expect(below(-1.5)).toBe(normalBelow(-1.5));
    expect(density(0.7)).toBe(normalDensity(0.7));
  });
});
