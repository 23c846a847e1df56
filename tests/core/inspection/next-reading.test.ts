import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { furtherReadings } from '../../../src/core/inspection/candidates';
import { type InspectionAnswer, inspect } from '../../../src/core/inspection/inspect';
import { nextReading } from '../../../src/core/inspection/next-reading';
import type { Part } from '../../../src/core/part/part';
import { kindOf } from '../../../src/core/part/requirement';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { zoneOfRequirement } from '../../../src/core/zones/zone-of-requirement';
import { expectClose } from '../support/close';
import { PART, someReadings } from '../support/inspections';
import { known } from '../support/known';
import { type Random, randomFrom } from '../support/random';
import { assumedParallel, micrometer, nose, traverse } from '../support/readings';
import { again } from '../support/repeated-inspection';
import { BLOCK, partWith, requirement } from '../support/worked-block';

/** With heights known for certain, how doubtful a result is does not hang on what will be read. */
const KIT = { ...DEFAULT_KIT, heightSetting: 0 };
const SQUARE = {
  ...PART,
  requirements: PART.requirements.filter((one) => kindOf(one) === 'squareness'),
};
const WORTH_IT = 0.02;

function nextAfter(part: Part, answer: InspectionAnswer) {
  const { readings, kit, findings, adjustment } = answer;
  return nextReading(part, readings, kit, findings, adjustment);
}

function nextOf(part: Part, readings: readonly Reading[], kit = DEFAULT_KIT) {
  return nextAfter(part, inspect(part, readings, kit, 0.95));
}

/** The reading as somebody may come to take it. */
function asRead(reading: Reading, random: Random): Reading {
  const value = random.between(-50, 50);
  if (reading.kind === 'assumed parallel') return reading;
  return reading.kind === 'micrometer' ? { ...reading, departure: value } : { ...reading, value };
}

describe('the reading that is advised next', () => {
  const seen = { advised: 0, none: 0 };

  it('has the least doubt of all that could be added, for the requirement hardest to decide', {
    timeout: 60_000,
  }, () => {
    const random = randomFrom(9);
    fc.assert(
      fc.property(someReadings, (readings) => {
        const answer = inspect(SQUARE, readings, KIT, 0.95);
        const next = nextAfter(SQUARE, answer);
        const { findings, kit } = answer;
        const fixed = findings.flatMap((finding) => (finding.fixed ? [finding] : []));
        const hardness = fixed.map(({ probability }) => Math.abs(probability - 0.5));
        const hardest = fixed[hardness.indexOf(Math.min(...hardness))];
        if (hardest === undefined) {
          expect(next).toBeUndefined();
          return;
        }
        const options = furtherReadings(hardest.requirement, readings, BLOCK).map((candidate) => {
          const added = candidate.readings.map((reading) => asRead(reading, random));
          const adjustment = adjust(equationsOf([...readings, ...added], BLOCK, kit));
          const zone = zoneOfRequirement(hardest.requirement, BLOCK, adjustment);
          return { remedy: candidate.remedy, standard: known(zone).standard };
        });
        const least = Math.min(...options.map(({ standard }) => standard));
        const now = hardest.zone.standard;
        if (next === undefined) {
          seen.none += 1;
          expect(least).toBeGreaterThan(now * (1 - WORTH_IT) * (1 - 1e-9));
          return;
        }
        seen.advised += 1;
        expect(next.requirement).toBe(hardest.requirement.id);
        expectClose(next.now, now);
        expectClose(next.then, least, { relative: 1e-7 });
        expect(next.then).toBeLessThanOrEqual(now * (1 - WORTH_IT));
        const advised = options.find(({ remedy }) => sameWork(remedy, next.remedy));
        expectClose(known(advised).standard, least, { relative: 1e-7 });
      }),
      { numRuns: 90, seed: 4 },
    );
    expect(seen.advised).toBeGreaterThan(20);
  });
});

function sameWork(one: object, other: object): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

describe('the gain', () => {
  const part = partWith([requirement('right', 'left')]);
  /** A micrometer with a standard uncertainty of 1 µm. */
  const kit = { ...KIT, micrometerResolution: Math.sqrt(12), micrometerError: 0 };
  const corner = (y: number, z: number, departure: number) =>
    micrometer('right', { y, z }, departure);

  it('of a fourth corner, by hand: the width goes from √6 to √2 µm', () => {
    // From m1 at one corner and m2, m3 at its neighbours: p = m2 - m1 and q = m3 - m1 over the face,
    // and the width p + q = m2 + m3 - 2·m1 has the variance 6 µm². With the corner m4 opposite to m1,
    // p = (m2 + m4 - m1 - m3)/2 and q = (m3 + m4 - m1 - m2)/2: p + q = m4 - m1 has 2 µm².
    const readings = [corner(-20, -45, 0), corner(20, -45, 6), corner(-20, 45, 6)];
    const next = nextOf(part, readings, kit);
    expect(next?.remedy).toEqual({
      kind: 'micrometer at a corner',
      face: 'right',
      towards: ['back', 'top'],
    });
    expectClose(next?.now, Math.sqrt(6));
    expectClose(next?.then, Math.SQRT2);
  });
});

