// @ts-check
/** Times 10,000 draws of a zone with form that 60 readings show, and the whole of its simulation. */
import { exit } from 'node:process';
import { GRID, TRAVERSES } from './support/inspections.mjs';
import { load, RUNS, spread, timesOf } from './support/measure.mjs';

/** @type {typeof import('../../src/core/inspection/inspect')} */
const { inspect } = await load('./src/core/inspection/inspect.ts');
/** @type {typeof import('../../src/core/readings/kit')} */
const { DEFAULT_KIT } = await load('./src/core/readings/kit.ts');
/** @type {typeof import('../../src/core/statistics/random')} */
const { randomFrom } = await load('./src/core/statistics/random.ts');
/** @type {typeof import('../../src/core/verdict/monte-carlo')} */
const { simulateZone } = await load('./src/core/verdict/monte-carlo.ts');
/** @type {typeof import('../../src/core/verdict/width-draws')} */
const { widthDraws } = await load('./src/core/verdict/width-draws.ts');
/** @type {typeof import('../../src/state/zone-form/questions')} */
const { zoneQuestion } = await load('./src/state/zone-form/questions.ts');

const DRAWS = 10_000;

/** @param {string} what @param {import('./support/inspections.mjs').TRAVERSES} inspection */
function rowOf(what, { part, readings }) {
  const [finding] = inspect(part, readings, DEFAULT_KIT, 0.95).findings;
  if (!finding?.fixed) throw new Error(`${what} is not fixed`);
  const { zone } = zoneQuestion(finding);
  const into = new Float64Array(DRAWS);
  const fill = widthDraws(zone, zone.points, randomFrom(1));
  const { draws } = simulateZone(zone);
  const times = timesOf({ fill: () => fill(into), whole: () => simulateZone(zone) });
  return {
    what,
    readings: readings.length,
    'points of form': zone.points.length,
    [`ms for ${DRAWS} draws`]: spread(times.fill, 2),
    'draws until stable': draws,
    'ms for all of them': spread(times.whole, 1),
  };
}

console.log('Monte Carlo of a zone with form, on Node');
console.table([rowOf('squareness, traverses', TRAVERSES), rowOf('parallelism, grid', GRID)]);
console.log(`Median (least to greatest) of ${RUNS} runs. No target: it runs in a worker.`);
// The runner of vite keeps the process alive.
exit(0);
