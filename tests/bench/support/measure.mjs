// @ts-check
/** What the benchmarks share: loading the sources, taking times and printing them. */
import { runnerImport } from 'vite';

/** How often a measurement is made afresh: the machine may have other work. */
export const RUNS = 5;
/** ms that a round is to take at the least, and all rounds of one run. */
const ROUND = 2;
const SPELL = 200;

/**
 * A module of the sources or the tests, its path seen from the project's folder.
 *
 * @template Module
 * @param {string} path
 * @returns {Promise<Module>}
 */
export async function load(path) {
  const options = { configFile: /** @type {const} */ (false) };
  return (await runnerImport(path, options)).module;
}

/**
 * ms for one call of `work`: the least of many rounds, which other work sways least.
 *
 * @param {() => unknown} work
 */
function leastTime(work) {
  const end = performance.now() + SPELL;
  let least = Number.POSITIVE_INFINITY;
  let calls = 1;
  do {
    const start = performance.now();
    for (let i = 0; i < calls; i += 1) work();
    least = Math.min(least, (performance.now() - start) / calls);
    calls = Math.max(1, Math.ceil(ROUND / least));
  } while (performance.now() < end);
  return least;
}

/**
 * The least times of each work in `RUNS` runs, taken in turn so that other work meets all alike.
 *
 * @template {string} Name
 * @param {Record<Name, () => unknown>} works
 * @returns {Record<Name, number[]>}
 */
export function timesOf(works) {
  const names = /** @type {Name[]} */ (Object.keys(works));
  /** @type {Record<string, number[]>} */
  const times = Object.fromEntries(names.map((name) => [name, []]));
  // Once for the compiler.
  for (const name of names) leastTime(works[name]);
  for (let run = 0; run < RUNS; run += 1) {
    for (const name of names) times[name]?.push(leastTime(works[name]));
  }
  return /** @type {Record<Name, number[]>} */ (times);
}

/** @param {readonly number[]} values */
export function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const [low = Number.NaN, high = low] = sorted.slice((sorted.length - 1) >> 1);
  return sorted.length % 2 === 1 ? low : (low + high) / 2;
}

/** Median, least and greatest. @param {readonly number[]} values @param {number} digits */
export function spread(values, digits) {
  const [least, greatest] = [Math.min(...values), Math.max(...values)];
  return `${median(values).toFixed(digits)} (${least.toFixed(digits)} to ${greatest.toFixed(digits)})`;
}

/**
 * A target beside its figure.
 *
 * @param {number} figure
 * @param {number} most
 * @param {string} target
 */
export function held(figure, most, target) {
  return { target, met: figure <= most ? 'yes' : 'NO' };
}
