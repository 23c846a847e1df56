import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { growth, growthAgainst, growthUncertainty } from '../../../src/core/statistics/expansion';
import {
  EXPANSION_SOURCES,
  EXPANSIONS,
  type Material,
} from '../../../src/core/statistics/expansion-coefficients';
import { expectClose } from '../support/close';
import {
  CALLISTER,
  ENGINEERING_TABLES,
  FROM_MEMORY,
  GRANITE,
  GREY_IRON_ELSEWHERE,
} from './reference/expansion';

const number = fc.double({ min: -500, max: 500, noNaN: true });

describe('coefficients', () => {
  it.each([
    ['aluminium 2024', 'aluminium 2024'],
    ['aluminium 6061', 'aluminium 6061'],
    ['aluminium 7075', 'aluminium 7075'],
    ['cast aluminium 356', 'aluminium 356.0'],
    ['mild steel 1020', '1020 steel'],
    ['alloy steel 4140', '4140 steel'],
    ['stainless steel 304', '304 stainless'],
    ['stainless steel 316', '316 stainless'],
    ['grey cast iron', 'gray iron G1800/G3000/G4000'],
    ['ductile iron', 'ductile iron 60-40-18'],
    ['brass C360', 'C36000 brass'],
    ['bronze C932', 'C93200 bearing bronze'],
    ['copper C110', 'C11000 copper'],
  ] as const)('of %s are those of the textbook', (ours, theirs) => {
    expect(EXPANSIONS[ours].coefficient).toBe(CALLISTER[theirs]![0]);
    expect(EXPANSIONS[ours].source).toBe('callister');
  });

  it.each([
    ['tool steel D2', ENGINEERING_TABLES.D2, 'tables'],
    ['stainless steel 440C', ENGINEERING_TABLES['440C'], 'tables'],
    ['steel 1045', ENGINEERING_TABLES['1045 steel'], 'tables'],
    ['stainless steel 416', FROM_MEMORY['416 stainless'], 'memory'],
    ['tool steel O1', FROM_MEMORY['O1 tool steel'], 'memory'],
    ['tool steel A2', FROM_MEMORY['A2 tool steel'], 'memory'],
  ] as const)('of %s are not from the textbook and say so', (ours, value, source) => {
    expect(EXPANSIONS[ours].coefficient).toBe(value);
    expect(EXPANSIONS[ours].source).toBe(source);
  });

  it.each(Object.entries(CALLISTER))(
    'of %s agree per °C and per °F',
    (_, [celsius, fahrenheit]) => {
      if (fahrenheit !== undefined) {
        expectClose(celsius / 1.8, fahrenheit, { absolute: 0.05 + 0.05 / 1.8 });
      }
    },
  );

  it('cover with their half-widths what other sources have', () => {
    const covers = (material: Material, value: number) => {
      const { coefficient, halfWidth } = EXPANSIONS[material];
      expect(Math.abs(value - coefficient)).toBeLessThanOrEqual(halfWidth);
    };
    covers('granite', GRANITE.generic);
    covers('granite', GRANITE.least);
    covers('granite', GRANITE.most);
    covers('grey cast iron', GREY_IRON_ELSEWHERE);
    covers('ductile iron', CALLISTER['ductile iron 80-55-06']![0]);
    covers('stainless steel 316', 15.9);
    // GUM H.1 takes a steel gauge within ±2·10⁻⁶ (from memory): these are not more daring than that is wide.
    covers('mild steel 1020', 11.5);
  });

  it('have a half-width and a source each', () => {
    for (const { coefficient, halfWidth, source } of Object.values(EXPANSIONS)) {
      expect(halfWidth).toBeGreaterThan(0);
      expect(halfWidth).toBeLessThan(coefficient);
      expect(EXPANSION_SOURCES[source]).toBeTruthy();
    }
  });
});

describe('growth', () => {
  const aluminium = EXPANSIONS['aluminium 6061'];
  const steel = EXPANSIONS['mild steel 1020'];

  it('of 100 mm of aluminium against steel, both at 23 °C, is 3.57 µm', () => {
    // Worked in the set of reference values, at the 20 °C of ISO 1.
    const part = { material: aluminium, temperature: 23 };
    const scale = { material: steel, temperature: 23 };
    expectClose(growthAgainst(100, part, scale), 3.57);
    expectClose(growth(100, part), 7.08);
  });

  it('is nothing at 20 °C, or against a scale of the same kind and warmth', () => {
    fc.assert(
      fc.property(number, number, (length, temperature) => {
        expect(growth(length, { material: steel, temperature: 20 }) + 0).toBe(0);
        const same = { material: aluminium, temperature };
        expect(growthAgainst(length, same, same)).toBe(0);
      }),
    );
  });

  it('adds over lengths', () => {
    fc.assert(
      fc.property(number, number, number, (one, other, temperature) => {
        const warm = { material: aluminium, temperature };
        expectClose(growth(one + other, warm), growth(one, warm) + growth(other, warm), {
          absolute: 1e-9,
        });
      }),
    );
  });

  it('is uncertain from the coefficient and from the temperature', () => {
    // By hand: 100 mm, 3 K over, ±2.36·10⁻⁶: 100·3·2.36e-3/√3; 0.5 K: 100·23.6e-3·0.5.
    expectClose(growthUncertainty(100, aluminium, 23, 0), (0.3 * 2.36) / Math.sqrt(3));
    expectClose(growthUncertainty(100, aluminium, 20, 0.5), 1.18);
    expectClose(
      growthUncertainty(-100, aluminium, 23, 0.5),
      Math.hypot((0.3 * 2.36) / Math.sqrt(3), 1.18),
    );
  });

  it.each([-1, Number.NaN])('is refused with a standard uncertainty of %d K', (bad) => {
    expect(() => growthUncertainty(100, aluminium, 23, bad)).toThrow(RangeError);
  });
});
