import { expect, type Page, test } from '@playwright/test';
import { press, readBothSides, type } from './shop-floor';

/*
 * 60 × 40 × 90, only the right is to be square to the bottom. Nose at 6, indicator at 80, micrometer
 * 60.000 at two heights: what the two sides differ by, over twice the 74 mm, is the lean of the right.
 */

interface Asked {
  readonly within: string;
  readonly finished?: readonly string[];
}

async function draw(page: Page, { within, finished = [] }: Asked): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: 'New part' }).tap();
  await type(page, 'Name', 'Trial block');
  await page.getByRole('combobox', { name: 'Material' }).fill('Aluminium');
  await type(page, 'X, left to right', '60');
  await type(page, 'Y, front to back', '40');
  await type(page, 'Z, bottom to top', '90');
  await page.getByRole('button', { name: 'Add a requirement' }).tap();
  await type(page, 'Within', within);
  if (finished.length > 0) await page.getByText('Faces that are finished').tap();
  for (const face of finished) await page.getByRole('checkbox', { name: face }).check();
}

async function read(page: Page, right: string, left: string): Promise<void> {
  await page.getByRole('link', { name: 'To the part', exact: true }).tap();
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, { nose: '6', indicator: '80', right, left });
  await useMicrometer(page);
}

async function useMicrometer(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Use the micrometer' }).first().tap();
  for (const [index, up] of ['5', '85'].entries()) {
    const place = page.getByRole('group', { name: `Place ${index + 1}` });
    await place.getByRole('textbox', { name: 'Up from bottom' }).fill(up);
    await place.getByRole('textbox', { name: 'Thickness' }).fill('60.000');
  }
}

const step = (page: Page, face: string) =>
  page.getByRole('region', { name: `Work the ${face}`, exact: true });

test('each way is planned, the least stock first, and drawn so that it can be turned', async ({
  page,
}) => {
  await draw(page, { within: '0.005' });
  await read(page, '44', '24');
  // (44 - 24)/148 · 90 = 12.16 µm; what is left is half of 5 µm, less the guard for the doubt.
  const bottom = step(page, 'bottom');
  await expect(bottom).toContainText('The left edge of the bottom is high');
  await expect(bottom).toContainText('Press 20 mm from the left edge');
  await page.getByText(/Or work the right only/).tap();
  const right = step(page, 'right');
  await expect(right).toContainText('The top edge of the right is high');
  await expect(right).toContainText('Press 30 mm from the top edge');
  await right.getByText('Or grind it').tap();
  await expect(right).toContainText('A magnetic chuck does not hold this material');
  await expect(right).toContainText(/an indicator run over the right itself rises by/);

  const drawing = page
    .getByRole('img', { name: /The left edge of the bottom is high: take/ })
    .first();
  const before = await drawing.innerHTML();
  await page.getByRole('button', { name: 'Turn left' }).first().tap();
  await expect.poll(() => drawing.innerHTML()).not.toBe(before);
});

test('finished faces are left alone, and what stops it is said', async ({ page }) => {
  await draw(page, { within: '0.005', finished: ['Bottom'] });
  await read(page, '44', '24');
  await expect(step(page, 'right')).toContainText('The top edge of the right is high');
  await expect(step(page, 'bottom')).toHaveCount(0);

  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await page.getByRole('link', { name: 'Change' }).tap();
  await page.getByRole('checkbox', { name: 'Right' }).check();
  await page.getByRole('link', { name: 'To the part', exact: true }).tap();
  await page.getByRole('link', { name: 'Go on with the readings' }).tap();
  const main = page.locator('main');
  await expect(main).toContainText('Nothing that may be worked brings it right');
  await expect(main).toContainText(/Right square to bottom stays .* over/);
  await expect(main).toContainText('It could be done if the bottom or the right were not marked');
});

test('from the plan to the work, what it did, what the paper cuts, and the part closed', async ({
  page,
}) => {
  await draw(page, { within: '0.006' });
  await read(page, '44', '24');
  await expect(page.locator('main')).toContainText('common practice (no source) for aluminium');
  await step(page, 'bottom').getByRole('button', { name: 'I work the bottom' }).tap();
  await page.getByRole('combobox', { name: 'Abrasive, wheel or tool' }).fill('P400 paper');
  await type(page, 'How much', '10');
  await page.getByRole('button', { name: 'Measure again' }).tap();
  await type(page, 'Right side', '35');
  await type(page, 'Left side', '33');
  // The bottom was worked: between right and left the thicknesses are what they were.
  await press(page.getByRole('button', { name: 'As last time: neither face was worked since' }));
  await expect(page.locator('main')).toContainText('Taken over from');
  // (35 - 33)/148 · 90 = 1.22 µm is left.
  await expect(page.locator('main')).toContainText('1.22 ±');
  await expect(page.locator('main')).toContainText(
    'Nothing: all that has been measured is within 50 %',
  );

  await page.getByRole('link', { name: 'Back to the part' }).tap();
  const story = page.getByRole('region', { name: 'Its story' });
  // 18 µm less between the sides: 18/148 · 60 = 7.30 µm of wedge in 10 s.
  await expect(story).toContainText('7.30 ±');
  await expect(story).toContainText(/was to be left, had exactly the advised come off/);
  await page.getByRole('button', { name: 'Close the part with these readings' }).tap();
  const closed = page.getByRole('region', { name: 'Closed' });
  await expect(closed).toContainText('1 of 1 is in');
  await page.reload();
  await expect(closed).toContainText('1 of 1 is in');

  await page.goto('/rates');
  const way = page.getByRole('region', { name: 'Aluminium, P400 paper' });
  await expect(way).toContainText('From one pass of yours');
  await expect(way).toContainText('7.30 ±');
  await way.getByRole('button', { name: 'Leave out' }).tap();
  await expect(way).toContainText('No pass of yours tells it yet');
});
