import { describe, expect, it } from 'vitest';
import { hashOfBytes } from '../../../src/core/statistics/hash';
import { normalBelow } from '../../../src/core/statistics/normal';
import { MOST_DRAWS } from '../../../src/core/verdict/adaptive';
import {
  probabilityWithForm,
  type SimulatedZone,
  seedOf,
  simulateZone,
  type ZoneToSimulate,
} from '../../../src/core/verdict/monte-carlo';
import { probabilityOfConformity } from '../../../src/core/verdict/probability';
import type { FormPoint } from '../../../src/core/zones/zone-with-form';

/* All draws are seeded: what holds once holds always. Widths of bands are in standard errors. */

const INFINITE = Number.POSITIVE_INFINITY;

/** A zone without form. */
function plane(
  parts: readonly (readonly [value: number, standard: number])[],
  rest: Partial<ZoneToSimulate> = {},
): ZoneToSimulate {
  return {
    parts: parts.map(([value, standard]) => ({ value, standard })),
    covariance: 0,
    degreesOfFreedom: INFINITE,
    points: [],
    tolerance: 2,
    ...rest,
  };
}

/** A line of readings over the whole length. */
function line(residuals: readonly number[], standard: number, group = 'A'): readonly FormPoint[] {
  const last = residuals.length - 1;
  return residuals.map((residual, i) => ({ shares: [i / last - 0.5], residual, group, standard }));
}

/** The most that `probability` should be off from what it stands for. */
function samplingError({ draws }: SimulatedZone, probability: number): number {
  return 4 * Math.sqrt((probability * (1 - probability)) / draws) + 1e-9;
}

describe('without form', () => {
  it.each([
    ['one part', plane([[1.5, 0.5]])],
    ['one part about 0', plane([[0, 1.1]])],
    ['one part, 5 degrees', plane([[1.7, 0.3]], { degreesOfFreedom: 5 })],
    ['one part, 1 degree', plane([[1.7, 0.05]], { degreesOfFreedom: 1 })],
    ['one part surely out', plane([[9, 0.2]])],
    ['two parts', plane([[1, 0.5], [-0.7, 0.3]])], // biome-ignore format: one row each
    ['two parts that go together', plane([[1, 0.5], [0.7, 0.3]], { covariance: 0.12 })], // biome-ignore format: one row each
    ['two parts, 6 degrees', plane([[1, 0.5], [-0.7, 0.3]], { covariance: -0.1, degreesOfFreedom: 6 })], // biome-ignore format: one row each
    ['two parts, 9.5 degrees', plane([[0, 0.6], [0, 0.6]], { degreesOfFreedom: 9.5 })], // biome-ignore format: one row each
    ['two parts, the first certain', plane([[1, 0], [0.9, 0.3]], { degreesOfFreedom: 8 })], // biome-ignore format: one row each
  ])('agrees with the probability by integration: %s', (_, zone) => {
    const simulated = simulateZone(zone);
    const probability = probabilityOfConformity(zone, zone.tolerance);
    expect(Math.abs(simulated.probability - probability)).toBeLessThanOrEqual(
      samplingError(simulated, probability),
    );
  });

  /*
   * The folded normal distribution, |N(μ, σ)| (Leone, Nelson and Nottingham, Technometrics 3, 1961,
   * from memory): mean σ√(2/π)·exp(-μ²/2σ²) + μ(1 - 2Φ(-μ/σ)), variance μ² + σ² - mean².
   */
  it.each([
    [0, 0.3],
    [0.2, 0.3],
    [-0.5, 0.3],
    [3, 0.3],
  ])('is the folded normal distribution: mean %f, spread %f', (value, spread) => {
    const { draws, ...simulated } = simulateZone(plane([[value, spread]]));
    const mean =
      spread * Math.sqrt(2 / Math.PI) * Math.exp(-(value ** 2) / (2 * spread ** 2)) +
      value * (1 - 2 * normalBelow(-value / spread));
    const standard = Math.sqrt(value ** 2 + spread ** 2 - mean ** 2);
    const below = (width: number) =>
      normalBelow((width - value) / spread) - normalBelow((-width - value) / spread);
    expect(simulated.width).toBe(Math.abs(value));
    expect(Math.abs(simulated.mean - mean)).toBeLessThan((4 * standard) / Math.sqrt(draws));
    // The kurtosis of a folded normal distribution is 3 to 3.9: √((3.9 - 1)/4) is below 0.86.
    expect(Math.abs(simulated.standard / standard - 1)).toBeLessThan((4 * 0.86) / Math.sqrt(draws));
    const inTail = 4 * Math.sqrt((0.025 * 0.975) / draws);
    expect(Math.abs(below(simulated.low) - 0.025)).toBeLessThan(inTail);
    expect(Math.abs(below(simulated.high) - 0.975)).toBeLessThan(inTail);
  });

  it('has the spread of Student’s distribution, √(ν/(ν - 2)) (JCGM 101, 6.4.9.4)', () => {
    const { standard } = simulateZone(plane([[90, 0.3]], { degreesOfFreedom: 10 }));
    expect(standard / (0.3 * Math.sqrt(10 / 8))).toBeCloseTo(1, 2);
  });

  it('is certain where nothing is in doubt, at the limit too', () => {
    const zone = plane([
      [1.5, 0],
      [-0.5, 0],
    ]);
    expect(simulateZone(zone)).toEqual({
      ...{ draws: 50_000, stable: true, width: 2, mean: 2, standard: 0, low: 2, high: 2 },
      probability: 1,
    });
    expect(simulateZone({ ...zone, tolerance: 1.999 }).probability).toBe(0);
  });
});

