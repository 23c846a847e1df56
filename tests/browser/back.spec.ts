import { expect, type Page, test } from '@playwright/test';
import { allStored, putStored } from './database';
import { describePart, press } from './shop-floor';

test.use({ viewport: { width: 412, height: 915 }, hasTouch: true, isMobile: true });

/** A bench of thirty parts, none of them read. */
async function thirtyParts(page: Page): Promise<void> {
  await describePart(page, { name: 'Block 0', size: ['60', '40', '90'], within: '0.005' });
  await expect.poll(async () => keysOfParts(await allStored(page))).toHaveLength(1);
  const stored = await allStored(page);
  const first = stored[keysOfParts(stored)[0] ?? ''] as { readonly entry: object };
  const copies = Array.from({ length: 29 }, (_, index) => {
    const id = `copy-${index + 1}`;
    return [`part/${id}`, { ...first, id, entry: { ...first.entry, name: `Block ${index + 1}` } }];
  });
  await putStored(page, Object.fromEntries(copies));
  await page.goto('/');
}

const keysOfParts = (stored: object) => Object.keys(stored).filter((key) => /^part\//.test(key));
const scrollDown = (page: Page, top: number) =>
  page.evaluate((to) => {
    scrollTo({ top: to, behavior: 'instant' });
    // It is told of in the next frame.
    return new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  }, top);
const scrolledTo = (page: Page) => page.evaluate(() => Math.round(scrollY));

test('back and forward return to where one was, and a link leads to the top', async ({ page }) => {
  await thirtyParts(page);
  const block = page.getByRole('link', { name: /^Block 17/ });
  await block.evaluate((link) => link.scrollIntoView({ block: 'center', behavior: 'instant' }));
  const onBench = await scrolledTo(page);
  expect(onBench).toBeGreaterThan(500);
  await block.tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Block 17');
  await expect.poll(() => scrolledTo(page)).toBe(0);
  await press(page.getByRole('link', { name: 'Change' }));
  const name = page.getByRole('textbox', { name: 'Name' });
  await expect(name).toHaveValue('Block 17');
  await expect.poll(() => scrolledTo(page)).toBe(0);
  await scrollDown(page, 300);
  expect(await scrolledTo(page)).toBe(300);
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Block 17');
  await page.goBack();
  await expect.poll(() => scrolledTo(page)).toBe(onBench);
  await expect(block).toBeInViewport();
  await page.goForward();
  await page.goForward();
  await expect(name).toHaveValue('Block 17');
  await expect.poll(() => scrolledTo(page)).toBe(300);
});

test('whoever scrolls on the way back is left where he is', async ({ page }) => {
  await thirtyParts(page);
  // The parts below come after those in sight.
  await expect(page.getByRole('link', { name: /^Block/ })).toHaveCount(30);
  await scrollDown(page, 1000);
  expect(await scrolledTo(page)).toBe(1000);
  // A tap would bring the link into sight first.
  await page.getByRole('link', { name: 'Kit' }).evaluate((link: HTMLElement) => link.click());
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText('Highedge');
  await page.goBack();
  await expect.poll(() => scrolledTo(page)).toBe(1000);
  await page.mouse.wheel(0, -400);
  await expect.poll(() => scrolledTo(page)).toBe(600);
  await page.setViewportSize({ width: 412, height: 800 });
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(drawn)));
  expect(await scrolledTo(page)).toBe(600);
});
