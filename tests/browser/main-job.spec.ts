import { expect, test } from '@playwright/test';
import { describePart, readBothSides, sides, takeAsParallel, type } from './shop-floor';

/* The first worked case: 60 × 40 × 90, nose at 6, indicator at 80, right 34, left 31. */
const FIRST = { nose: '6', indicator: '80', right: '34', left: '31' };

test('from a new part to the verdict, the work, and the readings after it', async ({ page }) => {
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.001' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, FIRST);

  // Nothing is known of the taper yet: no number, but what would fix it.
  await expect(sides(page)).toContainText('Not fixed by these readings.');
  await expect(sides(page)).toContainText('micrometer at two heights');
  await expect(sides(page)).toContainText('Say within what right and left are parallel');
  await expect(sides(page)).not.toContainText('per side');

  await takeAsParallel(page, '0.1');
  await expect(sides(page)).toContainText('Right leans out at the top');
  await expect(sides(page)).toContainText('Left leans in at the top');
  // 1.5 µm over the 74 mm between nose and indicator.
  await expect(sides(page)).toContainText('1.82 ±'); // × 90 / 74
  await expect(sides(page)).toContainText('2.03 ±'); // × 100 / 74
  await expect(sides(page)).toContainText('0.51 ±'); // × 25.4 / 74
  await expect(sides(page)).toContainText('4.18 ±'); // arc seconds: 206265 × 1.5 / 74000
  await expect(sides(page)).toContainText('over 74 mm3.00 ±');
  await expect(sides(page)).toContainText('Half of it, per side, over 74 mm1.50 µm');
  await expect(sides(page)).toContainText('This leans on your word that the faces are parallel');
  const comparator = page.getByRole('region', { name: 'The comparator itself' });
  await expect(comparator).toContainText('32.50 ±');

  const bottom = page.getByRole('region', { name: 'Work the bottom' }).first();
  await expect(bottom).toContainText('The left edge of the bottom is high: take 1.22 µm off there');
  await expect(bottom).toContainText('Press 20 mm from the left edge');
  // The trap: what makes the sides square tapers the block from bottom to top.
  await expect(bottom).toContainText('the taper bottom to top changes by as much');
  await page.getByText('Faces that cannot do it alone').tap();
  await expect(page.locator('main')).toContainText(/Only the right: Left square to bottom stays/);

  await bottom.getByRole('button', { name: 'I work the bottom' }).tap();
  // From far down the plate a button leads to the top of the next screen.
  await expect(page.getByRole('heading', { name: 'Where and how much' })).toBeInViewport();
  await expect.poll(() => page.evaluate(() => scrollY)).toBe(0);
  await page.getByRole('combobox', { name: 'Abrasive, wheel or tool' }).fill('P400 paper');
  await type(page, 'How much', '4');
  await page.getByRole('button', { name: 'Measure again' }).tap();

  // The heights stand already; only what the indicator shows is asked for.
  await expect(page.getByRole('textbox', { name: 'Nose height' })).toHaveValue('6');
  await type(page, 'Right side', '33');
  await type(page, 'Left side', '32');
  // Neither of the parallel sides was worked, so the word on them still holds.
  const within = 'Parallel within, over the whole face';
  await expect(page.getByRole('textbox', { name: within })).toHaveValue('0.1');
  await expect(sides(page)).toContainText('0.61 ±'); // 0.5 µm × 90 / 74

  await page.getByRole('link', { name: 'Back to the part' }).tap();
  const story = page.getByRole('region', { name: 'Its story' });
  await expect(story.getByRole('listitem')).not.toHaveCount(0);
  await expect(story).toContainText('Lapped the bottom');
  await expect(story).toContainText('P400 paper');
  // The wedge over the 60 mm of the bottom: (1.5 - 0.5) × 60 / 74 = 0.81 µm, in 4 s.
  await expect(story).toContainText('0.81 ±');
  await expect(story).toContainText('2.03 ±');
  await expect(
    story.getByRole('img', { name: /Right square to bottom: before 1\.82 .*after 0\.61/ }),
  ).toBeVisible();
});

test('a micrometer puts the blame where it belongs', async ({ page }) => {
  await describePart(page, { name: 'Tapered block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, FIRST);
  await page.getByRole('button', { name: 'Use the micrometer' }).first().tap();
  const place = (number: number) => page.getByRole('group', { name: `Place ${number}` });
  for (const [number, up, thickness] of [
    [1, '5', '60,001'],
    [2, '85', '60.003'],
  ] as const) {
    await place(number).getByRole('textbox', { name: 'Up from bottom' }).fill(up);
    await place(number).getByRole('textbox', { name: 'Thickness' }).fill(thickness);
  }
  await expect(sides(page)).toContainText('3.28 ±');
  await expect(sides(page)).toContainText('0.78 ±');
  await expect(sides(page)).toContainText('Thicker towards the top');
  await expect(sides(page)).not.toContainText('your word');
  await expect(page.getByRole('region', { name: 'The comparator itself' })).toContainText(
    '31.58 ±',
  );
});

test('a column gives its own lean away', async ({ page }) => {
  await describePart(page, { name: 'Tall block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await page.getByRole('button', { name: 'Remove Nose comparator' }).tap();
  await page.getByRole('button', { name: 'Column', exact: true }).tap();
  await type(page, 'Height 1 above the plate', '10');
  await type(page, 'Height 2 above the plate', '80');
  await type(page, 'Right at 10', '4');
  await type(page, 'Right at 80', '31');
  await type(page, 'Left at 10', '7');
  await type(page, 'Left at 80', '24');
  await takeAsParallel(page, '1');
  await expect(sides(page)).toContainText('Right leans out at the top');
  await expect(sides(page)).toContainText('7.14 ±');
  await expect(page.getByRole('region', { name: 'The comparator itself' })).toContainText(
    '31.43 ±',
  );
});
