import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { type } from './shop-floor';

/** What WCAG 2.2 AA asks, as far as axe can see it. */
async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  const told = violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  expect(told).toEqual([]);
}

/** No target of a finger is smaller than 48 px, and nothing sticks out at the side. */
async function expectRoomForFingers(page: Page): Promise<void> {
  const small = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('button, a.button, a.card, summary, select, input')]
      .filter((target) => target.offsetParent !== null && target.closest('.check') === null)
      .filter((target) => target.getBoundingClientRect().height < 47.5)
      .map((target) => target.outerHTML.slice(0, 120)),
  );
  expect(small).toEqual([]);
  const wide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(wide).toBe(0);
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`every screen is accessible in the ${colorScheme}`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme });
    const check = async () => {
      await expectAccessible(page);
      await expectRoomForFingers(page);
    };
    await page.goto('/');
    await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
    await check();
    await page.goto('/?example');
    await type(page, 'Right side', '41');
    await check();
    await type(page, 'Left side', '2.9.');
    await check();
    await type(page, 'Left side', '29');
    await page.getByText('Faces that cannot do it alone').tap();
    await page.getByText('Or grind it').first().tap();
    await page.getByText('Show the working').first().tap();
    await check();
    await page.getByRole('button', { name: /Units/ }).tap();
    await check();
    await page.getByRole('button', { name: 'I work the bottom' }).first().tap();
    await page.getByText('Before you work').tap();
    await check();
    await type(page, 'How much', '10');
    await page.getByRole('button', { name: 'Measure again' }).tap();
    await type(page, 'Right side', '36');
    await type(page, 'Left side', '33');
    await page.getByRole('link', { name: 'Back to the part' }).tap();
    await check();
    await page.getByRole('link', { name: 'Change' }).tap();
    await check();
    await page.goto('/kit');
    await check();
    await page.goto('/rates');
    await check();
    await page.goto('/no-such-place');
    await check();
  });
}
