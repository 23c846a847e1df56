import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/core/inspection/inspect';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT, type InstrumentFigures } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { PART, someReadings } from '../support/inspections';

const OWN: InstrumentFigures = {
  ...{ indicatorResolution: 2, indicatorError: 3, leverAngle: 20, leverWithin: 5 },
  ...{ micrometerResolution: 4, micrometerError: 1.5 },
};

const withOwn = (readings: readonly Reading[]) =>
  readings.map((reading) => ({ ...reading, instrument: OWN }));

/** All that an inspection says, in numbers. */
function said(readings: readonly Reading[], kit = DEFAULT_KIT) {
  const { findings, sides, comparators, forms, checks } = inspect(PART, readings, kit, 0.95);
  return JSON.stringify({ findings, sides, comparators, forms, checks });
}

describe('readings that were all taken with one instrument', () => {
  it('say the same whether the kit knows it or the readings do', () => {
    fc.assert(
      fc.property(someReadings, (readings) => {
        expect(said(withOwn(readings))).toBe(said(readings, { ...DEFAULT_KIT, ...OWN }));
      }),
      { numRuns: 30 },
    );
  });
});

it('readings with another instrument are moved by it alone', () => {
  const nose = { kind: 'nose comparator', base: 'bottom', noseHeight: 5, indicatorHeight: 25 };
  const at = (id: string, setting: string) =>
    ({ ...nose, id, setting, face: 'right', value: 10 }) as Reading;
  const plain = at('a', 'one');
  const own: Reading = { ...at('b', 'two'), instrument: { leverAngle: 60 } };
  const values = equationsOf([plain, own], PART.block, DEFAULT_KIT).map(({ value }) => value);
  // cos 60° is a half.
  expect(values).toEqual([10, expect.closeTo(5, 12)]);
});
