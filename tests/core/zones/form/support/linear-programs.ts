import type { Highs, ModelData } from 'highs';
import { type Model, type Options, solve } from 'yalps';

/**
 * The minimum zone as a linear program for solvers of others. Half the width h and the plane
 * c + a·u + b·v are sought with |d - c - a·u - b·v| ≤ h for each point and h least; or, in the dual,
 * multipliers of the points. Places and deviations are scaled to 1 first: in mm and µm both solvers
 * lose digits.
 */
export interface ScaledPoints {
  /** Ones, u and, on a face, v. */
  readonly columns: readonly (readonly number[])[];
  readonly deviations: readonly number[];
  /** Width for 1 of the scaled half width. */
  readonly unit: number;
}

interface Point {
  readonly u: number;
  readonly v?: number;
  readonly deviation: number;
}

export function scaledPoints(points: readonly Point[]): ScaledPoints {
  const [deviations, unit] = scaled(points.map(({ deviation }) => deviation));
  const [u] = scaled(points.map((point) => point.u));
  const ones = points.map(() => 1);
  if (points[0]?.v === undefined) return { columns: [ones, u], deviations, unit: 2 * unit };
  const [v] = scaled(points.map((point) => point.v!));
  return { columns: [ones, u, v], deviations, unit: 2 * unit };
}

/** The numbers about the middle of their range and over half of it, and that half. */
function scaled(numbers: readonly number[]): [number[], number] {
  const [least, greatest] = [Math.min(...numbers), Math.max(...numbers)];
  const half = (greatest - least) / 2 || 1;
  return [numbers.map((number) => (number - (least + greatest) / 2) / half), half];
}

/** A linear program of one of the solvers. */
export type ProgramOfYalps = Model<string, string>;

const YALPS: Options = { precision: 1e-12, maxPivots: 1e6 };

/** The program itself; free unknowns are split in two, since variables of yalps are never below 0. */
export function forYalps({ columns, deviations }: ScaledPoints): ProgramOfYalps {
  const constraints = deviations.flatMap((deviation, i) => [
    [`over ${i}`, { min: deviation }] as const,
    [`under ${i}`, { max: deviation }] as const,
  ]);
  const rows = deviations.map((_, i) => i);
  const variables = columns.flatMap((column, j) =>
    [1, -1].map((sign): readonly [string, [string, number][]] => [
      `${sign < 0 ? 'less' : 'more'} ${j}`,
      rows.flatMap((i) => [
        [`over ${i}`, sign * column[i]!],
        [`under ${i}`, sign * column[i]!],
      ]),
    ]),
  );
  const half: [string, number][] = rows.flatMap((i) => [
    [`over ${i}`, 1],
    [`under ${i}`, -1],
  ]);
  return {
    direction: 'minimize',
    objective: 'half',
    constraints,
    variables: [...variables, ['half', [['half', 1], ...half]]],
  };
}

/** The dual: few rows and many columns. */
export function dualForYalps({ columns, deviations }: ScaledPoints): ProgramOfYalps {
  return {
    direction: 'maximize',
    objective: 'half',
    constraints: [['all', { equal: 1 }], ...columns.map((_, j) => [`${j}`, { equal: 0 }] as const)],
    variables: deviations.flatMap((deviation, i) =>
      [1, -1].map((sign): readonly [string, [string, number][]] => [
        `${sign * (i + 1)}`,
        [
          ['half', sign * deviation],
          ['all', 1],
          ...columns.map((column, j): [string, number] => [`${j}`, sign * column[i]!]),
        ],
      ]),
    ),
  };
}

/** The width by yalps. */
export function widthByYalps(program: ProgramOfYalps, { unit }: ScaledPoints): number {
  const { status, result } = solve(program, YALPS);
  if (status !== 'optimal') throw new Error(`yalps: ${status}`);
  return result * unit;
}

/** The program for HiGHS, h the last unknown. */
export function forHighs({ columns, deviations }: ScaledPoints, highs: Highs): ModelData {
  const size = columns.length + 1;
  const rows = 2 * deviations.length;
  const signs = Array.from({ length: rows }, (_, row) => (row % 2 === 0 ? 1 : -1));
  const point = (row: number) => Math.floor(row / 2);
  const bound = (sign: number) =>
    signs.map((one, row) => (one === sign ? deviations[point(row)]! : -sign * highs.infinity));
  return {
    numCols: size,
    numRows: rows,
    colCost: [...columns.map(() => 0), 1],
    colLower: [...columns.map(() => -highs.infinity), 0],
    colUpper: Array.from({ length: size }, () => highs.infinity),
    rowLower: Float64Array.from(bound(1)),
    rowUpper: Float64Array.from(bound(-1)),
    matrix: {
      format: 'csr',
      numRows: rows,
      numCols: size,
      starts: Int32Array.from({ length: rows + 1 }, (_, row) => row * size),
      indices: Int32Array.from({ length: rows * size }, (_, at) => at % size),
      values: Float64Array.from(
        signs.flatMap((sign, row) => [...columns.map((column) => column[point(row)]!), sign]),
      ),
    },
  };
}

/** The width by HiGHS. */
export function widthByHighs(program: ModelData, { unit }: ScaledPoints, highs: Highs): number {
  return highs.withModel(program, (model) => {
    model.options.set({
      output_flag: false,
      primal_feasibility_tolerance: 1e-10,
      dual_feasibility_tolerance: 1e-10,
    });
    model.run();
    return Number(model.info.get('objective_function_value')) * unit;
  });
}
