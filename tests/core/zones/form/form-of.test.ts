import { describe, expect, it } from 'vitest';
import { formOf } from '../../../../src/core/zones/form/form-of';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';

/** A grid over 0 to 200 mm along u and 0 to 100 mm along v. */
function grid(deviation: (u: number, v: number) => number, columns = 5, rows = 4) {
  return Array.from({ length: rows * columns }, (_, index) => {
    const u = (200 * (index % columns)) / (columns - 1);
    const v = (100 * Math.floor(index / columns)) / (rows - 1);
    return { u, v, deviation: deviation(u, v) };
  });
}

describe('the form of a face', () => {
  it('has a crown along u and a hollow along v, whatever the tilt', () => {
    const form = formOf(
      grid((u, v) => 6 - 6 * (u / 100 - 1) ** 2 + 2 * (v / 50 - 1) ** 2 + 3 * u - 4 * v),
    );
    expect(form.alongU?.kind).toBe('crown');
    expectClose(form.alongU?.rise, 6, { absolute: 1e-9 });
    expect(form.alongV?.kind).toBe('hollow');
    expectClose(form.alongV?.rise, -2, { absolute: 1e-9 });
    expectClose(form.twist, 0, { absolute: 1e-9 });
  });

  it('is twisted up where both are high, and straight along each', () => {
    // Corners at +3 and -3.
    const form = formOf(grid((u, v) => 3 * (u / 100 - 1) * (v / 50 - 1)));
    expectClose(form.twist, 6);
    expect(form.alongU?.kind).toBe('straight');
    expect(form.alongV?.kind).toBe('straight');
  });

  it('has no bow but a straight one where it is flat, tilted or level', () => {
    for (const slope of [0, 1234.5]) {
      const form = formOf(grid((u, v) => slope * u - 0.7 * slope * v));
      expect([form.alongU?.kind, form.alongV?.kind]).toEqual(['straight', 'straight']);
    }
  });

  it('is highest and lowest from the plane, not as read', () => {
    const points = grid(
      (u, v) => u + (u === 50 && v === 0 ? 9 : 0) - (u === 150 && v > 90 ? 9 : 0),
    );
    expect(formOf(points)).toMatchObject({ highest: 1, lowest: 18 });
  });
});

describe('what the places of the points do not fix is not said', () => {
  it('of a line: nothing across', () => {
    const points = [0, 50, 100].map((u) => ({ u, deviation: u === 50 ? 4 : 0 }));
    const form = formOf(points);
    expect(known(form.alongU).kind).toBe('crown');
    expectClose(form.alongU?.rise, 4);
    expect(form.alongV).toBeUndefined();
    expect(form.twist).toBeUndefined();
    expect(form).toMatchObject({ highest: 1, lowest: 0 });
  });

  it('of two rows: no bow across, but the twist', () => {
    const form = formOf(grid((u, v) => (u / 100 - 1) * (v / 50 - 1) - (u / 100 - 1) ** 2, 3, 2));
    expectClose(form.alongU?.rise, 1);
    expect(form.alongV).toBeUndefined();
    expectClose(form.twist, 2);
  });

  it('of the corners alone: the twist and no bow', () => {
    const form = formOf(grid((u, v) => u + v, 2, 2));
    expect(form.alongU).toBeUndefined();
    expect(form.alongV).toBeUndefined();
    expectClose(form.twist, 0);
  });

  it('of the corners and the middle: only both bows together, hence neither', () => {
    const corners = grid(() => 0, 2, 2);
    const form = formOf([...corners, { u: 100, v: 50, deviation: 5 }]);
    expect(form.alongU).toBeUndefined();
    expect(form.alongV).toBeUndefined();
    expectClose(form.twist, 0);
    expect(form.highest).toBe(4);
  });

  it('of one line across the face: no bow along either side', () => {
    const form = formOf([0, 1, 2, 3].map((i) => ({ u: 3 * i, v: 4 * i, deviation: i * i })));
    expect([form.alongU, form.alongV, form.twist]).toEqual([undefined, undefined, undefined]);
  });

  it('of one point: nothing', () => {
    expect(formOf([{ u: 1, v: 2, deviation: 3 }])).toEqual({
      alongU: undefined,
      alongV: undefined,
      twist: undefined,
      highest: 0,
      lowest: 0,
    });
  });
});
