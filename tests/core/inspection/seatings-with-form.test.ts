import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/core/inspection/inspect';
import { seatingsToSettleWithForm } from '../../../src/core/inspection/seatings-with-form';
import type { Requirement } from '../../../src/core/part/requirement';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { DEFAULT_LEVEL, decide } from '../../../src/core/verdict/conformity';
import { simulateZone } from '../../../src/core/verdict/monte-carlo';
import { assumedParallel, micrometer, traverse } from '../support/readings';
import { again } from '../support/repeated-inspection';
import { BLOCK, partWith, requirement } from '../support/worked-block';

/** A right side that is bowed by some µm, read up a column, and a left side. */
const ONCE = [
  ...traverse('right', { 10: 4, 33: 15, 57: 26, 80: 31 }),
  ...traverse('left', { 10: 7, 45: 15.5, 80: 24 }),
];
const WORD = assumedParallel('right', 0.1);

/** All of it read as many times more, the block seated anew, with the same outcome. */
function seatedMore(times: number): readonly Reading[] {
  const seatings = Array.from({ length: times + 1 }, (_, index) =>
    ONCE.map((one) => ({ ...again(one, index), placing: `${one.placing}, seating ${index}` })),
  );
  return [...seatings.flat(), WORD];
}

function asked(one: Requirement, readings: readonly Reading[]) {
  const { findings, kit } = inspect(partWith([one]), readings, DEFAULT_KIT, DEFAULT_LEVEL);
  const [finding] = findings;
  if (finding?.fixed !== true) throw new Error('The readings fix it');
  const { zone, formPoints: points } = finding;
  const chance = simulateZone({ ...zone, points, tolerance: one.tolerance }).probability;
  const toSettle = { requirement: one, zone, points, block: BLOCK, readings, kit };
  return { finding, verdict: decide(chance), toSettle: { ...toSettle, level: DEFAULT_LEVEL } };
}

const within = (tolerance: number, readings = seatedMore(0)) =>
  asked(requirement('right', 'bottom', tolerance), readings);

describe('with form, the seatings that would settle a verdict', () => {
  it('are not reckoned with each keystroke', () => {
    const { finding } = within(7.8);
    expect(finding.formPoints).toHaveLength(4);
    expect(finding).not.toHaveProperty('seatings');
  });

  // 7.2 µm wide: two tolerances that it is likely to meet, and one that it is not.
  it.each([
    [7.9, 2, 'in'],
    [7.8, 3, 'in'],
    [6.6, 2, 'out'],
  ] as const)('within %d µm are the %d that do settle it, one less not', (tolerance, times, to) => {
    expect(within(tolerance).verdict).toBe('too close to call');
    expect(seatingsToSettleWithForm(within(tolerance).toSettle)).toBe(times);
    expect(within(tolerance, seatedMore(times)).verdict).toBe(to);
    expect(within(tolerance, seatedMore(times - 1)).verdict).toBe('too close to call');
  });

  it('are more the closer the width lies to the tolerance, and none on it', () => {
    const [closer, close, on] = [7.6, 7.9, 7.25].map((tolerance) =>
      seatingsToSettleWithForm(within(tolerance).toSettle),
    );
    expect(Number(closer)).toBeGreaterThan(Number(close));
    expect(on).toBe('none');
  });

  it('are the same for the same readings', () => {
    const { toSettle } = within(7.7);
    const copy = JSON.parse(JSON.stringify({ ...toSettle, zone: partsOf(toSettle.zone) }));
    expect(seatingsToSettleWithForm(copy)).toBe(seatingsToSettleWithForm(toSettle));
  });

  it('are none where no seating would read anything again', () => {
    const places = [-40, 0, 40].flatMap((z) =>
      [-15, 15].map((y) => micrometer('right', { y, z }, 0.1 * z + (z === 0 ? 4 : 0))),
    );
    const { verdict, toSettle } = asked(requirement('right', 'left', 10.5), places);
    expect(toSettle.points).toHaveLength(6);
    expect(verdict).toBe('too close to call');
    expect(seatingsToSettleWithForm(toSettle)).toBe('none');
  });
});

/** A finding's zone as it is sent to a worker. */
function partsOf({
  parts,
  covariance,
  degreesOfFreedom,
}: ReturnType<typeof within>['toSettle']['zone']) {
  return { parts, covariance, degreesOfFreedom };
}
