import { cpSync } from 'node:fs';
import { type BrowserContext, expect, type Page, type TestInfo, test } from '@playwright/test';
import { putNewerBuild } from './newer-build';
import { untilReadyForOffline } from './offline';
import { type Server, startServer } from './server';
import { type } from './shop-floor';

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const READY = 'A new version is ready';

/** A copy of the build, served: a newer one can be put in its place. */
async function serveCopy(testInfo: TestInfo): Promise<{ server: Server; site: string }> {
  const site = testInfo.outputPath('site');
  cpSync('dist', site, { recursive: true });
  return { server: await startServer(site), site };
}

/** A page at the example's readings, under a service worker, with the first reading typed. */
async function atThePlate(page: Page, url: string): Promise<void> {
  await page.goto(`${url}?example`);
  await untilReadyForOffline(page);
  await expect(field(page, 'Right side')).toBeVisible();
  // From here on the page is one that a worker has served.
  await page.reload();
  await type(page, 'Right side', '41');
  await page.evaluate(() => {
    Object.assign(window, { isThePage: true });
  });
}

const isStillThePage = (page: Page) => page.evaluate(() => 'isThePage' in window);
const build = (page: Page) => page.locator('html').getAttribute('data-build');

async function lookForUpdate(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update();
  });
}

/** Another window of the app takes the newer version, which is then in charge of all. */
async function takeInAnotherWindow(context: BrowserContext, url: string): Promise<Page> {
  const other = await context.newPage();
  await other.goto(url);
  await other.getByRole('button', { name: 'Take it now' }).click();
  await expect.poll(() => build(other).catch(() => null)).toBe('newer');
  return other;
}

test('a newer version waits while readings are typed, and is taken when it is asked for', async ({
  page,
}, testInfo) => {
  const { server, site } = await serveCopy(testInfo);
  try {
    await atThePlate(page, server.url);
    putNewerBuild(site);
    await lookForUpdate(page);
    // The notice makes room for the keypad, but is there.
    await expect(page.getByText(READY)).toHaveCount(1);
    await type(page, 'Left side', '29');
    expect(await isStillThePage(page)).toBe(true);
    expect(await build(page)).toBe(null);
    await page.getByRole('heading', { level: 1 }).click();
    await page.getByRole('button', { name: 'Take it now' }).click();
    await expect.poll(() => build(page).catch(() => null)).toBe('newer');
    await expect(field(page, 'Right side')).toHaveValue('41');
    await expect(field(page, 'Left side')).toHaveValue('29');
  } finally {
    await server.stop();
  }
});

test('a newer version that another window takes never reloads the page, not even where pieces of the old one are gone', async ({
  page,
  context,
}, testInfo) => {
  const { server, site } = await serveCopy(testInfo);
  try {
    await atThePlate(page, server.url);
    putNewerBuild(site);
    const other = await takeInAnotherWindow(context, server.url);
    await other.close();
    expect(await isStillThePage(page)).toBe(true);
    await type(page, 'Left side', '29');
    // The screens of the main job were loaded ahead, so that they are there all the same.
    await page.getByRole('link', { name: 'Back to the part' }).click();
    await expect(page.getByRole('heading', { name: 'The drawing' })).toBeVisible();
    // This screen has not been opened yet, and what it is made of is neither here nor there.
    await page.getByRole('link', { name: 'Readings as a table' }).click();
    const missing = page.locator('.notice').filter({ hasText: 'A piece of the app is missing' });
    await expect(missing).toBeVisible();
    expect(await isStillThePage(page)).toBe(true);
    await missing.getByRole('button', { name: 'Load again' }).click();
    await expect.poll(() => build(page).catch(() => null)).toBe('newer');
    await page.goBack();
    await page.goBack();
    await expect(field(page, 'Right side')).toHaveValue('41');
    await expect(field(page, 'Left side')).toHaveValue('29');
  } finally {
    await server.stop();
  }
});
