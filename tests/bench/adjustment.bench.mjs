// @ts-check
/**
 * Times the adjustment of an inspection of 60 readings of every kind against the SVD of ml-matrix on
 * the same whitened system. Of that only the solving counts; of ours all, from the equations on.
 */
import { exit } from 'node:process';
import { Matrix, SVD } from 'ml-matrix';
import { MIXED } from './support/inspections.mjs';
import { held, load, median, RUNS, spread, timesOf } from './support/measure.mjs';

/** @type {typeof import('../../src/core/adjustment/adjustment')} */
const { adjust } = await load('./src/core/adjustment/adjustment.ts');
/** @type {typeof import('../../src/core/adjustment/least-squares')} */
const { solveLeastSquares } = await load('./src/core/adjustment/least-squares.ts');
/** @type {typeof import('../../src/core/inspection/inspect')} */
const { inspect } = await load('./src/core/inspection/inspect.ts');
/** @type {typeof import('../../src/core/readings/equation')} */
const { combined } = await load('./src/core/readings/equation.ts');
/** @type {typeof import('../../src/core/readings/equations-of')} */
const { equationsOf } = await load('./src/core/readings/equations-of.ts');
/** @type {typeof import('../../src/core/readings/kit')} */
const { DEFAULT_KIT } = await load('./src/core/readings/kit.ts');

const { part, readings } = MIXED;
const equations = equationsOf(readings, part.block, DEFAULT_KIT);
const names = [...new Set(equations.flatMap(({ form }) => [...form.keys()]))];
const [rows, columns] = [equations.length, names.length];
const observations = equations.map(({ value }) => value);
const standards = equations.map(({ components }) => combined(components));
const matrix = Float64Array.from(
  names.flatMap((name) => equations.map(({ form }) => form.get(name) ?? 0)),
);

const whitened = new Matrix(
  equations.map(({ form, components }) =>
    names.map((name) => (form.get(name) ?? 0) / combined(components)),
  ),
);
const target = Matrix.columnVector(
  equations.map(({ value, components }) => value / combined(components)),
);
const bySvd = () => new SVD(whitened, { autoTranspose: true }).solve(target);

const ours = adjust(equations);
const misfit = Matrix.sub(target, whitened.mmul(bySvd())).norm('frobenius') ** 2;
console.log(
  `Adjustment of ${readings.length} readings: ${rows} equations, ${columns} unknowns, rank ${rows - ours.degreesOfFreedom}.`,
);
console.log(`Chi-square: ours ${ours.chiSquare}, by ml-matrix ${misfit}.`);

const times = timesOf({
  SVD: bySvd,
  solveLeastSquares: () => solveLeastSquares(matrix, observations, standards),
  adjust: () => adjust(equations),
  'equationsOf and adjust': () => adjust(equationsOf(readings, part.block, DEFAULT_KIT)),
});

// Once only: where doubt is great it may take many times as long as the adjustment.
const start = performance.now();
inspect(part, readings, DEFAULT_KIT, 0.95);
const whole = performance.now() - start;

/** @param {readonly number[]} own */
const ratios = (own) => own.map((time, run) => time / (times.SVD[run] ?? Number.NaN));
console.table([
  { what: 'ml-matrix: SVD and solve', ms: spread(times.SVD, 3) },
  .../** @type {const} */ (['solveLeastSquares', 'adjust', 'equationsOf and adjust']).map(
    (what) => ({
      what,
      ms: spread(times[what], 3),
      'of ml-matrix': spread(ratios(times[what]), 2),
      ...held(median(ratios(times[what])), 1, 'no slower'),
    }),
  ),
  { what: 'inspect: the whole chain, once', ms: whole.toFixed(1) },
]);
console.log(`Median (least to greatest) of ${RUNS} runs.`);
// The runner of vite keeps the process alive.
exit(0);
