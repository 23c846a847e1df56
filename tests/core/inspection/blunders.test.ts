import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import type { EquationCheck } from '../../../src/core/adjustment/checks';
import { inspect } from '../../../src/core/inspection/inspect';
import { combined } from '../../../src/core/readings/equation';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import { known } from '../support/known';
import { manyRandoms, randomFrom } from '../support/random';
import { repeatedReadings, withBlunder } from '../support/repeated-inspection';
import { BLOCK, partWith } from '../support/worked-block';

/** Heights known for certain: what readings share is not in the weights, and so not in the checks. */
const KIT = { ...DEFAULT_KIT, heightSetting: 0 };
const CASES = 1000;
const PART = partWith([]);
const SEATINGS = 3;

/** The half width of three standard deviations of a share of `count` cases. */
const sampling = (share: number, count = CASES) => 3 * Math.sqrt((share * (1 - share)) / count);

/** Which readings are checked does not hang on their values: one inspection tells for all. */
const layout = equationsOf(repeatedReadings(KIT, randomFrom(1), SEATINGS), BLOCK, KIT);
const standards = new Map(layout.map((one) => [one.reading, combined(one.components)]));
const redundancies = new Map(
  adjust(layout).checks.map(({ reading, redundancy }) => [reading, redundancy]),
);
const checked = [...redundancies]
  .filter(([id, redundancy]) => redundancy >= 0.3 && !id.startsWith('sit'))
  .map(([id]) => id);

const outcomes = manyRandoms(CASES, 77).map((random, index) => {
  const id = checked[index % checked.length]!;
  const amount = 10 * known(standards.get(id)) * (random.between(-1, 1) < 0 ? -1 : 1);
  const readings = withBlunder(repeatedReadings(KIT, random, SEATINGS), id, amount);
  const { checks, suspects, crowns } = inspect(PART, readings, KIT, 0.95);
  const own = known(checks.find(({ reading }) => reading === id));
  return { id, amount, own, suspects, slips: crowns.flatMap(({ orSlip }) => orSlip), crowns };
});

describe(`a blunder of ten standard uncertainties, in ${CASES} inspections`, () => {
  it('falls on comparator, micrometer and column alike', () => {
    expect(checked).toHaveLength(2 * SEATINGS + 2 * 4 + 2 * 4);
  });

  // 99 ± 0.3 of 100: by the noncentral distribution it is about 99.7.
  it('is named in 99 of 100', () => {
    const found = outcomes.filter(({ id, suspects, slips }) =>
      [...suspects, ...slips].some((one) => one.reading === id),
    );
    expect(found.length / CASES).toBeGreaterThanOrEqual(0.99);
  });

  it('is named alone, but where it is at an end of a traverse, which may be a hollow', () => {
    const alone = outcomes.filter(({ crowns }) => crowns.length === 0);
    for (const { id, suspects } of alone) expect(suspects).toMatchObject([{ reading: id }]);
    const others = outcomes.filter(({ crowns }) => crowns.length > 0);
    for (const { id } of others) expect(id).toMatch(/column on bottom at (10|80)$/);
    expect(others.length / CASES).toBeLessThan(0.06);
  });

  it('is told with its size: off by no more than σ/√r, as a normal distribution has it', () => {
    const off = outcomes.map(({ id, amount, own }) => {
      const standard = known(standards.get(id)) / Math.sqrt(known(redundancies.get(id)));
      return (known(own.blunder) - amount) / standard;
    });
    const within = (times: number) => off.filter((one) => Math.abs(one) <= times).length / CASES;
    expect(Math.abs(within(1.96) - 0.95)).toBeLessThan(sampling(0.95));
    expect(Math.abs(within(0.6745) - 0.5)).toBeLessThan(sampling(0.5));
    const mean = off.reduce((total, one) => total + one, 0) / CASES;
    expect(Math.abs(mean)).toBeLessThan(3 / Math.sqrt(CASES));
  });
});

describe('without a blunder', () => {
  // Cheaper than whole inspections: the checks alone, of the same equations.
  const alarms = manyRandoms(CASES, 50_021).map((random) => {
    const readings = repeatedReadings(KIT, random, SEATINGS);
    const { checks } = adjust(equationsOf(readings, BLOCK, KIT));
    return checks.filter(({ reading }) => checked.includes(reading));
  });
  const shareBeyond = (limit: number) => {
    const beyond = ({ standardised }: EquationCheck) => Math.abs(known(standardised)) > limit;
    // The readings of one inspection go together, so that the inspections are the sample.
    const counts = alarms.map((checks) => checks.filter(beyond).length / checked.length);
    const mean = counts.reduce((total, one) => total + one, 0) / CASES;
    const squares = counts.reduce((total, one) => total + (one - mean) ** 2, 0);
    return { mean, error: Math.sqrt(squares / (CASES - 1) / CASES) };
  };

  // Two-sided points of the normal distribution, from any table.
  it.each([
    [3.290527, 0.001],
    [2.575829, 0.01],
    [1.959964, 0.05],
  ])('beyond %d lies a share of %d of the readings', (limit, share) => {
    const { mean, error } = shareBeyond(limit);
    expect(Math.abs(mean - share)).toBeLessThan(3 * error);
    expect(error).toBeLessThan(share / 3);
  });
});

describe('two readings that only check each other', () => {
  it('are both suspect: nobody can say which of them is wrong', () => {
    const pair = repeatedReadings(KIT, randomFrom(5), 2).filter(
      ({ kind, face }) => kind === 'nose comparator' && face === 'right',
    );
    const id = pair[1]!.id;
    const { suspects } = inspect(PART, withBlunder(pair, id, 20), KIT, 0.95);
    expect(suspects.map(({ reading }) => reading)).toEqual(pair.map((one) => one.id));
    const sizes = suspects.map(({ blunder }) => known(blunder));
    expect(Math.abs(sizes[0]! + sizes[1]!)).toBeLessThan(1e-9);
    expect(inspect(PART, pair, KIT, 0.95).suspects).toEqual([]);
  });
});
