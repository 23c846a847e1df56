import { expect, type Page, test } from '@playwright/test';
import { untilReadyForOffline } from './offline';
import { describePart, takeAsParallel, type } from './shop-floor';

/*
 * The workers are built with the app and load some of its pieces. Where one of them does not start,
 * the page does its work in its stead or does without, and nobody would see it.
 */

/** Notes in `window.heard` whenever a worker answers or fails. */
function hear(): void {
  const heard: string[] = [];
  const Started = Worker;
  window.Worker = class extends Started {
    constructor(address: string | URL, options?: WorkerOptions) {
      super(address, options);
      this.addEventListener('message', () => heard.push('answered'));
      this.addEventListener('error', () => heard.push(`${address} failed`));
    }
  };
  Object.assign(window, { heard });
}

const heardBy = (page: Page) => page.evaluate<string[]>('window.heard');

test('offline, with the page on the policy, every worker starts and answers', async ({
  page,
  context,
}) => {
  await page.addInitScript(hear);
  await page.goto('/');
  await untilReadyForOffline(page);
  await context.setOffline(true);

  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await page.getByRole('button', { name: 'Column', exact: true }).tap();
  await page.getByRole('button', { name: 'Add a height' }).tap();
  for (const [row, height] of ['10', '45', '80'].entries()) {
    await type(page, `Height ${row + 1} above the plate`, height);
    await type(page, `Right at ${height}`, '4');
    await type(page, `Left at ${height}`, '7');
  }
  await takeAsParallel(page, '1');
  await expect(page.locator('main')).toContainText(/With the form .*\(95\s%: .* to .*\)/);
  const zones = await heardBy(page);
  expect(zones).toContain('answered');

  await page.goto('/files');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Back everything up' }).tap();
  await download;
  const backups = await heardBy(page);
  expect(backups).toContain('answered');

  // The one that keeps the journal never answers: it must not have failed either.
  expect([...zones, ...backups].filter((said) => said !== 'answered')).toEqual([]);
});
