// @ts-check
/** The tasks that a page's main thread was kept by, from the browser's own trace. */
import { env } from 'node:process';

/**
 * Enough to tell tasks and marks, so that tracing itself takes no time; with `TRACE=some.json` all is
 * kept for the browser's performance panel, which tells what a task was made of and makes all longer.
 */
const LIGHT = ['-*', 'disabled-by-default-devtools.timeline', 'blink.user_timing'];

/**
 * ms. `wall` is what a clock shows; `busy` is what the processor gave to the thread, its slowing down
 * included: other work on the machine makes the first longer, and hardly the second.
 *
 * @typedef {{ wall: number, busy: number }} Task
 * @typedef {{ name: string, ts: number, dur?: number, tdur?: number, pid: number, tid: number }} Event µs
 */

/**
 * Runs `use`, which is given what does a step under a name, and tells the tasks of each step.
 *
 * @param {import('@playwright/test').Page} page
 * @param {(doing: (name: string, step: () => Promise<unknown>) => Promise<void>) => Promise<void>} use
 * @returns {Promise<{ step: string, tasks: Task[] }[]>}
 */
export async function tasksOfSteps(page, use) {
  const browser = page.context().browser();
  if (browser === null) throw new Error('The page has no browser of its own');
  /** @type {string[]} */
  const steps = [];
  const mark = (/** @type {string} */ name) => page.evaluate((of) => performance.mark(of), name);
  const path = env.TRACE === undefined ? {} : { path: env.TRACE };
  await browser.startTracing(page, env.TRACE ? path : { categories: LIGHT });
  await use(async (name, step) => {
    const index = steps.push(name) - 1;
    await mark(beginning(index));
    await step();
    await mark(end(index));
  });
  /** @type {{ traceEvents: Event[] }} */
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString());
  return steps.map((step, index) => ({ step, tasks: tasksBetween(traceEvents, index) }));
}

const beginning = (/** @type {number} */ index) => `step ${index} begins`;
const end = (/** @type {number} */ index) => `step ${index} is over`;

/** @param {readonly Event[]} events @param {number} index @returns {Task[]} */
function tasksBetween(events, index) {
  const from = events.find(({ name }) => name === beginning(index));
  const to = events.find(({ name }) => name === end(index));
  if (from === undefined || to === undefined) throw new Error(`Step ${index} left no mark`);
  return events
    .filter(({ name, pid, tid }) => name === 'RunTask' && pid === to.pid && tid === to.tid)
    .filter(({ ts, dur = 0 }) => ts > from.ts && ts + dur < to.ts)
    .map(({ dur = 0, tdur = 0 }) => ({ wall: dur / 1000, busy: tdur / 1000 }));
}