describe('with a column at work', () => {
  const part = partWith([requirement('right', 'bottom')]);
  const sides = [traverse('right', { 10: 4, 80: 31 }), traverse('left', { 10: 7, 80: 24 })].flat();
  const readings = [
    ...sides,
    micrometer('right', { z: -35 }, 0),
    micrometer('right', { z: 35 }, 3),
  ];

  it('both sides are to be run up once more, and no comparator is fetched', () => {
    // The indicator alone in doubt: the difference of the two sides then is known √2 times as well.
    const kit = {
      ...KIT,
      ...{ indicatorResolution: 10, indicatorError: 0, seating: 0, plate: 0, warmth: 0 },
      ...{ micrometerResolution: 1e-6, micrometerError: 0 },
    };
    const next = nextOf(part, readings, kit);
    expect(next?.remedy).toEqual({
      ...{ kind: 'seat again and traverse', column: 'column' },
      ...{ faces: ['right', 'left'], base: 'bottom' },
    });
    expectClose(next?.then, known(next).now / Math.SQRT2, { relative: 1e-6 });
  });

  it('of several seatings the last stands for them', () => {
    const more = sides.map((one) => ({
      ...one,
      id: `${one.id} more`,
      placing: `${one.placing} more`,
    }));
    const candidates = furtherReadings(part.requirements[0]!, [...readings, ...more], BLOCK);
    const [again] = candidates.filter(({ remedy }) => remedy.kind === 'seat again and traverse');
    expect(again?.readings.map(({ id }) => id)).toEqual(more.map(({ id }) => `remedy ${id}`));
  });
});

describe('what size the block is', () => {
  const thick = (offset: number) =>
    [-40, -10, 40].map((z) => micrometer('right', { z }, offset + 1 + 0.05 * z));
  const corners = (offset: number) => [
    micrometer('right', { y: -20, z: -45 }, offset),
    micrometer('right', { y: 20, z: -45 }, offset + 6),
    micrometer('right', { y: -20, z: 45 }, offset + 6),
  ];

  it.each([
    ['bottom', (offset: number) => [...thick(offset), nose('right', 34), nose('left', 31)]],
    ['left', corners],
  ] as const)('sways nothing: off by 0, 30 or 500 µm, for right to %s', (datum, readings) => {
    const part = partWith([requirement('right', datum, 8)]);
    const [exact, ...others] = [0, 30, 500].map((offset) => known(nextOf(part, readings(offset))));
    for (const other of others) {
      expect(other.remedy).toEqual(exact?.remedy);
      expect(other.requirement).toBe(exact?.requirement);
      expectClose(other.now, exact!.now, { relative: 1e-9 });
      expectClose(other.then, exact!.then, { relative: 1e-9 });
    }
  });

  it('sways nothing of what is advised, whatever was read', { timeout: 60_000 }, () => {
    let advised = 0;
    fc.assert(
      fc.property(someReadings, fc.constantFrom(30, 500), (readings, offset) => {
        const shifted = readings.map((reading) =>
          reading.kind === 'micrometer'
            ? { ...reading, departure: reading.departure + offset }
            : reading,
        );
        const [one, other] = [readings, shifted].map((all) => nextOf(PART, all));
        expect(other?.requirement).toBe(one?.requirement);
        if (one === undefined) return;
        advised += 1;
        expectClose(other?.now, one.now, { relative: 1e-6 });
        expectClose(other?.then, one.then, { relative: 1e-6 });
      }),
      { numRuns: 40, seed: 12 },
    );
    expect(advised).toBeGreaterThan(10);
  });
});

describe('two places that would be read', () => {
  it('are hit or missed each by itself', () => {
    // A taper of 0.5 µm/mm, and places hit to 4 mm: 2 µm each, which one error for both would hide.
    const kit = { ...DEFAULT_KIT, heightSetting: 4 };
    const part = partWith([requirement('right', 'bottom')]);
    const thick = [-40, 40].map((z) => micrometer('right', { z }, 0.5 * z));
    const readings = [nose('right', 34), nose('left', 31), ...thick];
    const next = nextOf(part, readings, kit);
    expect(next?.remedy.kind).toBe('micrometer at two heights');
    const more = [-22.5, 22.5].map((z) => again(micrometer('right', { z }, 0.5 * z), 1));
    const [finding] = inspect(part, [...readings, ...more], kit, 0.95).findings;
    expectClose(next?.then, finding?.fixed ? finding.zone.standard : Number.NaN, {
      relative: 1e-6,
    });
  });
});

describe('no reading is advised', () => {
  const part = partWith([requirement('right', 'bottom')]);

  it('where nothing is read, or the requirement is not fixed', () => {
    expect(nextOf(part, [], KIT)).toBeUndefined();
    expect(nextOf(part, [nose('right', 34), nose('left', 31)], KIT)).toBeUndefined();
  });

  it('where so much was read that one more brings less than a fiftieth', () => {
    const read = (times: number) =>
      Array.from({ length: times }, (_, index) => [
        again(nose('right', 34 + (index % 2)), index),
        again(nose('left', 31 + (index % 2)), index),
      ]).flat();
    const word = assumedParallel('right', 0.01);
    expect(nextOf(part, [...read(4), word], KIT)).toBeDefined();
    expect(nextOf(part, [...read(60), word], KIT)).toBeUndefined();
  });
});
