// @ts-check
/**
 * Long tasks on the main thread while a zone with form is worked out in the worker: a column read at
 * three heights on both sides, one reading of which is typed over once the others stand.
 */
import { exit } from 'node:process';
import { settle, withApp } from './support/app.mjs';
import { held, load } from './support/measure.mjs';

/** @type {typeof import('../browser/shop-floor')} */
const { describePart, takeAsParallel, type } = await load('./tests/browser/shop-floor.ts');

const RUNS = 3;
const KEYS = ['Backspace', '7', 'Backspace', '4'];

/** @typedef {{ asked: number, answered?: number }} Turn ms since the page began */
/** @typedef {{ start: number, duration: number }} Task */
/** @typedef {{ turns: Turn[], tasks: Task[] }} Recorded */

/** Records in `window.recorded` when the worker is asked and answers, and every task over 50 ms. */
function record() {
  /** @type {Recorded} */
  const recorded = { turns: [], tasks: [] };
  const post = Worker.prototype.postMessage;
  /** @this {Worker} @param {[message: unknown]} args */
  Worker.prototype.postMessage = function (...args) {
    // The worker that keeps the journal never answers.
    if (!Object.hasOwn(Object(args[0]), 'asker')) return post.apply(this, args);
    /** @type {Turn} */
    const turn = { asked: performance.now() };
    recorded.turns.push(turn);
    this.addEventListener('message', () => {
      turn.answered ??= performance.now();
    });
    post.apply(this, args);
  };
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) {
      recorded.tasks.push({ start: startTime, duration });
    }
  }).observe({ type: 'longtask' });
  Object.assign(window, { recorded });
}

/** @param {number} slowdown */
const recordedAt = (slowdown) =>
  withApp(async (page, session) => {
    await page.addInitScript(record);
    const recorded = () =>
      page.evaluate(
        () => /** @type {{ recorded: Recorded }} */ (/** @type {unknown} */ (window)).recorded,
      );
    await describePart(page, { name: 'Tall block', size: ['60', '40', '90'], within: '0.005' });
    await page.getByRole('button', { name: 'Take readings' }).tap();
    await page.getByRole('button', { name: 'Remove Nose comparator' }).tap();
    await page.getByRole('button', { name: 'Column', exact: true }).tap();
    await page.getByRole('button', { name: 'Add a height' }).tap();
    for (const [row, height] of ['10', '45', '80'].entries()) {
      await type(page, `Height ${row + 1} above the plate`, height);
    }
    await takeAsParallel(page, '1');
    for (const [label, text] of Object.entries({
      ...{ 'Right at 10': '4', 'Right at 45': '20', 'Right at 80': '31' },
      ...{ 'Left at 10': '7', 'Left at 45': '14', 'Left at 80': '24' },
    })) {
      await type(page, label, text);
    }
    await page.waitForTimeout(5000);
    const before = (await recorded()).turns.length;
    await settle(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
    const since = await page.evaluate(() => performance.now());
    for (const key of KEYS) {
      await page.keyboard.press(key);
      // The worker is let finish both sides.
      await page.waitForTimeout(3000);
    }
    const { turns, tasks } = await recorded();
    return { turns: turns.slice(before), tasks: tasks.filter(({ start }) => start >= since) };
  });

/** @param {Recorded} recorded */
function summaryOf({ turns, tasks }) {
  const answered = turns.flatMap(({ asked, answered: end }) => (end ? [{ asked, end }] : []));
  // A task that is under way when the worker is asked is that of the keystroke itself.
  const isBeside = (/** @type {Task} */ { start }) =>
    answered.some(({ asked, end }) => start > asked && start < end);
  const beside = tasks.filter(isBeside);
  const others = tasks.filter((task) => !isBeside(task));
  const longest = (/** @type {Task[]} */ of) =>
    Math.max(0, ...of.map(({ duration }) => duration)).toFixed(0);
  return {
    'asked and answered': `${turns.length} and ${answered.length}`,
    'worker at work, ms': answered.reduce((sum, { asked, end }) => sum + end - asked, 0).toFixed(0),
    'long tasks meanwhile': beside.length,
    'longest, ms': longest(beside),
    ...held(beside.length, 0, 'none over 50 ms'),
    'long tasks of keystrokes, answers': others.length,
    'their longest, ms': longest(others),
  };
}

console.log(`Long tasks while the worker works, ${KEYS.length} keystrokes`);
const rows = [];
for (const slowdown of [1, 4]) {
  for (let run = 1; run <= RUNS; run += 1) {
    rows.push({ slowdown, run, ...summaryOf(await recordedAt(slowdown)) });
  }
}
console.table(rows);
// The runner of vite keeps the process alive.
exit(0);
