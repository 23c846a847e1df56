import { describe, expect, it } from 'vitest';
import { expectedVerdict } from '../../../src/core/correction/expected-verdict';
import { decide, type Verdict } from '../../../src/core/verdict/conformity';
import { probabilityOfConformity } from '../../../src/core/verdict/probability';
import { manyRandoms } from '../support/random';
import { doubleZone, simpleZone } from '../support/zones';

describe('the verdict to expect', { timeout: 60_000 }, () => {
  it('is that of the probability, whether its bounds decide it or not', () => {
    const counts: Record<Verdict, number> = { in: 0, out: 0, 'too close to call': 0 };
    for (const random of manyRandoms(1500)) {
      const width = () => random.between(-8, 8);
      const standard = () => (random.between(0, 1) < 0.1 ? 0 : random.between(0, 3));
      const degreesOfFreedom =
        random.between(0, 1) < 0.5 ? Number.POSITIVE_INFINITY : random.between(1, 30);
      const zone =
        random.between(0, 1) < 0.2
          ? simpleZone(width(), standard())
          : doubleZone([width(), width()], [standard(), standard()], random.between(-1, 1));
      const known = { ...zone, degreesOfFreedom };
      const [tolerance, level] = [random.between(1, 12), random.between(0.6, 0.99)];
      const probability = probabilityOfConformity(known, tolerance);
      const verdict = expectedVerdict(known, tolerance, level);
      expect(verdict).toBe(decide(probability, level));
      counts[verdict] += 1;
    }
    expect(Math.min(...Object.values(counts))).toBeGreaterThan(100);
  });

  it('is out where form leaves nothing of the tolerance', () => {
    expect(expectedVerdict(simpleZone(0, 0.1), -0.1, 0.95)).toBe('out');
  });
});
