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
const { manyRandoms, randomFrom } = await core('./tests/core/support/random.ts');
/** @type {typeof import('../core/zones/form/support/points')} */
const { scatteredPoints, wholePoints } = await core('./tests/core/zones/form/support/points.ts');
/** @type {typeof import('../core/zones/form/support/linear-programs')} */
const others = await core('./tests/core/zones/form/support/linear-programs.ts');
const highs = await load();

/**
 * @typedef {readonly import('../../src/core/zones/form/points').FacePoint[]} Points
 * @typedef {import('../core/zones/form/support/linear-programs').ScaledPoints} ScaledPoints
 * @typedef {(points: Points) => () => number} SetUp gives one solving of a set of points
 */

/**
 * What to time, in this order: ours first, while the memory is not yet full of programs.
 *
 * @type {Record<string, SetUp>}
 */
const SOLVERS = {
  ours: (points) => () => minimumZonePlane(points).width,
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

const DRAWS = { scattered: scatteredPoints, 'on a grid': wholePoints };

/**
 * @param {(set: ScaledPoints) => () => number} setUp
 * @returns {SetUp}
 */
function scaled(setUp) {
  return (points) => setUp(others.scaledPoints(points));
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
 * The mean over the sets of the least times, for each size.
 *
 * @param {SetUp} setUp
 * @param {(random: import('../core/support/random').Random, count: number) => Points} draw
 */
function timesOf(setUp, draw) {
  return SIZES.map((size) => {
    const times = manyRandoms(SETS, size).map((random) => leastTime(setUp(draw(random, size))));
    return times.reduce((sum, time) => sum + time, 0) / SETS;
  });
}

/** @type {Record<string, Record<string, number[]>>} */
const times = {};
for (const [name, setUp] of Object.entries(SOLVERS)) {
  for (const [kind, draw] of Object.entries(DRAWS)) {
    // Once for the compiler.
    leastTime(setUp(draw(randomFrom(1), 100)));
    times[kind] = { ...times[kind], [name]: timesOf(setUp, draw) };
  }
}

for (const [kind, { ours = [], ...rest }] of Object.entries(times)) {
  console.log(`Minimum zone plane, points ${kind}: ms, and how many times ours`);
  console.table(
    SIZES.map((size, row) => ({
      points: size,
      ours: ours[row]?.toFixed(4),
      'µs a point': ((1000 * (ours[row] ?? 0)) / size).toFixed(3),
      ...Object.fromEntries(
        Object.entries(rest).flatMap(([name, of]) => [
          [name, of[row]?.toFixed(4)],
          [`${name} : ours`, ((of[row] ?? 0) / (ours[row] ?? 0)).toFixed(1)],
        ]),
      ),
    })),
  );
}
// The runner of vite keeps the process alive.
exit(0);
