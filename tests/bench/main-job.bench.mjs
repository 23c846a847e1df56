// @ts-check
/**
 * The whole main job, on a processor slowed down four times: from a new part over its readings,
 * verdict and work to the readings after it. Tells each task that keeps the page from answering for
 * more than 50 ms (W3C Long Tasks), and what was being done.
 */
import { exit } from 'node:process';
import { settle, withApp } from './support/app.mjs';
import { held } from './support/measure.mjs';

const SLOWDOWN = 4;
const MOST = 50;

/** @typedef {{ start: number, duration: number }} Task ms */

/** Keeps each long task in `window.longTasks`. */
function record() {
  /** @type {Task[]} */
  const longTasks = [];
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) {
      longTasks.push({ start: startTime, duration });
    }
  }).observe({ type: 'longtask', buffered: true });
  Object.assign(window, { longTasks });
}

/**
 * @param {import('@playwright/test').Page} page
 * @param {(name: string, step: () => Promise<unknown>) => Promise<void>} doing
 */
async function mainJob(page, doing) {
  /** @param {string} label @param {string} text */
  const type = (label, text) =>
    doing(`type ${label}`, async () => {
      const field = page.getByRole('textbox', { name: label, exact: true });
      await field.click();
      await field.press('ControlOrMeta+a');
      await field.pressSequentially(text, { delay: 120 });
    });
  /** @param {'button' | 'link'} role @param {string} name */
  const tap = (role, name) =>
    doing(`tap ${name}`, () => page.getByRole(role, { name, exact: true }).first().tap());
  await doing('open the app', () => page.goto('/'));
  await tap('button', 'New part');
  await type('Name', 'Trial block');
  await type('X, left to right', '60');
  await type('Y, front to back', '40');
  await type('Z, bottom to top', '90');
  await tap('button', 'Add a requirement');
  await type('Within', '0.001');
  await tap('button', 'Add a requirement');
  await tap('link', 'To the part');
  await tap('button', 'Take readings');
  await type('Nose height', '6');
  await type('Indicator height', '80');
  await type('Right side', '34');
  await type('Left side', '31');
  await tap('button', 'Take as parallel');
  await type('Parallel within, over the whole face', '0.1');
  await tap('button', 'I work the bottom');
  await type('How much', '4');
  await tap('button', 'Measure again');
  await type('Right side', '33');
  await type('Left side', '32');
  await tap('link', 'Back to the part');
}

const steps = await withApp(async (page, session) => {
  await page.addInitScript(record);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  /** @type {{ step: string, tasks: number[] }[]} */
  const done = [];
  await mainJob(page, async (step, work) => {
    await work();
    await settle(page);
    const tasks = await page.evaluate(() => {
      const { longTasks } = /** @type {{ longTasks: Task[] }} */ (/** @type {unknown} */ (window));
      return longTasks.splice(0).map(({ duration }) => duration);
    });
    done.push({ step, tasks });
  });
  return done;
});

console.log(`Long tasks in the main job, processor slowed down ${SLOWDOWN} times`);
console.table(
  steps
    .filter(({ tasks }) => tasks.length > 0)
    .map(({ step, tasks }) => ({
      step,
      'long tasks, ms': tasks.map((duration) => duration.toFixed(0)).join(', '),
    })),
);
const all = steps.flatMap(({ tasks }) => tasks);
console.table([
  {
    steps: steps.length,
    'long tasks': all.length,
    'longest, ms': Math.max(0, ...all).toFixed(0),
    ...held(Math.max(0, ...all), MOST, 'none over 50 ms'),
  },
]);
// The runner of vite keeps the process alive.
exit(0);
