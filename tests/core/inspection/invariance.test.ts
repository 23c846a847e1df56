import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { leanOf, zeroOfSetting } from '../../../src/core/readings/unknowns';
import { PART, someReadings } from '../support/inspections';
import { expectSameSaid, type Said, saidOfComparators, saidOfPart } from '../support/said';
import { BLOCK } from '../support/worked-block';

const shift = fc.integer({ min: -500, max: 500 });

function comparators(readings: readonly Reading[], kit = DEFAULT_KIT): Said {
  return saidOfComparators(adjust(equationsOf(readings, BLOCK, kit)), readings);
}

/** `said` with `name` raised by `by`, where it is known. */
function raised(said: Said, name: string, by: number): Said {
  const value = said.get(name);
  return new Map([...said, ...(value === undefined ? [] : [[name, value + by] as const])]);
}

describe('what moves only the comparator and not the part', { timeout: 60_000 }, () => {
  it('a constant on all readings of one setting moves its zero by as much', () => {
    fc.assert(
      fc.property(someReadings, shift, (readings, by) => {
        const shifted = readings.map((reading) =>
          reading.kind === 'nose comparator' && reading.setting === 'long'
            ? { ...reading, value: reading.value + by }
            : reading,
        );
        expectSameSaid(saidOfPart(PART, shifted), saidOfPart(PART, readings));
        expectSameSaid(
          comparators(shifted),
          raised(comparators(readings), zeroOfSetting('long'), by),
        );
      }),
    );
  });

  it('a rise with height on all readings of one column moves its lean by as much', () => {
    // The doubt in a height grows with the lean, so heights are set without doubt here.
    const kit = { ...DEFAULT_KIT, heightSetting: 0 };
    fc.assert(
      fc.property(someReadings, shift, (readings, by) => {
        const leaning = readings.map((reading) =>
          reading.kind === 'column' && reading.column === 'old'
            ? { ...reading, value: reading.value + (by / 100) * reading.height }
            : reading,
        );
        expectSameSaid(saidOfPart(PART, leaning, kit), saidOfPart(PART, readings, kit));
        expectSameSaid(
          comparators(leaning, kit),
          raised(comparators(readings, kit), leanOf('old'), by / 100),
        );
      }),
    );
  });

  it('a millimetre on every reading of a placing, a setting or a size costs no digits', () => {
    const OFFSET = 1000;
    fc.assert(
      fc.property(someReadings, (readings) => {
        const far = readings.map((reading) => {
          if (reading.kind === 'assumed parallel') return reading;
          return reading.kind === 'micrometer'
            ? { ...reading, departure: reading.departure + OFFSET }
            : { ...reading, value: reading.value + OFFSET };
        });
        expectSameSaid(saidOfPart(PART, far), saidOfPart(PART, readings));
      }),
    );
  });

  it('happens to readings that fix the zero and to readings that leave it open', () => {
    let [fixed, open] = [0, 0];
    fc.assert(
      fc.property(someReadings, (readings) => {
        const said = comparators(readings);
        if (!said.has(zeroOfSetting('long'))) return;
        if (said.get(zeroOfSetting('long')) === undefined) open += 1;
        else fixed += 1;
      }),
      { numRuns: 300, seed: 1 },
    );
    expect(Math.min(fixed, open)).toBeGreaterThan(10);
  });
});

describe('what changes nothing', { timeout: 60_000 }, () => {
  it('the order in which the readings were entered', () => {
    fc.assert(
      fc.property(
        someReadings,
        fc.array(fc.nat(), { minLength: 30, maxLength: 30 }),
        (readings, keys) => {
          const shuffled = readings
            .map((reading, index) => ({ reading, key: keys[index]! }))
            .sort((a, b) => a.key - b.key)
            .map(({ reading }) => reading);
          expectSameSaid(saidOfPart(PART, shuffled), saidOfPart(PART, readings));
          expectSameSaid(comparators(shuffled), comparators(readings));
        },
      ),
    );
  });
});
