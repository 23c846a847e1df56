import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { outOfSquare, taper } from '../../../src/core/part/face-errors';
import type { Face } from '../../../src/core/part/faces';
import { type LinearForm, unknown } from '../../../src/core/part/linear-form';
import type { Cause } from '../../../src/core/readings/equation';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { zeroOfSetting } from '../../../src/core/readings/unknowns';
import { leverUncertainty } from '../../../src/core/statistics/lever-angle';
import { leanUncertainty } from '../../../src/core/statistics/temperature-gradient';
import { LEVER_EXAMPLES, LEVER_TABLES } from '../statistics/reference/lever';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, micrometer, nose, traverse } from '../support/readings';
import { CENTRE, BLOCK as COLD } from '../support/worked-block';

/** Steel, 10⁻⁶ per K. */
const BLOCK = { ...COLD, expansion: 11.5 };
const KIT: Kit = { ...DEFAULT_KIT, heightSetting: 0, warmth: 0 };
const RIGHT = outOfSquare('right', 'bottom');
const ZERO = unknown(zeroOfSetting('comparator'));
const RELATIVE = { relative: 1e-6 };

/** What `cause` does to `form`, in its unit. */
function effectOn(form: LinearForm, cause: Cause, readings: readonly Reading[], kit: Partial<Kit>) {
  const estimate = adjust(equationsOf(readings, BLOCK, { ...KIT, ...kit })).estimate(form);
  return known(estimate).contributions.find((one) => one.cause === cause)?.standard ?? 0;
}

const swung = (right: number, left: number, setting = 'comparator') => [
  nose('right', right, { setting }),
  nose('left', left, { setting }),
];
const parallel = assumedParallel('right', 0.01);
const thicknesses = [micrometer('right', { z: -40 }, 0), micrometer('right', { z: 40 }, 0)];

describe('a lever at an angle', () => {
  const equationAt = (reading: Reading, leverAngle: number) =>
    equationsOf([reading], BLOCK, { ...KIT, leverAngle })[0]!;
  const kinds: readonly ((value: number) => Reading)[] = [
    (value) => nose('right', value),
    (value) => traverse('right', { 10: value })[0]!,
    (value) => {
      const place = { placing: 'p', face: 'top' as Face, point: CENTRE };
      return { kind: 'over the top', id: 'o', ...place, value };
    },
  ];

  it('makes readings and their doubt smaller by its cosine, as the trade tables have it', () => {
    for (const read of kinds) {
      LEVER_TABLES.angles.forEach((angle, at) => {
        const { value, components } = equationAt(read(1), angle);
        expect(value.toFixed(2)).toBe(LEVER_TABLES.rounded[at]);
        // Resolution and error of the indicator.
        for (const which of [0, 1]) {
          const straight = equationAt(read(1), 0).components[which]!.standard;
          expectClose(components[which]!.standard, value * straight);
        }
      });
      for (const { reading, angle, movement } of LEVER_EXAMPLES) {
        expect(equationAt(read(reading), angle).value.toFixed(4)).toBe(movement);
      }
    }
    expect(equationAt(thicknesses[1]!, 60)).toEqual(equationAt(thicknesses[1]!, 0));
  });

  it('known only so well, is off for all readings of a setting alike', () => {
    const kit = { leverAngle: 20, leverWithin: 5 };
    const one = leverUncertainty(1, 20, 5);
    const effect = (right: number, left: number) =>
      effectOn(RIGHT, 'lever angle', [...swung(right, left), parallel], kit);
    expectClose(effect(34, 31), (3 * one) / 148, RELATIVE);
    expectClose(effect(20, -20), (40 * one) / 148, RELATIVE);
    expect(effect(34, 34)).toBeLessThan(1e-12);
  });
});

describe('an indicator over the top', () => {
  const growing = taper('right', 'top');
  const values = [
    [-40, 0],
    [40, 8],
  ] as const;
  const byMicrometer = values.map(([z, value]) => micrometer('right', { z }, value));
  const overTop = values.map(([z, value]): Reading => {
    const place = { placing: 'p', face: 'right' as Face, point: { ...CENTRE, z } };
    return { kind: 'over the top', id: `over the top at ${z}`, ...place, value };
  });

  it.each([
    ['height setting', { heightSetting: 0.3 }, ((8 / 80) * 0.3 * Math.SQRT2) / 80],
    ['warmth', { warmth: 0.1 }, undefined],
  ] as const)(
    'shares with the micrometer what its places are doubted for: %s',
    (cause, kit, by) => {
      const effect = effectOn(growing, cause, overTop, kit);
      expectClose(effect, effectOn(growing, cause, byMicrometer, kit), RELATIVE);
      expect(effect).toBeGreaterThan(0);
      if (by !== undefined) expectClose(effect, by, RELATIVE);
    },
  );

  it('has a lever whose angle is off for all of its places alike', () => {
    const kit = { leverAngle: 20, leverWithin: 5 };
    expectClose(
      effectOn(growing, 'lever angle', overTop, kit),
      leverUncertainty(8, 20, 5) / 80,
      RELATIVE,
    );
  });
});

