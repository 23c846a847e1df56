import { describe, expect, it } from 'vitest';
import { type FormAnswer, formAnswers } from '../../src/core/inspection/forms';
import { DEFAULT_KIT } from '../../src/core/readings/kit';
import type { Reading } from '../../src/core/readings/reading';
import { formReadInWords, spansInWords, withFormInWords } from '../../src/words/form';
import { formName, shapeInWords } from '../../src/words/forms';

const line = (values: readonly number[]): readonly Reading[] =>
  values.map((value, at) => ({
    ...{ kind: 'column', id: `line ${at}`, column: 'c', placing: 'line' },
    ...{ face: 'right', base: 'bottom', height: 10 + 30 * at, value },
  }));

/** Nine places on the top, `shown` by x and y in steps of -1, 0 and 1. */
const face = (
  kind: 'over the top' | 'face map',
  shown: (x: number, y: number) => number,
): readonly Reading[] =>
  [-1, 0, 1].flatMap((x) =>
    [-1, 0, 1].map((y): Reading => {
      const point = { x: 20 * x, y: 15 * y, z: 0 };
      return { kind, id: `${x} ${y}`, placing: kind, face: 'top', point, value: shown(x, y) };
    }),
  );

function only(readings: readonly Reading[]): FormAnswer {
  const answers = formAnswers(readings, DEFAULT_KIT);
  expect(answers).toHaveLength(1);
  return answers[0]!;
}

describe('what was read', () => {
  it.each([
    [line([0, 2, 0]), 'Line up the right'],
    [face('face map', () => 0), 'Map of the top'],
    [face('over the top', () => 0), 'Over the top'],
  ])('is named: %#, %s', (readings, name) => {
    expect(formName(only(readings))).toBe(name);
  });

  it('is told from other lines up the same face by its placing', () => {
    expect(formName(only(line([0, 2, 0])), 'Right on top, seating 2')).toBe(
      'Line up the right on top, seating 2',
    );
    expect(formName(only(face('face map', () => 0)), 'Top')).toBe('Map of the top');
  });
});

describe('what the form is like', () => {
  const said = (readings: readonly Reading[], unit: 'µm' | 'tenths' = 'µm') =>
    shapeInWords(only(readings), unit);

  it.each([
    [line([0, 2, 0]), 'Crown of 2.00 µm from bottom to top.'],
    [line([5, 3, 5]), 'Hollow of 2.00 µm from bottom to top.'],
    [line([1, 2, 3]), 'Straight from bottom to top.'],
    [
      face('face map', (x, y) => 3 - 3 * x * x + y * y),
      'Crown of 3.00 µm from left to right; Hollow of 1.00 µm from front to back.',
    ],
    [face('over the top', (x) => x), 'Straight from left to right; Straight from front to back.'],
  ])('%#: %s', (readings, sentence) => {
    expect(said(readings)).toBe(sentence);
  });

  it('is in the unit of the shop', () => {
    expect(said(line([0, 2.54, 0]), 'tenths')).toBe('Crown of 1.00 tenths from bottom to top.');
  });

  it('is not said where the places do not fix it', () => {
    const corners = face('face map', (x, y) => x * y).filter(({ id }) => !id.includes('0'));
    expect(corners).toHaveLength(4);
    expect(said(corners)).toBe('Crown or hollow: not fixed by these places.');
  });
});

describe('the zone with form', () => {
  const zone = {
    ...{ width: 3.456, low: 2.1, high: 5.04, probability: 0.984 },
    ...{ stable: true, verdict: 'in' as const },
  };

  it('is on its way, or said with its interval and the verdict', () => {
    expect(withFormInWords(9, undefined, 'µm')).toBe(
      'With the form at the 9 points read: working it out…',
    );
    expect(withFormInWords(9, zone, 'µm')).toBe(
      'With the form at the 9 points read: 3.46 µm (95\u00a0%: 2.10 to 5.04). The chance that it meets the drawing is 98\u00a0%.',
    );
  });

  it('says what its interval is where the figures stand beside it', () => {
    expect(formReadInWords(9, zone)).toBe(
      'With the form at the 9 points read; the interval is for 95\u00a0%.',
    );
    expect(formReadInWords(9, { stable: false })).toContain('for about 95');
  });

  it('is only about so where the draws did not settle', () => {
    expect(withFormInWords(9, { ...zone, stable: false }, 'µm')).toContain(
      '(95\u00a0%: about 2.10 to',
    );
  });
});

describe('what the readings span', () => {
  it('is said where it is less than the face, and only of what is less', () => {
    expect(spansInWords([{ read: 70, face: 90 }], 'mm')).toBe(
      'The readings span 70 of 90 mm; beyond them the fitted plane is carried on.',
    );
    const two = [
      { read: 48, face: 60 },
      { read: 40, face: 40 },
    ];
    expect(spansInWords(two, 'mm')).toContain('span 48 of 60 mm; beyond');
    expect(spansInWords([two[0]!, { read: 25.4, face: 38.1 }], 'in')).toContain(
      'span 1.8898 of 2.3622 in and 1 of 1.5 in; beyond',
    );
  });

  it('is not where it is all of it, but for rounding', () => {
    expect(spansInWords([{ read: 60 * (1 - 1e-12), face: 60 }], 'mm')).toBeUndefined();
    expect(spansInWords([], 'mm')).toBeUndefined();
  });
});

describe('the heights in the zone', () => {
  it('run from nothing to its width, whatever the tilt', () => {
    const bowl = only(face('face map', (x, y) => x * x + y * y + 7 * x - 3 * y));
    expect(Math.max(...bowl.heights)).toBeCloseTo(bowl.minimumZone, 9);
    // The middle is lowest, the corners highest, the sides between them.
    expect(bowl.heights[4]).toBeCloseTo(0, 9);
    expect(bowl.heights[0]).toBeCloseTo(2, 9);
    expect(bowl.heights[1]).toBeCloseTo(1, 9);
    expect(bowl.places[0]).toEqual({ u: -20, v: -15 });
  });
});
