// @ts-check
/**
 * What a thousand inspections, opened and closed, leave behind: the heap, the listeners and the nodes
 * of the page after garbage is collected. A part with work and a second reading is walked back and
 * forth between its screen, with the charts, and its readings.
 */
import { exit } from 'node:process';
import { settle, withApp } from './support/app.mjs';
import { held } from './support/measure.mjs';

/** Opened and closed before the first count: what is loaded and compiled once is so by then. */
const FIRST = 200;
const OPENED = 1000;
const COUNTS = 5;
/** Bytes that one inspection may leave: less than any chart, drawing or record. */
const MOST_LEFT = 1000;

/** @param {import('@playwright/test').Page} page */
async function makeStory(page) {
  /** @param {string} name @param {string} text */
  const type = (name, text) => page.getByRole('textbox', { name, exact: true }).fill(text);
  await page.goto('/?example');
  await type('Right side', '41');
  await type('Left side', '29');
  await page.getByRole('button', { name: 'I work the bottom' }).first().tap();
  await type('How much', '12');
  await page.getByRole('button', { name: 'Measure again' }).tap();
  await type('Right side', '36');
  await type('Left side', '34');
  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await page.getByRole('heading', { name: 'Its story' }).waitFor();
}

/** Opens and closes `times` inspections, in the page itself. @param {import('@playwright/test').Page} page @param {number} times */
const openAndClose = (page, times) =>
  page.evaluate(async (count) => {
    const drawn = () => new Promise((resolve) => requestIdleCallback(resolve, { timeout: 1000 }));
    /** @param {string} selector @returns {Promise<HTMLElement[]>} */
    const found = async (selector) => {
      for (let tries = 0; tries < 500; tries += 1) {
        await drawn();
        const all = [...document.querySelectorAll(selector)];
        if (all.length > 0) return /** @type {HTMLElement[]} */ (all);
      }
      throw new Error(`${selector} never came`);
    };
    for (let opened = 0; opened < count; opened += 1) {
      const links = await found(
        'a[href*="/plate/"], a[href*="/inspection/"], a[href*="/readings/"]',
      );
      links[opened % links.length]?.click();
      await found('.plate');
      await drawn();
      history.back();
      while (document.querySelector('.plate') !== null) await drawn();
    }
  }, times);

const counts = await withApp(async (page, session) => {
  await session.send('Performance.enable');
  await makeStory(page);
  const count = async () => {
    await settle(page);
    // Twice: what the first round frees may hold on to more.
    await session.send('HeapProfiler.collectGarbage');
    await session.send('HeapProfiler.collectGarbage');
    const { metrics } = await session.send('Performance.getMetrics');
    const metric = (/** @type {string} */ wanted) =>
      metrics.find(({ name }) => name === wanted)?.value ?? Number.NaN;
    return {
      heap: metric('JSHeapUsedSize'),
      listeners: metric('JSEventListeners'),
      nodes: metric('Nodes'),
    };
  };
  await openAndClose(page, FIRST);
  const all = [{ opened: 0, ...(await count()) }];
  for (let part = 1; part <= COUNTS; part += 1) {
    await openAndClose(page, OPENED / COUNTS);
    all.push({ opened: (part * OPENED) / COUNTS, ...(await count()) });
  }
  return all;
});

console.log('Inspections opened and closed, and what the page holds after garbage is collected');
console.table(
  counts.map(({ opened, heap, listeners, nodes }) => ({
    opened,
    'heap, kB': (heap / 1000).toFixed(0),
    listeners,
    nodes,
  })),
);
/**
 * Bytes that each inspection left from one count to another.
 *
 * @param {number} from @param {number} to
 */
function left(from, to) {
  const [first, last] = [counts.at(from), counts.at(to)];
  if (first === undefined || last === undefined) throw new RangeError('There is no such count');
  return (last.heap - first.heap) / (last.opened - first.opened);
}
// While the engine still compiles what it finds to be used often, the heap grows by that.
const later = left(-3, -1);
console.table([
  {
    'left by each, bytes': left(0, -1).toFixed(0),
    'by each of the last 400': later.toFixed(0),
    ...held(later, MOST_LEFT, 'under 1 kB'),
  },
]);
// The runner of vite keeps the process alive.
exit(0);
