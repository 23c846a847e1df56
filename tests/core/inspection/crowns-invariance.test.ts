import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type InspectionAnswer, inspect } from '../../../src/core/inspection/inspect';
import type { Axis } from '../../../src/core/part/faces';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { crowned } from '../support/crowned';
import { randomFrom } from '../support/random';
import { repeatedReadings, withBlunder } from '../support/repeated-inspection';
import { ROTATIONS, turnedFace, turnedPart, turnedReading } from '../support/rotations';
import { partWith } from '../support/worked-block';

const PART = partWith([]);

/** Right and left by every instrument: the right bowed by 12 µm, and a slip in one reading of the left. */
const READINGS = ((): readonly Reading[] => {
  const flat = repeatedReadings(DEFAULT_KIT, randomFrom(6), 3);
  const id = flat.find(({ kind, face }) => kind === 'nose comparator' && face === 'left')!.id;
  return withBlunder(crowned(flat, 12), id, 8);
})();

/** What was told, in an order of its own and to nine digits. */
function told(
  answer: InspectionAnswer,
  faceOf = (face: string) => face,
  axisOf = (axis: Axis) => axis as string,
): readonly string[] {
  const crowns = answer.crowns.map(({ face, of, along, span, rise, orSlip }) => {
    const numbers = [span, rise.value, rise.standard].map((one) => one.toPrecision(9));
    const slips = orSlip.map(({ reading }) => reading).sort();
    return [faceOf(face), of, axisOf(along), ...numbers, ...slips].join(' ');
  });
  const suspects = answer.suspects.map(({ reading, blunder }) => {
    return `${reading} ${blunder?.toPrecision(9)}`;
  });
  return [...crowns, ...suspects].sort();
}

const answerTo = (readings: readonly Reading[], part = PART) =>
  inspect(part, readings, DEFAULT_KIT, 0.95);
const EXPECTED = told(answerTo(READINGS));

describe('a crown and a slip', () => {
  it('are told, one of each', () => {
    const { crowns, suspects } = answerTo(READINGS);
    expect([crowns.length, suspects.length]).toEqual([1, 1]);
    expect(crowns[0]).toMatchObject({ face: 'right', of: 'face', along: 'z' });
  });

  it.each(ROTATIONS)('are the same for the block turned over: rotation %#', (rotation) => {
    const readings = READINGS.map((reading) => turnedReading(rotation, reading));
    const answer = answerTo(readings, turnedPart(rotation, PART));
    const before = told(
      answerTo(READINGS),
      (face) => turnedFace(rotation, face as 'top'),
      (axis) => rotation[axis].axis,
    );
    expect(told(answer)).toEqual(before);
  });

  it('do not hang on the order of the readings, nor on the zeros of what read them', () => {
    const keys = fc.array(fc.nat(), { minLength: READINGS.length, maxLength: READINGS.length });
    const shift = fc.integer({ min: -500, max: 500 });
    fc.assert(
      fc.property(keys, shift, shift, shift, (order, setting, placing, size) => {
        const shifted = READINGS.map((reading): Reading => {
          if (reading.kind === 'micrometer') {
            return { ...reading, departure: reading.departure + size };
          }
          if (reading.kind === 'assumed parallel') return reading;
          const by = reading.kind === 'column' ? placing : setting;
          return { ...reading, value: reading.value + by };
        });
        const shuffled = shifted
          .map((reading, index) => ({ reading, key: order[index]! }))
          .sort((a, b) => a.key - b.key)
          .map(({ reading }) => reading);
        expect(told(answerTo(shuffled))).toEqual(EXPECTED);
      }),
      { numRuns: 40, seed: 5 },
    );
  });
});
