import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/core/inspection/inspect';
import type { Face } from '../../../src/core/part/faces';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { known } from '../support/known';
import { type Random, randomFrom } from '../support/random';
import { traverse } from '../support/readings';
import { partWith, requirement } from '../support/worked-block';

const TENTH = 2.54;
const INCH = 25.4;
const KIT = { ...DEFAULT_KIT, indicatorResolution: TENTH };

/** 2.5 × 1.5 × 3.25 in, its right within 2 tenths of square to its bottom. */
const PART = partWith([requirement('right', 'bottom', 2 * TENTH)], [], {
  size: { x: 2.5 * INCH, y: 1.5 * INCH, z: 3.25 * INCH },
});

/** The corners of the section, each as face and base, and how much of the squareness shows there. */
const CORNERS = [
  ['right', 'bottom', 1],
  ['left', 'bottom', -1],
  ['top', 'right', -1],
  ['left', 'top', 1],
] as const;

/** One more seating at every corner, to half a tenth: out of square by `slope` tenths per inch, the column leaning by 2. */
function seated(slope: number, seating: number, random: Random): readonly Reading[] {
  return CORNERS.flatMap(([face, base, sign]) => {
    const sat = random.between(-0.1, 0.1) / 2.5;
    const at = (inches: number) => {
      const shown = (2 + sign * slope + sat) * inches + random.between(-0.25, 0.25);
      return (Math.round(shown * 2) / 2) * TENTH;
    };
    const values = { [0.5 * INCH]: at(0.5), [2.25 * INCH]: at(2.25) };
    return traverse(face as Face, values, { base: base as Face }).map((reading) => ({
      ...reading,
      id: `${reading.id}, ${seating}`,
      placing: `${reading.placing}, ${seating}`,
    }));
  });
}

/** Seats the block again as often as is said each time, and tells how it ends. */
function walk(slope: number, seed: number) {
  const random = randomFrom(seed);
  const readings = [...seated(slope, 0, random)];
  for (let rounds = 0, seatings = 1; ; rounds += 1) {
    const [finding] = inspect(PART, readings, KIT, 0.95).findings;
    const { verdict, seatings: more } = known(finding?.fixed ? finding : undefined);
    if (verdict !== 'too close to call' || typeof more !== 'number') return { verdict, rounds };
    for (let count = more; count > 0; count -= 1) {
      readings.push(...seated(slope, seatings, random));
      seatings += 1;
    }
  }
}

describe('seating it again as often as is said', () => {
  const seeds = Array.from({ length: 8 }, (_, index) => index + 1);

  it.each([
    [0.15, 'in'],
    [0.25, 'in'],
    [0.9, 'out'],
    [1, 'out'],
  ] as const)('%d tenths per inch out of square: ends with the drawing %s', (slope, verdict) => {
    for (const seed of seeds) {
      const end = walk(slope, seed);
      expect(end.verdict).toBe(verdict);
      expect(end.rounds).toBeLessThanOrEqual(4);
    }
  });

  it('is called for where one seating does not do', () => {
    expect(seeds.filter((seed) => walk(0.15, seed).rounds > 0).length).toBeGreaterThan(3);
  });
});