describe('with form', () => {
  it('adds certain form to the plane', () => {
    // A lean of 3 with a crown: 2 in the middle, and -1.5 - 1 at the low end.
    const points = line([-1, 2, -1], 0);
    const zone = plane([[3, 0]], { points });
    expect(simulateZone(zone)).toMatchObject({ width: 4.5, low: 4.5, high: 4.5, standard: 0 });
  });

  /*
   * Three even places leave one freedom: noise of σ each leaves σ/√6·(1, -2, 1)·z, whose range is
   * 3σ/√6·|z|: a folded normal again, by hand. The corners stand at 0.
   */
  it('takes the line out of the noise of three places', () => {
    const { mean, draws } = simulateZone(plane([[0, 0]], { points: line([0, 0, 0], 0.4) }));
    const spread = (3 * 0.4) / Math.sqrt(6);
    const expected = spread * Math.sqrt(2 / Math.PI);
    expect(Math.abs(mean - expected)).toBeLessThan((4 * 0.61 * spread) / Math.sqrt(draws));
  });

  it('has no noise where the line takes all', () => {
    const points = [...line([0, 0], 0.4), ...line([0, 0], 0.4, 'B')];
    expect(simulateZone(plane([[0, 0]], { points })).high).toBeCloseTo(0, 12);
  });

  /* Four corners leave the twist alone: σ/2·(1, -1, -1, 1)·z, range σ·|z|. */
  it('takes the plane out of the noise of four places', () => {
    const corners = [
      [-0.5, -0.5],
      [0.5, -0.5],
      [-0.5, 0.5],
      [0.5, 0.5],
    ];
    const points = corners.map((shares) => ({ shares, residual: 0, group: 'A', standard: 0.4 }));
    const zone = plane([[0, 0], [0, 0]], { points }); // biome-ignore format: one row
    const { mean, draws } = simulateZone(zone);
    const expected = 0.4 * Math.sqrt(2 / Math.PI);
    expect(Math.abs(mean - expected)).toBeLessThan((4 * 0.61 * 0.4) / Math.sqrt(draws));
  });

  it('does not count the same readings twice as one group', () => {
    const joined = simulateZone(plane([[0, 0]], { points: line([0, 0, 0, 0], 0.4) }));
    const apart = [...line([0, 0], 0.4), ...line([0, 0], 0.4, 'B')];
    expect(joined.mean).toBeGreaterThan(0.1);
    expect(simulateZone(plane([[0, 0]], { points: apart })).mean).toBeCloseTo(0, 12);
  });
});

const FORMED = plane([[1, 0.3]], { points: line([0.4, -0.6, 0.2, -0.1, 0.1], 0.3) });

