import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/core/inspection/inspect';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { per100Millimetres } from '../../../src/core/units/slope';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, micrometer, nose, traverse } from '../support/readings';
import { partWith, requirement } from '../support/worked-block';

/*
 * A block 60 × 40 × 90 stands on its bottom. Closed forms, with r and l what the comparator shows
 * on the right and on the left, L the lever from nose to indicator and t the taper (growth of the
 * thickness per mm going up):
 *
 *   r = zero + L·e(right)    l = zero + L·e(left)    e(right) + e(left) = t
 *
 * so e(right) = (r - l)/2L + t/2, e(left) = (l - r)/2L + t/2, zero = (r + l - L·t)/2.
 */

const RIGHT_TO_BOTTOM = requirement('right', 'bottom');
const swung = [nose('right', 34), nose('left', 31)];
const swept = [...traverse('right', { 10: 4, 80: 31 }), ...traverse('left', { 10: 7, 80: 24 })];

function answerTo(readings: readonly Reading[]) {
  return inspect(partWith([RIGHT_TO_BOTTOM]), readings, DEFAULT_KIT, DEFAULT_LEVEL);
}

describe('a setting swung from right (34 µm) to left (31 µm), the faces assumed parallel', () => {
  const answer = answerTo([...swung, assumedParallel('right')]);
  const sides = known(answer.sides[0]);
  const [right, left] = sides.outOfSquare.map(known);

  it('finds the zero of the comparator halfway', () => {
    const [zero] = answer.comparators;
    expect(zero).toMatchObject({ kind: 'zero', setting: 'comparator' });
    expectClose(zero?.estimate?.value, 32.5); // (34 + 31)/2
  });

  it('finds right leaning out as much as left leans in', () => {
    expectClose(right?.value, 3 / 148);
    expectClose(left?.value, -3 / 148);
    expect(per100Millimetres(right!.value).toFixed(3)).toBe('2.027');
    expect((right!.value * sides.height).toFixed(3)).toBe('1.824');
  });

  it('states the total difference over the lever of 74 mm', () => {
    expect(sides.reach).toBe(74);
    expectClose(sides.difference?.value, 3);
  });

  it('says that the answer leans on an assumption', () => {
    expect(sides.assumed).toBe(true);
    expect(answer.findings[0]).toMatchObject({ fixed: true, assumed: true });
    expect(sides.remedies).toEqual([]);
  });
});

describe('the same with the thickness measured: +1 µm at 40 below the middle, +3 at 40 above', () => {
  // t = 2/80 = 0.025, so that e(right) = 3/148 + 0.0125, e(left) = -3/148 + 0.0125.
  const answer = answerTo([
    ...swung,
    micrometer('right', { z: -40 }, 1),
    micrometer('right', { z: 40 }, 3),
  ]);
  const sides = known(answer.sides[0]);

  it('shares the taper between the sides', () => {
    const [right, left] = sides.outOfSquare.map(known);
    expectClose(sides.taper?.value, 0.025);
    expectClose(right?.value, 3 / 148 + 0.0125);
    expectClose(left?.value, -3 / 148 + 0.0125);
    expect(per100Millimetres(right!.value).toFixed(3)).toBe('3.277');
    expect(per100Millimetres(left!.value).toFixed(3)).toBe('-0.777');
  });

  it('moves the zero and leaves the total difference', () => {
    expectClose(answer.comparators[0]?.estimate?.value, 31.575); // (65 - 74·0.025)/2
    expectClose(sides.difference?.value, 3);
  });

  it('leans on no assumption', () => {
    expect(sides.assumed).toBe(false);
    expect(answer.findings[0]).toMatchObject({ fixed: true, assumed: false });
  });
});

describe('a column at 10 and 80: right 4 and 31, left 7 and 24, assumed parallel', () => {
  // The slopes seen are lean + e: 27/70 on the right, 17/70 on the left.
  const answer = answerTo([...swept, assumedParallel('right')]);
  const sides = known(answer.sides[0]);

  it('finds the lean of the column halfway', () => {
    expect(answer.comparators).toHaveLength(1);
    expect(answer.comparators[0]).toMatchObject({ kind: 'lean', column: 'column' });
    expectClose(answer.comparators[0]?.estimate?.value, 22 / 70);
  });

  it('finds right leaning out and left leaning in', () => {
    const [right, left] = sides.outOfSquare.map(known);
    expectClose(right?.value, 5 / 70);
    expectClose(left?.value, -5 / 70);
    expect(per100Millimetres(right!.value).toFixed(3)).toBe('7.143');
  });

  it('states the total difference over the 70 mm swept', () => {
    expect(sides.reach).toBe(70);
    expectClose(sides.difference?.value, 10);
  });
});
