import fc from 'fast-check';

/** A weighted system of equations, the matrix by columns. */
export interface System {
  readonly rows: number;
  readonly columns: number;
  readonly matrix: Float64Array;
  readonly observations: readonly number[];
  readonly standards: readonly number[];
}

const small = fc.integer({ min: -9, max: 9 });

/**
 * Systems of small whole numbers, wide, square and tall: whole numbers make rank a clear-cut
 * matter. Half of them are products through fewer columns, hence surely of deficient rank.
 */
export const system: fc.Arbitrary<System> = fc
  .record({ rows: fc.integer({ min: 1, max: 9 }), columns: fc.integer({ min: 1, max: 6 }) })
  .chain(({ rows, columns }) =>
    fc.record({
      rows: fc.constant(rows),
      columns: fc.constant(columns),
      matrix: fc.oneof(entries(rows, columns), lowRank(rows, columns)),
      observations: fc.array(small, { minLength: rows, maxLength: rows }),
      standards: fc.array(fc.integer({ min: 1, max: 5 }), { minLength: rows, maxLength: rows }),
    }),
  );

function entries(rows: number, columns: number): fc.Arbitrary<Float64Array> {
  const length = rows * columns;
  return fc
    .array(small, { minLength: length, maxLength: length })
    .map((numbers) => Float64Array.from(numbers));
}

function lowRank(rows: number, columns: number): fc.Arbitrary<Float64Array> {
  return fc.integer({ min: 0, max: Math.min(rows, columns) - 1 }).chain((inner) =>
    fc.tuple(entries(rows, inner), entries(inner, columns)).map(([left, right]) =>
      Float64Array.from({ length: rows * columns }, (_, at) => {
        const [i, j] = [at % rows, Math.floor(at / rows)];
        let total = 0;
        for (let k = 0; k < inner; k += 1) total += left[i + k * rows]! * right[k + j * inner]!;
        return total;
      }),
    ),
  );
}

/** A row of the matrix as weights of the unknowns: what one observation measures. */
export function rowOf({ rows, columns, matrix }: System, row: number): Float64Array {
  return Float64Array.from({ length: columns }, (_, j) => matrix[row + j * rows]!);
}

/** A sum of rows, each taken as often as `counts` says: always fixed by the observations. */
function sumOfRows(one: System, counts: readonly number[]): Float64Array {
  return Float64Array.from({ length: one.columns }, (_, j) => {
    let total = 0;
    for (let i = 0; i < one.rows; i += 1) total += counts[i]! * one.matrix[i + j * one.rows]!;
    return total;
  });
}

/** A system with a sum of its rows. */
export const systemWithSum: fc.Arbitrary<{ readonly one: System; readonly weights: Float64Array }> =
  system.chain((one) =>
    fc
      .array(small, { minLength: one.rows, maxLength: one.rows })
      .map((counts) => ({ one, weights: sumOfRows(one, counts) })),
  );