describe('heights', () => {
  it('of one setting are off alike however often it reads; of two, each by itself', () => {
    const height = { heightSetting: 0.3 };
    const effect = (readings: readonly Reading[]) =>
      effectOn(RIGHT, 'height setting', [...readings, parallel], height);
    const once = effect(swung(34, 31));
    // e·δ/74, for the nose and for the indicator.
    expectClose(once, (3 / 148) * ((0.3 * Math.SQRT2) / 74), RELATIVE);
    const again = swung(34, 31).map((one) => ({ ...one, id: `${one.id} again` }));
    expectClose(effect([...swung(34, 31), ...again]), once, RELATIVE);
    const other = swung(34, 31, 'other');
    expectClose(effect([...swung(34, 31), ...other]), once / Math.SQRT2, RELATIVE);
  });
});

describe('warmth', () => {
  const kit = { warmth: 0.1 };
  /** From left to right, and from bottom to top. */
  const across = leanUncertainty({ coefficient: 11.5, difference: 0.1, along: 60, across: 90 });
  const upwards = leanUncertainty({ coefficient: 11.5, difference: 0.1, along: 90, across: 60 });

  it.each([
    ['by reversal and micrometer', [...swung(34, 31), ...thicknesses]],
    [
      'by four corners',
      [
        nose('right', 6, { base: 'bottom', low: 5, high: 55 }),
        nose('top', -1, { base: 'right', low: 5, high: 55 }),
        nose('left', 7, { base: 'top', low: 5, high: 55 }),
        nose('bottom', -4, { base: 'left', low: 5, high: 55 }),
      ],
    ],
  ])('puts its own doubt on the lean, from both gradients: %s', (_, readings) => {
    expectClose(effectOn(RIGHT, 'warmth', readings, kit), Math.hypot(across, upwards), RELATIVE);
    const left = outOfSquare('left', 'bottom');
    expectClose(effectOn(left, 'warmth', readings, kit), Math.hypot(across, upwards), RELATIVE);
    // The comparator is none the warmer: in its zero the readings' own doubts cancel.
    expect(effectOn(ZERO, 'warmth', readings, kit)).toBeLessThan(1e-9);
  });

  it('from side to side has opposite signs on the two sides, from below the same', () => {
    const readings = [...swung(34, 31), parallel];
    // Half the difference of the sides has it from side to side; half the sum is in the zero.
    expectClose(effectOn(RIGHT, 'warmth', readings, kit), across, RELATIVE);
    expectClose(effectOn(ZERO, 'warmth', readings, kit), 74 * upwards, RELATIVE);
    expect(across).toBeGreaterThan(2 * upwards);
  });

  it('of the warm side: it leans in, where the cool one and both on a cold plate lean out', () => {
    const comparator = swung(0, 0);
    const column = [traverse('right', { 80: 0 })[0]!, traverse('left', { 80: 0 })[0]!];
    // The comparator shows what the face does from its nose up, the column from the plate up.
    for (const [readings, reach] of [
      [comparator, 74],
      [column, 80],
    ] as const) {
      const [right, left] = readings.map((reading) => {
        const [equation] = equationsOf([reading], BLOCK, { ...KIT, ...kit });
        return new Map(equation?.shared.map(({ source, shift }) => [source, shift]));
      });
      expectClose(right!.get('warmth along x') as number, -reach * across, RELATIVE);
      expectClose(left!.get('warmth along x') as number, reach * across, RELATIVE);
      for (const side of [right!, left!]) {
        expectClose(side.get('warmth along z') as number, reach * upwards, RELATIVE);
      }
    }
  });

  it('is not reckoned with where the expansion is not known', () => {
    const equations = equationsOf(swung(34, 31), COLD, { ...KIT, ...kit });
    expect(equations.flatMap(({ shared }) => shared.map(({ cause }) => cause))).not.toContain(
      'warmth',
    );
  });
});
