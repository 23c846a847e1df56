// @ts-check
/**
 * Everything out and in again: 5,000 parts with 20 inspections of 40 readings each, or as many parts as
 * are named in `PARTS`. Beside the time it takes stands the longest that the page's main thread was
 * kept from drawing in the meantime: the work is done beside the screen, which must not freeze.
 */
import { statSync } from 'node:fs';
import { env, exit } from 'node:process';
import { withApp } from './support/app.mjs';
import { inventShop } from './support/invented-shop.mjs';
import { held } from './support/measure.mjs';

const PARTS = Number(env.PARTS ?? 5000);
/** Of 4 readings for each seating and 2 for each place: 40. */
const SIZE = { parts: PARTS, inspections: 20, seatings: 8, places: 4 };
/** Records of a part: itself, its inspections and the work between them. */
const RECORDS = PARTS * (1 + 20 + 19);
/** ms without a frame that a finger does not take for a freeze. */
const FREEZE = 200;
const MINUTE = 60_000;

/** Notes the longest time between two frames in `window.longest`, ms. */
function watchFrames() {
  let last = performance.now();
  const next = () => {
    const now = performance.now();
    const seen = /** @type {{ longest?: number }} */ (/** @type {unknown} */ (window));
    seen.longest = Math.max(seen.longest ?? 0, now - last);
    last = now;
    requestAnimationFrame(next);
  };
  requestAnimationFrame(next);
}

/**
 * @param {import('@playwright/test').Page} page
 * @param {string} what
 * @param {() => Promise<unknown>} work
 */
async function timed(page, what, work) {
  await page.evaluate(() => Object.assign(window, { longest: 0 }));
  const start = Date.now();
  await work();
  const seconds = (Date.now() - start) / 1000;
  const longest = await page.evaluate(
    () => /** @type {{ longest: number }} */ (/** @type {unknown} */ (window)).longest,
  );
  return {
    ...{ what, s: seconds.toFixed(1), 'records/s': Math.round(RECORDS / seconds) },
    'longest without a frame, ms': longest.toFixed(0),
    ...held(longest, FREEZE, `${FREEZE} ms`),
  };
}

const done = (/** @type {import('@playwright/test').Page} */ page, /** @type {string} */ text) =>
  page
    .getByText(text)
    .first()
    .waitFor({ timeout: 30 * MINUTE });

await withApp(async (page) => {
  await page.addInitScript(watchFrames);
  page.setDefaultTimeout(10 * MINUTE);
  await page.goto('/');
  await inventShop(page, SIZE);
  await page.goto('/files');
  const rows = [];
  let path = '';
  rows.push(
    await timed(page, 'backup', async () => {
      const download = page.waitForEvent('download', { timeout: 30 * MINUTE });
      await page.getByRole('button', { name: 'Back everything up' }).tap();
      path = await (await download).path();
    }),
  );
  await page.evaluate(async () => {
    const request = indexedDB.open('highedge');
    const database = await new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const transaction = database.transaction('records', 'readwrite');
    transaction.objectStore('records').clear();
    await new Promise((resolve) => {
      transaction.oncomplete = resolve;
    });
    database.close();
  });
  await page.reload();
  const choose = () => page.getByLabel('Choose a file, or drop it here').setInputFiles(path);
  const look = async () => {
    await choose();
    await done(page, 'Nothing of it has been taken yet');
  };
  rows.push(await timed(page, 'looked over', look));
  const merge = async () => {
    await page.getByRole('button', { name: 'Merge it' }).tap();
    await done(page, 'A copy from before is kept');
  };
  rows.push(await timed(page, 'restored', merge));
  rows.push(await timed(page, 'looked over again', look));
  console.log(`${RECORDS} records in a file of ${(statSync(path).size / 1e6).toFixed(1)} MB`);
  console.table(rows);
});
// The runner of vite keeps the process alive.
exit(0);
