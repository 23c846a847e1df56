// @ts-check
/**
 * Times the minimum zone plane against yalps and HiGHS. For those only the solving counts: their
 * programs are set up and scaled beforehand. Ours counts in full, from points to result. Each time
 * is the least of many rounds, which is what another load on the machine sways least.
 */
import { exit } from 'node:process';
import load from 'highs';
import { runnerImport } from 'vite';

const SIZES = [25, 100, 1000, 5000, 10000];
const SETS = 5;
/** ms that a round is to take at the least: long for the clock, short for the scheduler. */
const ROUND = 1;
/** ms that the rounds of one set are to take at the least, and how many there are at the least. */
const SPELL = 150;
const LEAST_ROUNDS = 7;

/**
 * @template Module
 * @param {string} path
 * @returns {Promise<Module>}
 */
async function core(path) {
  const options = { configFile: /** @type {const} */ (false) };
  return (await runnerImport(path, options)).module;
}

/** @type {typeof import('../../src/core/zones/form/flatness')} */
const { minimumZonePlane } = await core('./src/core/zones/form/flatness.ts');
/** @type {typeof import('../core/support/random')} */
const { manyRandoms } = await core('./tests/core/support/random.ts');
/** @type {typeof import('../core/zones/form/support/points')} */
const { scatteredPoints, wholePoints } = await core('./tests/core/zones/form/support/points.ts');
/** @type {typeof import('../core/zones/form/support/linear-programs')} */
const others = await core('./tests/core/zones/form/support/linear-programs.ts');
const highs = await load();

/**
 * What to time, by name, as functions that set it up: each gives one solving for each set of `size`
 * points. The programs of one are gone before the next is timed, and fill no memory meanwhile.
 *
 * @param {(random: import('../core/support/random').Random, count: number) => readonly import('../../src/core/zones/form/points').FacePoint[]} draw
 * @param {number} size
 */
function solversOf(draw, size) {
  const sets = manyRandoms(SETS, size).map((random) => draw(random, size));
  /** @param {(set: import('../core/zones/form/support/linear-programs').ScaledPoints) => () => number} solver */
  const scaled = (solver) => () => sets.map((points) => solver(others.scaledPoints(points)));
  return {
    ours: () => sets.map((points) => () => minimumZonePlane(points).width),
    yalps: scaled((set) => {
      const program = others.forYalps(set);
      return () => others.widthByYalps(program, set);
    }),
    'yalps, dual': scaled((set) => {
      const program = others.dualForYalps(set);
      return () => others.widthByYalps(program, set);
    }),
    HiGHS: scaled((set) => {
      const program = others.forHighs(set, highs);
      return () => others.widthByHighs(program, set, highs);
    }),
  };
}

/**
 * ms for one solving.
 *
 * @param {() => number} solve
 * @param {number} repeats
 */
function timeOf(solve, repeats) {
  const start = performance.now();
  for (let i = 0; i < repeats; i += 1) solve();
  return (performance.now() - start) / repeats;
}

/**
 * The least time of many rounds, ms for one solving.
 *
 * @param {() => number} solve
 */
function leastTime(solve) {
  const end = performance.now() + SPELL;
  let least = timeOf(solve, 1);
  for (let round = 0; round < LEAST_ROUNDS || performance.now() < end; round += 1) {
    least = Math.min(least, timeOf(solve, Math.ceil(ROUND / least)));
  }
  return least;
}

/**
 * The mean over the sets of the least times, by name.
 *
 * @param {Record<string, () => readonly (() => number)[]>} solvers
 */
function meanTimes(solvers) {
  return Object.fromEntries(
    Object.entries(solvers).map(([name, setUp]) => {
      const times = setUp().map(leastTime);
      return [name, times.reduce((sum, time) => sum + time, 0) / times.length];
    }),
  );
}

for (const [name, draw] of Object.entries({ scattered: scatteredPoints, grid: wholePoints })) {
  // Once for the compiler.
  meanTimes(solversOf(draw, 100));
  /** @type {Record<string, unknown>[]} */
  const rows = [];
  let before = { size: Number.NaN, time: Number.NaN };
  for (const size of SIZES) {
    const { ours = Number.NaN, ...rest } = meanTimes(solversOf(draw, size));
    rows.push({
      points: size,
      'ours, ms': ours.toFixed(4),
      ...Object.fromEntries(Object.entries(rest).map(([of, ms]) => [`${of}, ms`, ms.toFixed(4)])),
      ...Object.fromEntries(
        Object.entries(rest).map(([of, ms]) => [`${of}: times ours`, (ms / ours).toFixed(1)]),
      ),
      'growth of points': (size / before.size).toFixed(1),
      'growth of ours': (ours / before.time).toFixed(1),
    });
    before = { size, time: ours };
  }
  console.log(`Minimum zone plane, points ${name}`);
  console.table(rows);
}
// The runner of vite keeps the process alive.
exit(0);
