import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decompose } from '../../../src/core/adjustment/orthogonal-decomposition';
import { expectClose } from '../support/close';
import { type System, system } from '../support/systems';

const TOLERANCE = 1e-11;
const NEAR = { absolute: 1e-11, relative: 1e-11 };

type Matrix = { readonly rows: number; readonly columns: number; readonly entries: Float64Array };

function product(a: Matrix, b: Matrix): Matrix {
  expect(a.columns).toBe(b.rows);
  const entries = Float64Array.from({ length: a.rows * b.columns }, (_, at) => {
    const [i, j] = [at % a.rows, Math.floor(at / a.rows)];
    let total = 0;
    for (let k = 0; k < a.columns; k += 1)
      total += a.entries[i + k * a.rows]! * b.entries[k + j * b.rows]!;
    return total;
  });
  return { rows: a.rows, columns: b.columns, entries };
}

function transposed({ rows, columns, entries }: Matrix): Matrix {
  const turned = Float64Array.from(
    entries,
    (_, at) => entries[Math.floor(at / columns) + (at % columns) * rows]!,
  );
  return { rows: columns, columns: rows, entries: turned };
}

function expectSame(actual: Matrix, expected: Matrix) {
  expect([actual.rows, actual.columns]).toEqual([expected.rows, expected.columns]);
  const size = Math.max(1, ...expected.entries.map(Math.abs));
  actual.entries.forEach((entry, at) => {
    expectClose(entry / size, expected.entries[at]! / size, NEAR);
  });
}

function expectOrthonormal(columns: Matrix) {
  const identity = Float64Array.from({ length: columns.columns ** 2 }, (_, at) =>
    at % columns.columns === Math.floor(at / columns.columns) ? 1 : 0,
  );
  const size = { rows: columns.columns, columns: columns.columns };
  expectSame(product(transposed(columns), columns), { ...size, entries: identity });
}

function partsOf({ rows, columns, matrix }: Pick<System, 'rows' | 'columns' | 'matrix'>) {
  const { rank, range, triangle, directions } = decompose(matrix, rows, columns, TOLERANCE);
  return {
    rank,
    matrix: { rows, columns, entries: matrix },
    range: { rows, columns: rank, entries: range },
    triangle: { rows: rank, columns: rank, entries: triangle },
    directions: { rows: columns, columns, entries: directions },
  };
}

/** A·directions is [range·triangle, 0], with orthonormal columns in range and in directions. */
function expectDecomposed(parts: ReturnType<typeof partsOf>) {
  const { rank, matrix, range, triangle, directions } = parts;
  expectOrthonormal(range);
  expectOrthonormal(directions);
  for (let j = 0; j < rank; j += 1) {
    expect(Math.abs(triangle.entries[j + j * rank]!)).toBeGreaterThan(0);
    for (let i = j + 1; i < rank; i += 1) expect(triangle.entries[i + j * rank]).toBe(0);
  }
  const inside = product(range, triangle);
  const padded = new Float64Array(matrix.rows * matrix.columns);
  padded.set(inside.entries);
  expectSame(product(matrix, directions), { ...matrix, entries: padded });
}

describe('the complete orthogonal decomposition', () => {
  it('holds as an identity for matrices of every shape and rank', () => {
    fc.assert(
      fc.property(system, (one) => {
        const before = Float64Array.from(one.matrix);
        expectDecomposed(partsOf(one));
        expect(one.matrix).toEqual(before);
      }),
    );
  });

  it.each([
    ['a tall one', 3, 2, [1, 2, 3, 4, 5, 6], 2],
    ['a wide one', 2, 3, [1, 2, 3, 4, 5, 6], 2],
    ['a wide one of rank 1', 2, 3, [1, 2, 2, 4, 3, 6], 1],
    ['a square one of rank 2', 3, 3, [1, 4, 7, 2, 5, 8, 3, 6, 9], 2],
    ['one column', 3, 1, [0, -2, 0], 1],
    ['one row', 1, 3, [0, -2, 1], 1],
    ['one number', 1, 1, [-5], 1],
    ['zeros', 3, 2, [0, 0, 0, 0, 0, 0], 0],
    ['no row', 0, 2, [], 0],
    ['no column', 2, 0, [], 0],
    ['nothing', 0, 0, [], 0],
  ])('holds for %s', (_, rows, columns, entries, rank) => {
    const parts = partsOf({ rows, columns, matrix: Float64Array.from(entries) });
    expect(parts.rank).toBe(rank);
    expectDecomposed(parts);
  });

  it('ends the rank at the tolerance, relative to the largest pivot', () => {
    const almost = (gap: number) => Float64Array.from([1e6, 1e6, 1e6, 1e6 * (1 + gap)]);
    expect(decompose(almost(1e-9), 2, 2, TOLERANCE).rank).toBe(2);
    expect(decompose(almost(1e-13), 2, 2, TOLERANCE).rank).toBe(1);
    expect(decompose(almost(1e-13), 2, 2, 0).rank).toBe(2);
  });
});