describe('the draws', () => {
  it('are the same for the same readings, to the last bit', () => {
    expect(simulateZone(structuredClone(FORMED))).toEqual(simulateZone(FORMED));
  });

  it('have a seed of their own for other readings', () => {
    const other = [
      { ...FORMED, covariance: 0.1 },
      { ...FORMED, degreesOfFreedom: 8 },
      { ...FORMED, parts: [{ value: 1, standard: 0.31 }] },
      { ...FORMED, parts: [{ value: -1, standard: 0.3 }] },
      { ...FORMED, points: FORMED.points.slice(1) },
      { ...FORMED, points: line([0.4, -0.6, 0.2, -0.1, 0.1], 0.31) },
      { ...FORMED, points: line([0.4, -0.6, 0.2, -0.1, 0.1 + 1e-12], 0.3) },
      { ...FORMED, points: FORMED.points.map((one, i) => ({ ...one, group: `${i % 2}` })) },
    ];
    expect(new Set([FORMED, ...other].map(seedOf)).size).toBe(other.length + 1);
  });

  it('do not hang on what a group is called, nor on the tolerance', () => {
    const renamed = FORMED.points.map((one) => ({ ...one, group: 'another' }));
    expect(seedOf({ ...FORMED, points: renamed })).toBe(seedOf(FORMED));
    expect(seedOf({ ...FORMED, tolerance: 9 } as ZoneToSimulate)).toBe(seedOf(FORMED));
  });

  it('agree under another seed as well as the digits shown', () => {
    const [one, other] = [1, 2].map((seed) => simulateZone({ ...FORMED, seed }));
    expect(one?.mean).not.toBe(other?.mean);
    // The standard uncertainty is 0.2 to 0.4: its second digit is 0.01.
    for (const key of ['mean', 'standard', 'low', 'high'] as const) {
      expect(Math.abs(one![key] - other![key])).toBeLessThan(0.01);
    }
    expect(Math.abs(one!.probability - other!.probability)).toBeLessThan(0.01);
  });

  it('are more for tighter digits (JCGM 101, 7.9)', () => {
    // Of 0.11 the second digit is a tenth part, of 0.4 a fortieth.
    const loose = simulateZone(plane([[90, 0.11]]));
    const tight = simulateZone(plane([[90, 0.4]]));
    expect(loose.stable && tight.stable).toBe(true);
    expect(tight.draws).toBeGreaterThan(2 * loose.draws);
  });

  it('end at a million where the digits never stand still', () => {
    // Student's distribution with one degree of freedom has no spread to settle on.
    const { draws, stable } = simulateZone(plane([[1, 0.3]], { degreesOfFreedom: 1 }));
    expect(draws).toBe(MOST_DRAWS);
    expect(stable).toBe(false);
  });

  it('give a wider tolerance no less chance', () => {
    const chances = [0, 0.5, 1, 1.2, 1.5, 2, 3, 9].map(
      (tolerance) => simulateZone({ ...FORMED, tolerance }).probability,
    );
    expect(chances).toEqual([...chances].sort((a, b) => a - b));
    expect(chances.at(0)).toBe(0);
    expect(chances.at(-1)).toBe(1);
  });

  /* FNV-1a test vectors of draft-eastlake-fnv, from memory. */
  it.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('are seeded by FNV-1a: "%s"', (text, hash) => {
    expect(hashOfBytes(new TextEncoder().encode(text))).toBe(hash);
  });
});

describe('the probability alone', () => {
  it.each([0.5, 1, 1.2, 1.5, 2])('within %d µm is that of the simulated zone', (tolerance) => {
    const zone = { ...FORMED, tolerance };
    const { draws, probability } = simulateZone(zone);
    const alone = probabilityWithForm(zone);
    const variance = probability * (1 - probability) * (1 / draws + 1 / 50_000);
    expect(Math.abs(alone - probability)).toBeLessThan(4 * Math.sqrt(variance) + 1e-9);
  });

  it('is the same for the same readings and seed, and certain where nothing is in doubt', () => {
    expect(probabilityWithForm({ ...FORMED, seed: 4 })).toBe(
      probabilityWithForm({ ...FORMED, seed: 4 }),
    );
    expect(probabilityWithForm(plane([[2, 0]]))).toBe(1);
    expect(probabilityWithForm(plane([[2.001, 0]]))).toBe(0);
  });
});

describe('what is no zone', () => {
  it.each([
    ['no part', { parts: [] }],
    ['three parts', { parts: [1, 2, 3].map((value) => ({ value, standard: 1 })) }],
    ['a part that is no number', { parts: [{ value: Number.NaN, standard: 1 }] }],
    ['a standard uncertainty below 0', { parts: [{ value: 1, standard: -1 }] }],
    ['a covariance that is no number', { covariance: Number.NaN }],
    ['no degrees of freedom', { degreesOfFreedom: Number.NaN }],
    ['degrees below 1', { degreesOfFreedom: 0.5 }],
    ['a tolerance that is no number', { tolerance: Number.NaN }],
    ['a tolerance below 0', { tolerance: -1 }],
    ['a tolerance without end', { tolerance: INFINITE }],
    ['a residual that is no number', { points: line([0, Number.NaN, 0], 1) }],
    ['noise below 0', { points: line([0, 0, 0], -1) }],
    ['noise that is no number', { points: line([0, 0, 0], Number.NaN) }],
    ['a point without a share', { points: [{ shares: [], residual: 0, group: '', standard: 1 }] }],
    ['a seed that is no whole number', { seed: 0.5 }],
  ] satisfies [string, Partial<ZoneToSimulate>][])('is refused: %s', (_, wrong) => {
    expect(() => simulateZone(plane([[1, 0.3]], wrong))).toThrow(RangeError);
    expect(() => probabilityWithForm(plane([[1, 0.3]], wrong))).toThrow(RangeError);
  });
});
