// @ts-check
/**
 * The whole main job, on a processor slowed down four times: from a new part over its readings,
 * verdict, correction and work to the readings after it, its history, the record for the customer,
 * and the app opened again. Tells each task that keeps the page from answering for more than 50 ms
 * (W3C Long Tasks), and what was being done: by the clock, and by what the processor gave to the
 * page, which other work on the machine sways less. What counts is the median of several runs.
 */
import { exit } from 'node:process';
import { settle, withApp } from './support/app.mjs';
import { held, median, RUNS, spread } from './support/measure.mjs';
import { tasksOfSteps } from './support/tasks.mjs';

const SLOWDOWN = 4;
const MOST = 50;
/** ms that the app has to open, undisturbed. */
const OPENING = 4000;

/**
 * @param {import('@playwright/test').Page} page
 * @param {(name: string, step: () => Promise<unknown>) => Promise<void>} during
 */
async function mainJob(page, during) {
  /** @param {string} name @param {() => Promise<unknown>} step */
  const doing = (name, step) =>
    during(name, async () => {
      await step();
      await settle(page);
    });
  /** Where its middle is on the screen. @param {import('@playwright/test').Locator} locator */
  const middleOf = async (locator) => {
    await locator.first().evaluate((element) => {
      // The keypad would lie over what is to be tapped, and go before the tap is over.
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      // As a hand does: else a screen that is come back to goes to where it was once it has grown.
      dispatchEvent(new WheelEvent('wheel'));
      element.scrollIntoView({ block: 'center', behavior: 'instant' });
    });
    // What it took to find it is no task of the app's.
    await settle(page);
    const box = await locator.first().boundingBox();
    if (box === null) throw new Error(`${locator} is not seen`);
    return /** @type {const} */ ([box.x + box.width / 2, box.y + box.height / 2]);
  };
  /** @param {string} label @param {string} text */
  const type = async (label, text) => {
    const middle = await middleOf(page.getByRole('textbox', { name: label, exact: true }));
    await doing(`type ${label}`, async () => {
      await page.touchscreen.tap(...middle);
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.type(text, { delay: 120 });
    });
  };
  /** @param {'button' | 'link'} role @param {string} name */
  const tap = async (role, name) => {
    const middle = await middleOf(page.getByRole(role, { name, exact: true }));
    await doing(`tap ${name}`, () => page.touchscreen.tap(...middle));
  };
  /** @param {string} name @param {() => Promise<unknown>} navigate */
  const open = (name, navigate) =>
    doing(name, async () => {
      await navigate();
      // All that the app does by itself, before anything of Playwright's is put into the page.
      await page.waitForTimeout(OPENING);
    });
  await open('open the app', () => page.goto('/'));
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
  await tap('button', 'Finish these readings');
  await tap('link', 'Back to the part');
  await tap('link', 'Compare two');
  await tap('link', 'Back to the part');
  await tap('link', 'Record');
  await tap('link', 'Back to the part');
  await tap('link', 'Change');
  await tap('link', 'Back to the part');
  await tap('link', 'Show');
  await open('open the app at the readings', () => page.reload());
  await tap('link', 'Back to the part');
  await open('open the app at the part', () => page.reload());
  await tap('link', 'Back to the bench');
  await open('open the app at the bench', () => page.reload());
}

/** Each time with a browser and a shop of its own. */
const oneRun = () =>
  withApp(
    async (page, session) => {
      await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
      return tasksOfSteps(page, (during) => mainJob(page, during));
    },
    // What is loaded ahead of a tap is loaded once all is stored for offline use.
    { serviceWorkers: 'allow' },
  );

/** @type {Awaited<ReturnType<typeof oneRun>>[]} */
const runs = [];
for (let run = 0; run < RUNS; run += 1) runs.push(await oneRun());

/** What the browser takes by itself to open a page, which is in the app's first step as well. */
const bareRun = () =>
  withApp(async (page, session) => {
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
    const body = '<!doctype html><html lang="en"><title>Bare</title><h1>Bare</h1></html>';
    await page.route('**/bare', (route) => route.fulfill({ contentType: 'text/html', body }));
    return tasksOfSteps(page, (during) =>
      during('open a page with a heading alone', async () => {
        await page.goto('/bare');
        await page.waitForTimeout(OPENING);
      }),
    );
  });

/** @type {Awaited<ReturnType<typeof bareRun>>[]} */
const bareRuns = [];
for (let run = 0; run < RUNS; run += 1) bareRuns.push(await bareRun());

/** The longest task of a step in each run, ms. @param {typeof runs} of @param {number} index @param {'wall' | 'busy'} by */
const longest = (of, index, by) =>
  of.map((steps) => Math.max(0, ...(steps[index]?.tasks ?? []).map((task) => task[by])));

const names = (runs[0] ?? []).map(({ step }) => step);
const steps = names.map((step, index) => ({
  step,
  wall: longest(runs, index, 'wall'),
  busy: longest(runs, index, 'busy'),
}));

console.log(
  `The longest task of each step of the main job, ms: median (least to greatest) of ${RUNS} runs, processor slowed down ${SLOWDOWN} times; steps that went over ${MOST} ms in any run`,
);
console.table(
  steps
    .filter(({ wall }) => Math.max(...wall) > MOST)
    .map(({ step, wall, busy }) => ({
      step,
      'by the clock': spread(wall, 0),
      'by the processor': spread(busy, 0),
    })),
);
console.table(
  /** @type {const} */ (['wall', 'busy']).map((by) => {
    const medians = steps.map((step) => median(step[by]));
    const over = medians.filter((time) => time > MOST).length;
    return {
      by: by === 'wall' ? 'the clock' : 'the processor',
      steps: steps.length,
      'over in the median run': over,
      'longest median, ms': Math.max(0, ...medians).toFixed(0),
      'over in any run': steps.flatMap((step) => step[by]).filter((time) => time > MOST).length,
      ...held(over, 0, `none over ${MOST} ms`),
    };
  }),
);
console.log(
  `A page with a heading alone, opened in a browser just begun: ${spread(longest(bareRuns, 0, 'wall'), 0)} by the clock, ${spread(longest(bareRuns, 0, 'busy'), 0)} by the processor`,
);
// The runner of vite keeps the process alive.
exit(0);
