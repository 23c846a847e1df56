import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  flatnessFindings,
  type PlannedPlace,
  settledFlatness,
} from '../../../src/core/inspection/flatness';
import type { Block } from '../../../src/core/part/block';
import { indicatorDoubt } from '../../../src/core/readings/doubts';
import { combined } from '../../../src/core/readings/equation';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import type { FaceMapReading, Reading } from '../../../src/core/readings/reading';
import { expectClose } from '../support/close';
import { BLOCK, CENTRE } from '../support/worked-block';

const LEVEL = 0.95;

type Place = readonly [x: number, y: number, value: number];

/** A map of the bottom; the ids count the places. */
function mapOf(places: readonly Place[], placing = 'map'): readonly Reading[] {
  return places.map(([x, y, value], index) => ({
    ...{ kind: 'face map', id: `${placing} ${index + 1}`, placing, face: 'bottom', value },
    point: { ...CENTRE, x, y },
  }));
}

/** Nine places in rows from the front, with these values. */
function grid(values: readonly number[], placing = 'map'): readonly Reading[] {
  return mapOf(
    values.map((value, index) => [20 * ((index % 3) - 1), 15 * (Math.floor(index / 3) - 1), value]),
    placing,
  );
}

function judged(
  readings: readonly Reading[],
  tolerance = 3,
  kit: Kit = DEFAULT_KIT,
  block: Block = BLOCK,
  planned: readonly PlannedPlace[] = [],
) {
  const flatness = [{ id: 'flat', face: 'bottom', tolerance }] as const;
  const part = { block, datum: 'bottom', requirements: [], finished: [], flatness } as const;
  const [finding] = flatnessFindings(part, readings, kit, LEVEL, planned);
  if (finding === undefined) throw new Error('It was asked for');
  return finding;
}

function fixed(...asked: Parameters<typeof judged>) {
  const finding = judged(...asked);
  if (!finding.fixed) throw new Error(`Not fixed: ${finding.lack.kind}`);
  return finding;
}

const BUMP = [0, 0, 0, 0, 4, 0, 0, 0, 0];

