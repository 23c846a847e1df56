import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adjust, type Estimate } from '../../../src/core/adjustment/adjustment';
import { outOfSquare, taper } from '../../../src/core/part/face-errors';
import { FACES, pairsAround } from '../../../src/core/part/faces';
import { type LinearForm, scaled, unknown } from '../../../src/core/part/linear-form';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import { leanOf, zeroOfSetting } from '../../../src/core/readings/unknowns';
import { expectClose } from '../support/close';
import { someReadings } from '../support/inspections';
import { known } from '../support/known';
import { assumedParallel, micrometer, nose, traverse } from '../support/readings';
import { BLOCK as COLD } from '../support/worked-block';

const BLOCK = { ...COLD, expansion: 11.5 };
/** Every cause of doubt there is. */
const KIT: Kit = { ...DEFAULT_KIT, leverAngle: 15, leverWithin: 5, warmth: 1, seatingDegrees: 3 };

const FORMS: readonly LinearForm[] = [
  ...FACES.flatMap((base) => pairsAround(base).map(([face]) => outOfSquare(face, base))),
  ...FACES.flatMap((face) => pairsAround(face).map(([way]) => taper(face, way))),
  ...['long', 'short'].map((setting) => unknown(zeroOfSetting(setting))),
  ...['old', 'new'].map((column) => unknown(leanOf(column))),
];

/** Every estimate that random readings allow, each with the adjustment that it is from. */
function forAllEstimates(check: (estimate: Estimate, form: LinearForm) => void): number {
  let count = 0;
  fc.assert(
    fc.property(someReadings, (readings) => {
      const adjustment = adjust(equationsOf(readings, BLOCK, KIT));
      for (const form of FORMS) {
        const estimate = adjustment.estimate(form);
        if (estimate === undefined) continue;
        count += 1;
        check(estimate, form);
      }
    }),
    { numRuns: 100, seed: 6 },
  );
  return count;
}

describe('the budget of any estimate', () => {
  it('has squares that add up to that of the standard uncertainty, the greatest first', () => {
    const count = forAllEstimates(({ contributions, standard }) => {
      const squares = contributions.map((one) => one.standard ** 2);
      expectClose(
        squares.reduce((total, one) => total + one, 0),
        standard ** 2,
        {
          relative: 1e-12,
        },
      );
      expect(squares).toEqual([...squares].sort((a, b) => b - a));
      expect(new Set(contributions.map(({ cause }) => cause)).size).toBe(contributions.length);
    });
    expect(count).toBeGreaterThan(500);
  });

  it('has the degrees of freedom of Welch and Satterthwaite: u⁴/Σ(uᵢ⁴/νᵢ), GUM G.4.1', () => {
    let finite = 0;
    forAllEstimates(({ contributions, standard, degreesOfFreedom }) => {
      const seating = contributions.find(({ cause }) => cause === 'seating')?.standard ?? 0;
      // All but the seating is taken for certain.
      const expected = seating === 0 ? Number.POSITIVE_INFINITY : 3 * (standard / seating) ** 4;
      if (expected > 1e12) return;
      finite += 1;
      expectClose(degreesOfFreedom, expected, { relative: 1e-9 });
    });
    expect(finite).toBeGreaterThan(100);
  });
});

describe('the working of any estimate', () => {
  it('is reading × weight, summed up: that is the value', () => {
    const count = forAllEstimates(({ terms, value, restsOn }) => {
      const shares = terms.map((term) => term.value * term.weight);
      const sizes = shares.reduce((total, one) => total + Math.abs(one), 0);
      const sum = shares.reduce((total, one) => total + one, 0);
      expectClose(sum, value, { absolute: 1e-12 + 1e-7 * sizes });
      expect(restsOn).toEqual(new Set(terms.map(({ reading }) => reading)));
    });
    expect(count).toBeGreaterThan(500);
  });

  it('has a weight for each reading that moves the value by so much per µm', () => {
    const readings = [
      nose('right', 34),
      nose('left', 31),
      ...traverse('right', { 10: 4, 40: 14, 80: 31 }),
      ...traverse('left', { 10: 7, 40: 12, 80: 24 }),
      micrometer('right', { z: -40 }, 1),
      micrometer('right', { z: 40 }, 3),
    ];
    const form = outOfSquare('right', 'bottom');
    const equations = equationsOf(readings, BLOCK, KIT);
    const before = known(adjust(equations).estimate(form));
    for (const { reading, weight } of before.terms) {
      const moved = equations.map((one) =>
        one.reading === reading ? { ...one, value: one.value + 1 } : one,
      );
      const after = known(adjust(moved).estimate(form));
      expectClose(after.value - before.value, weight, { absolute: 1e-10 });
    }
    expect(before.terms.length).toBe(equations.length);
  });

  it('by hand: e = (34 - 31)/(2·74) and half the taper', () => {
    const readings = [nose('right', 34), nose('left', 31), assumedParallel('right', 2)];
    const { terms } = known(
      adjust(equationsOf(readings, COLD, DEFAULT_KIT)).estimate(
        scaled(outOfSquare('right', 'bottom'), 148),
      ),
    );
    const [right, left, word] = terms;
    expect(terms).toHaveLength(3);
    expectClose(right?.weight, 1);
    expectClose(left?.weight, -1);
    expect([right?.value, left?.value, word?.value]).toEqual([34, 31, 0]);
    // The word is of the taper over 90 mm, and half of it is the face's.
    expectClose(word?.weight, 74 / 90);
  });
});
