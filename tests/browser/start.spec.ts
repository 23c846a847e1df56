import { expect, test } from '@playwright/test';
import { untilReadyForOffline } from './offline';
import { startServer } from './server';

test('the page opens and shows the name', async ({ page }) => {
  await page.goto('/');
  await expect(page).toHaveTitle(/Highedge/);
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
});

for (const [address, heading] of [
  ['/', 'Highedge'],
  ['/kit', 'Kit and units'],
  ['/files', 'Backup and files'],
] as const) {
  test(`the band of the page is taken over by the screen at ${address}`, async ({ page }) => {
    await page.goto(address);
    await expect(page.getByRole('main')).toBeVisible();
    await expect(page.locator('h1')).toHaveText([heading]);
    await expect(page.locator('#app > .page')).toHaveCount(1);
  });
}

test('the manifest names icons that exist', async ({ page, request, baseURL }) => {
  await page.goto('/');
  const link = await page.locator('link[rel="manifest"]').getAttribute('href');
  const manifest = await (await request.get(link ?? '')).json();
  expect(manifest.name).toBe('Highedge');
  expect(manifest.icons).not.toHaveLength(0);
  for (const { src, type } of manifest.icons) {
    const icon = await request.get(new URL(src, baseURL).href);
    expect(icon.ok()).toBe(true);
    expect(icon.headers()['content-type']).toBe(type);
  }
});

test('after the first visit the page opens with the network off', async ({ page, context }) => {
  await page.goto('/');
  await untilReadyForOffline(page);
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
});

test('after the first visit any address opens with the server gone', async ({ page }) => {
  const server = await startServer();
  try {
    await page.goto(server.url);
    await untilReadyForOffline(page);
  } finally {
    await server.stop();
  }
  await page.reload();
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
  await page.goto(`${server.url}?example`);
  await expect(page.locator('#app')).toContainText('Example block');
});

test('a window that stores no app has the screens of the main job loaded ahead too', async ({
  page,
  context,
}) => {
  // As in some private windows.
  await page.addInitScript(() => {
    Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
  });
  // The last of them, and what they reckon with.
  const lastScreen = page.waitForResponse(/\/compare-screen-[^/]*\.js$/);
  const reckoning = page.waitForResponse(/\/warm-up-[^/]*\.js$/);
  await page.goto('/');
  await Promise.all([lastScreen, reckoning]);
  await context.setOffline(true);
  await page.getByRole('button', { name: 'New part' }).tap();
  await expect(page.getByRole('textbox', { name: 'Name' })).toBeVisible();
});
