import { describe, expect, it } from 'vitest';
import { withoutOutstanding } from '../../../src/core/statistics/outstanding';
import { randomFrom } from '../../../src/core/statistics/random';

/** Two groups of repeats, each about a zero of its own. */
function groups(random: { normal(): number }, size: number): number[][] {
  return [10, -4].map((zero) => Array.from({ length: size }, () => zero + random.normal()));
}

describe('a repeat that stands out', () => {
  it('is taken from its group, and nothing else is', () => {
    const [one, other] = [
      [1, 2, 1, 2, 1, 30],
      [5, 6, 5, 6, 5, 6],
    ];
    expect(withoutOutstanding([one!, other!])).toEqual([[1, 2, 1, 2, 1], other]);
  });

  it('is none where all are alike, or too few to tell', () => {
    const alike = [[1, 2, 1, 2]];
    expect(withoutOutstanding(alike)).toBe(alike);
    const few = [[1, 20], [3]];
    expect(withoutOutstanding(few)).toBe(few);
    expect(withoutOutstanding([])).toEqual([]);
    const equal = [[2, 2, 2, 2]];
    expect(withoutOutstanding(equal)).toBe(equal);
  });

  it('is found nine times in ten at ten sigma, and hardly ever where there is none', () => {
    const random = randomFrom(11);
    let [found, alarms] = [0, 0];
    const rounds = 1000;
    for (let round = 0; round < rounds; round += 1) {
      const good = groups(random, 6);
      if (withoutOutstanding(good) !== good) alarms += 1;
      const bad = good.map((group, index) =>
        index === 0 ? group.map((one, place) => (place === 2 ? one + 10 : one)) : group,
      );
      const [first] = withoutOutstanding(bad);
      if (first?.length === 5 && !first.includes(bad[0]![2]!)) found += 1;
    }
    // Bonferroni's bound is 1 in 1,000: 1 ± 3·√1 in 1,000 rounds.
    expect(alarms).toBeLessThanOrEqual(4);
    // The others' spread is known with nine degrees of freedom only.
    expect(found / rounds).toBeGreaterThan(0.88);
  });
});