describe('the flatness of a face', () => {
  it.each([
    // One place over a plane: it alone holds the zone from above.
    ['a bump in the middle', BUMP, 4],
    // Tilted until the far corner holds it too: a quarter of that one and three of this meet the edge between.
    ['a raised corner', [0, 0, 4, 0, 0, 0, 0, 0, 0], 3],
    // u·v: two corners at +2, two at -2.
    ['a saddle', [2, 0, -2, 0, 0, 0, -2, 0, 2], 4],
    // A crown along x stands over its ends by all of its rise.
    ['a crown', [0, 3, 0, 0, 3, 0, 0, 3, 0], 3],
    ['a plane, however it lies', [1, 3, 5, 4, 6, 8, 7, 9, 11], 0],
  ])('with %s is the width of its minimum zone', (_, values, width) => {
    expectClose(fixed(grid(values)).zone.width, width, { absolute: 1e-12 });
  });

  it('is highest wherever a place lies in the upper plane, not only at those that hold it', () => {
    // A bowl on a slope: its four corners are alike, and two of them would do.
    expect(fixed(grid([2, 3, 6, 1, 2, 5, 2, 3, 6])).high).toEqual([
      'map 1',
      'map 3',
      'map 7',
      'map 9',
    ]);
  });

  it('is a sum of the readings that hold the zone, and so is its doubt', () => {
    const { zone, high } = fixed(grid(BUMP));
    const total = zone.terms.reduce((sum, { value, weight }) => sum + value * weight, 0);
    expectClose(total, zone.width);
    expectClose(
      zone.terms.reduce((sum, { weight }) => sum + weight, 0),
      0,
      { absolute: 1e-12 },
    );
    expect(high).toEqual(['map 5']);
    // The plate's ±0.5 goes into each reading in full.
    const one = Math.hypot(combined(indicatorDoubt(DEFAULT_KIT)), 0.5 / Math.sqrt(3));
    const shares = Math.hypot(...zone.terms.map(({ weight }) => weight));
    expectClose(zone.standard, one * shares);
    expect(zone.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  });

  it('hangs on no zero, tilt, order or turn of the map', () => {
    const value = fc.integer({ min: -20, max: 20 });
    const map = fc.array(value, { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(
        map,
        value,
        value,
        value,
        fc.integer({ min: 0, max: 8 }),
        (values, a, b, c, k) => {
          const { zone } = fixed(grid(values));
          const tilted = grid(
            values.map((one, i) => one + a + b * (i % 3) + c * Math.floor(i / 3)),
          );
          const other = [...tilted.slice(k), ...tilted.slice(0, k)];
          const turned = other.map((one) =>
            one.kind === 'face map'
              ? { ...one, point: { ...one.point, x: -one.point.y, y: one.point.x } }
              : one,
          );
          for (const same of [other, turned]) {
            expectClose(fixed(same).zone.width, zone.width, { absolute: 1e-9 });
          }
        },
      ),
    );
  });

  it('is as many times as wide in another unit, with as many times the doubt', () => {
    const values = [0, 2, 1, -3, 4, 0, 1, 1, -2];
    const times = (factor: number): Kit => ({
      ...DEFAULT_KIT,
      indicatorResolution: DEFAULT_KIT.indicatorResolution * factor,
      indicatorError: DEFAULT_KIT.indicatorError * factor,
      plate: DEFAULT_KIT.plate * factor,
    });
    const one = fixed(grid(values), 5);
    const other = fixed(grid(values.map((value) => value * 25.4)), 5 * 25.4, times(25.4));
    expectClose(other.zone.width, one.zone.width * 25.4, { relative: 1e-12 });
    expectClose(other.zone.standard, one.zone.standard * 25.4, { relative: 1e-12 });
    expectClose(other.probability, one.probability, { absolute: 1e-12 });
  });

  it('is read with a lever as its point moved, and known no better than its angle', () => {
    const lever: Kit = { ...DEFAULT_KIT, leverAngle: 60, leverWithin: 5 };
    const { zone } = fixed(grid(BUMP), 3, lever);
    expectClose(zone.width, 2);
    const causes = zone.contributions.filter(({ standard }) => standard > 0);
    expect(causes.map(({ cause }) => cause)).toContain('lever angle');
  });

  it('is in doubt by as much as warmth through the block may bow it', () => {
    const steel = { ...BLOCK, expansion: 12 };
    const { zone } = fixed(grid(BUMP), 3, { ...DEFAULT_KIT, warmth: 3 }, steel);
    const bow = zone.contributions.find(({ cause }) => cause === 'warmth');
    // k = 12e-6 · 3 K/√3 / 90 mm, and the places that hold the zone against the middle.
    const curvature = (12e-6 * 3) / Math.sqrt(3) / 90;
    const below = zone.terms.filter(({ weight }) => weight < 0);
    const spread = below.reduce((sum, { reading, weight }) => {
      const index = Number(reading.split(' ')[1]) - 1;
      return (
        sum - weight * ((20 * ((index % 3) - 1)) ** 2 + (15 * (Math.floor(index / 3) - 1)) ** 2)
      );
    }, 0);
    expectClose(bow?.standard, (curvature * spread * 1000) / 2, { relative: 1e-9 });
  });
});

describe('maps of one face', () => {
  it('that repeat each other are one, surer but for the plate', () => {
    const once = fixed(grid(BUMP));
    const twice = fixed([
      ...grid(BUMP.map((value) => value + 1)),
      ...grid(
        BUMP.map((value, index) => value - 1 + (index % 3)),
        'again',
      ),
    ]);
    expect(twice.maps).toBe(1);
    expectClose(twice.zone.width, 4);
    const causeOf = ({ zone }: typeof once, name: string) =>
      zone.contributions.find(({ cause }) => cause === name)?.standard;
    expectClose(causeOf(twice, 'indicator error'), causeOf(once, 'indicator error')! / Math.SQRT2);
    expectClose(causeOf(twice, 'plate'), causeOf(once, 'plate')!);
  });

  it('are as flat however they were levelled: a new zero and tilt say nothing of the face', () => {
    const micrometres = fc.integer({ min: -50, max: 50 });
    fc.assert(
      fc.property(micrometres, micrometres, micrometres, (zero, along, across) => {
        const levelled = BUMP.map(
          (value, at) => value + zero + along * (at % 3) + across * Math.floor(at / 3),
        );
        const both = fixed([...grid(BUMP), ...grid(levelled, 'again')]);
        expect(both.maps).toBe(1);
        expectClose(both.zone.width, fixed(grid(BUMP)).zone.width, { absolute: 1e-9 });
      }),
    );
  });

  it('of other places stay apart, and the widest counts', () => {
    const finer = mapOf(
      [
        [-25, -18, 0],
        [25, -18, 0],
        [-25, 18, 0],
        [25, 18, 0],
        [3, 4, 6],
      ],
      'finer',
    );
    const both = fixed([...grid(BUMP), ...finer]);
    expect(both).toMatchObject({ maps: 2, places: 5, high: ['finer 5'] });
    expectClose(both.zone.width, 6);
    expect(both.spans).toEqual([
      { read: 50, face: 60 },
      { read: 36, face: 40 },
    ]);
  });

  it('that are of another face, or show the thickness, say nothing of it', () => {
    const over = grid(BUMP).map((one) => ({ ...one, kind: 'over the top' }) as Reading);
    const other = grid(BUMP).map((one) => ({ ...one, face: 'top' }) as Reading);
    expect(judged(over)).toMatchObject({ lack: { kind: 'no map', thickness: true } });
    expect(judged(other)).toMatchObject({ lack: { kind: 'no map', thickness: false } });
  });

  it('do not fix it with three places, or with all of them on a line', () => {
    const three: readonly Place[] = [
      [0, 0, 1],
      [20, 0, 5],
      [0, 15, 2],
    ];
    expect(judged(mapOf(three))).toMatchObject({ fixed: false, lack: { kind: 'few places' } });
    // A place that is read twice is one.
    const again: Place = [0, 15, 9];
    expect(judged(mapOf([...three, again]))).toMatchObject({ lack: { kind: 'few places' } });
    expect(fixed(mapOf([...three, [20, 15, 9]])).places).toBe(4);
    const line = [-20, -10, 0, 10, 20].map((x): Place => [x, x / 2, x * x]);
    expect(judged(mapOf(line))).toMatchObject({ lack: { kind: 'on a line' } });
  });
});

describe('the verdict on a flatness', () => {
  it('at exactly the limit is too close to call, at even odds', () => {
    const { probability, verdict, toSimulate } = fixed(grid(BUMP), 4);
    expect([probability, verdict, toSimulate]).toEqual([0.5, 'too close to call', undefined]);
  });

  it('is in where width and doubt lie within the tolerance, with nothing to simulate', () => {
    const { standard } = fixed(grid(BUMP)).zone;
    // 1.645 is the 95 % point of the normal distribution.
    expect(fixed(grid(BUMP), 4 + 1.65 * standard)).toMatchObject({ verdict: 'in' });
    expect(fixed(grid(BUMP), 4 + 1.64 * standard).verdict).toBe('too close to call');
  });

  it('over the tolerance waits for what noise may have done, which only makes it likelier', () => {
    const wide = fixed(grid(BUMP), 2.5);
    expect(wide.toSimulate).toMatchObject({ width: wide.zone.width, tolerance: 2.5 });
    const settled = settledFlatness(wide, 0.2, LEVEL);
    expect(settled).toMatchObject({ probability: 0.2, verdict: 'too close to call' });
    expect(settled).not.toHaveProperty('toSimulate');
    expect(settledFlatness(wide, 0, LEVEL).probability).toBe(wide.probability);
  });

  it('with instruments that are never off is certain either way', () => {
    const sharp = { ...DEFAULT_KIT, indicatorResolution: 0, indicatorError: 0, plate: 0 };
    expect(fixed(grid(BUMP), 4.001, sharp).probability).toBe(1);
    expect(fixed(grid(BUMP), 3.999, sharp).probability).toBe(0);
  });
});

describe('a map of which places are still to be read', () => {
  const all = grid([0, 1, 0, 1, 0, 1, 0, 1, 0]);
  const corners = [0, 2, 6, 8].map((index) => all[index]!);
  const planned = (read: readonly Reading[]) =>
    all.filter((place) => !read.includes(place)) as FaceMapReading[];
  const soFar = (read: readonly Reading[], tolerance: number, places = planned(read)) =>
    judged(read, tolerance, DEFAULT_KIT, BLOCK, places);

  it('is not in before they are: the zone can only grow', () => {
    expect(soFar(corners, 3)).toMatchObject({
      ...{ fixed: false },
      lack: { kind: 'places to read', places: 4, width: 0, unread: 5 },
    });
    expect(soFar(all, 3)).toMatchObject({ fixed: true, verdict: 'in', unread: 0 });
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 9, maxLength: 9 }),
        (values) => {
          const read = grid(values);
          const four = fixed([0, 2, 6, 8].map((index) => read[index]!));
          expect(four.zone.width).toBeLessThanOrEqual(fixed(read).zone.width + 1e-9);
        },
      ),
    );
  });

  it('may be out already', () => {
    const twisted = [...grid([9, 0, 0, 0, 0, 0, 0, 0, 9])];
    const read = [0, 2, 6, 8].map((index) => twisted[index]!);
    expect(soFar(read, 1, planned(corners))).toMatchObject({ fixed: true, unread: 5 });
  });

  it('asks for no place again that another map has read, nor for one of another face', () => {
    expect(soFar(all, 3, planned([]))).toMatchObject({ fixed: true, unread: 0 });
    const others = planned(all.slice(0, 4)).map((one) => ({ ...one, face: 'top' as const }));
    expect(soFar(all.slice(0, 9), 3, others)).toMatchObject({ fixed: true, unread: 0 });
  });
});
