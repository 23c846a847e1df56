import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/core/inspection/inspect';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { PART, someReadings } from '../support/inspections';

const NEW = 'reading number';

/** `value` with each text that is an old id put in place of the new one, all through. */
function withIds(value: unknown, ids: ReadonlyMap<string, string>): unknown {
  if (typeof value === 'string') return ids.get(value) ?? value;
  // What can be asked further is not what is said.
  if (typeof value === 'function') return 'function';
  if (value instanceof Set) return new Set([...value].map((one) => withIds(one, ids)));
  if (Array.isArray(value)) return value.map((one) => withIds(one, ids));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, withIds(one, ids)]));
}

describe('what the readings are called by', () => {
  const answerTo = (readings: readonly Reading[]) => inspect(PART, readings, DEFAULT_KIT, 0.95);

  it('changes nothing of what they say, to the last digit', { timeout: 60_000 }, () => {
    let named = 0;
    fc.assert(
      fc.property(someReadings, (readings) => {
        const renamed = readings.map((reading, index) => ({ ...reading, id: `${NEW} ${index}` }));
        const back = new Map(readings.map(({ id }, index) => [`${NEW} ${index}`, id]));
        const answer = answerTo(renamed);
        if (JSON.stringify(answer).includes(NEW)) named += 1;
        expect(withIds(answer, back)).toEqual(withIds(answerTo(readings), new Map()));
      }),
      { numRuns: 40, seed: 3 },
    );
    expect(named).toBe(40);
  });
});
