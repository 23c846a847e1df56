import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../../src/core/statistics/normal';
import { DEFAULT_LEVEL, decide } from '../../../src/core/verdict/conformity';
import { probabilityOfConformity } from '../../../src/core/verdict/probability';
import { ISO_14253_1, JCGM_106 } from '../reference/conformity';
import { expectClose } from '../support/close';
import { simpleZone } from '../support/zones';

/** Probability below an upper limit, with the limit on the other side far out of the way. */
function belowLimit(y: number, u: number, upper: number): number {
  const away = 1000 * u;
  return probabilityOfConformity(simpleZone(y - upper + away, u), away);
}

describe('probability of conformity with one limit', () => {
  it('of the Zener diode', () => {
    const { y, u, upper, z, probability } = JCGM_106.zener;
    expectClose((upper - y) / u, z);
    expect(belowLimit(y, u, upper).toFixed(2)).toBe(probability);
  });

  it.each(JCGM_106.table1)('is %d where z is %s', (probability, z) => {
    // The z that is printed is rounded: the probability lies between those of its two ends.
    expect(normalBelow(Number(z) - 0.005)).toBeLessThan(probability);
    expect(normalBelow(Number(z) + 0.005)).toBeGreaterThan(probability);
  });

  it.each(JCGM_106.guardBands)(
    'at an acceptance limit %d u inside is %d',
    (inside, probability) => {
      expectClose(belowLimit(10 - inside * 0.5, 0.5, 10), probability, { absolute: 2e-5 });
    },
  );
});

describe('the verdict', () => {
  it('of a speed over the limit begins at the whole km/h that is printed', () => {
    const { limit, relative, level, threshold } = JCGM_106.speed;
    const at = (speed: number) => decide(belowLimit(speed, relative * speed, limit), level);
    expect(at(threshold)).toBe('out');
    expect(at(threshold - 1)).toBe('too close to call');
  });

  it.each(ISO_14253_1.cases)('by ISO 14253-1: $y is $verdict', ({ y, verdict }) => {
    const { u, upper } = ISO_14253_1;
    expect(decide(belowLimit(y, u, upper))).toBe(verdict);
  });

  it('changes where the guard band of ISO 14253-1 begins, on both sides of the limit', () => {
    const { guardBand, u, upper } = ISO_14253_1;
    for (const side of [1, -1]) {
      const at = (inside: number) => decide(belowLimit(upper - side * inside * u, u, upper));
      expect(at(guardBand)).toBe(side === 1 ? 'in' : 'out');
      // 1.65 is rounded up from 1.6449.
      expect(at(guardBand - 0.01)).toBe('too close to call');
    }
  });

  it('takes the level itself for proof, both ways', () => {
    expect(DEFAULT_LEVEL).toBe(0.95);
    expect(decide(0.95)).toBe('in');
    expect(decide(0.9499)).toBe('too close to call');
    expect(decide(0.0501)).toBe('too close to call');
    expect(decide(0.05)).toBe('out');
    expect(decide(0.75, 0.75)).toBe('in');
    expect(decide(0.25, 0.75)).toBe('out');
  });

  it.each([0.5, 0, 1, 1.5, -0.95, Number.NaN])('is refused at a level of %d', (level) => {
    expect(() => decide(0.7, level)).toThrow(RangeError);
  });
});
