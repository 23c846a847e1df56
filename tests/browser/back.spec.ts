import { expect, type Page, test } from '@playwright/test';
import { allStored, putStored } from './database';
import { describePart, press, readBothSides } from './shop-floor';

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
  // It comes in turns: at first it is too short.
  await expect(page.getByRole('link', { name: 'To the part', exact: true })).toBeVisible();
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

test('the app’s own way back is the browser’s, where that leads to the same screen', async ({
  page,
}) => {
  await thirtyParts(page);
  const block = page.getByRole('link', { name: /^Block 17/ });
  await block.evaluate((link) => link.scrollIntoView({ block: 'center', behavior: 'instant' }));
  const onBench = await scrolledTo(page);
  await block.tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Block 17');
  const entries = await page.evaluate(() => history.length);
  await page.getByRole('link', { name: 'Back to the bench' }).tap();
  await expect.poll(() => scrolledTo(page)).toBe(onBench);
  await page.goForward();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Block 17');
  expect(await page.evaluate(() => history.length)).toBe(entries);
});

test('opened anew at a screen, its way back is a link to the one above', async ({ page }) => {
  await describePart(page, { name: 'Block 0', size: ['60', '40', '90'], within: '0.005' });
  const address = page.url();
  await page.goto('about:blank');
  await page.goto(address);
  await expect(page.getByRole('link', { name: 'Change' })).toBeVisible();
  // The band that is shown before any script has become the screen's.
  await expect(page.locator('header.band')).toHaveCount(1);
  await page.getByRole('link', { name: 'Back to the bench' }).tap();
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
  await page.goBack();
  // The screen that goes may still be there.
  await expect(page.getByRole('heading', { level: 1, name: 'Block 0' })).toBeVisible();
  // By way of the drawing, which is not the bench.
  await press(page.getByRole('link', { name: 'Change' }));
  await press(page.getByRole('link', { name: 'To the part', exact: true }));
  await page.getByRole('link', { name: 'Back to the bench' }).tap();
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
});

test('a part that is out leads to what to take off', async ({ page }) => {
  await page.goto('/?example');
  await readBothSides(page, { nose: '6', indicator: '80', right: '41', left: '29' });
  await expect(page.locator('.so-far')).toContainText('Out');
  await press(page.getByRole('link', { name: 'Back to the part' }));
  await page.getByRole('link', { name: 'What to take off' }).tap();
  const heading = page.getByRole('heading', { name: 'What to take off' });
  await expect(page.getByRole('button', { name: 'I work the bottom' })).toHaveCount(1);
  await expect(heading).toBeInViewport();
  await expect
    .poll(() => heading.evaluate((h2) => h2.getBoundingClientRect().top))
    .toBeLessThan(200);
});

test('the way to what to take off ends there where a reading is still missing, opened anew too', async ({
  page,
}) => {
  await page.goto('/?example');
  await readBothSides(page, { nose: '6', indicator: '80', right: '41', left: '29' });
  await press(page.getByRole('button', { name: 'Seat again: left side' }));
  await expect(page.getByRole('textbox', { name: 'Left side, seating 2' })).toBeFocused();
  await page.goto('/');
  await page
    .getByRole('link', { name: /Example block/ })
    .last()
    .tap();
  await page.getByRole('link', { name: 'What to take off' }).tap();
  await expect(page.getByRole('button', { name: 'I work the bottom' })).toHaveCount(1);
  await expect(page.getByRole('heading', { name: 'What to take off' })).toBeInViewport();
  await expect(page.locator('.keypad')).toBeHidden();
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
