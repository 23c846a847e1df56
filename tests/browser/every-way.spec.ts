import { expect, test } from '@playwright/test';
import { describePart, readBothSides, sides, takeAsParallel, type } from './shop-floor';

const checks = { name: 'Do the readings agree?' };

test.beforeEach(async ({ page }) => {
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
});

test('turned on all four sides, one setting needs no word on the taper', async ({ page }) => {
  await page.getByRole('button', { name: 'Turn it on all four sides' }).tap();
  await type(page, 'Nose height', '5');
  await type(page, 'Indicator height', '55');
  // Four corners with the zero 2: 6, -1, 7, -4 less 2 are 4, -3, 5, -6, which sum to 0.
  await type(page, 'Right side on bottom', '6');
  await type(page, 'Left side on bottom', '-4');
  await type(page, 'Top side on right', '-1');
  await type(page, 'Left side on top', '7');
  await expect(sides(page)).toContainText('Right leans out at the top');
  await expect(sides(page)).toContainText('7.20 ±'); // 4 µm × 90 / 50
  await expect(sides(page)).toContainText('10.80 ±'); // 6 µm × 90 / 50
  await expect(page.getByRole('region', { name: 'The comparator itself' })).toContainText('2.00 ±');
});

test('turned on all four sides under one column, its lean falls out with no word on the taper', async ({
  page,
}) => {
  await page.getByRole('button', { name: 'Column', exact: true }).tap();
  await type(page, 'Height 1 above the plate', '10');
  await type(page, 'Height 2 above the plate', '50');
  await page.getByRole('button', { name: 'Turn it on all four sides' }).tap();
  // From height to height the corners 4, -6, -3, 5, which sum to 0, and a lean of the column of 2 in each.
  for (const [name, shown] of [
    ['Right on bottom', ['0', '6']],
    ['Left on bottom', ['3', '-1']],
    ['Top on right', ['1', '0']],
    ['Left on top', ['-2', '5']],
  ] as const) {
    await type(page, `${name} at 10`, shown[0]);
    await type(page, `${name} at 50`, shown[1]);
  }
  await expect(page.getByRole('img', { name: /^The block on the plate/ }).first()).toBeVisible();
  await expect(sides(page)).toContainText('Right leans out at the top');
  await expect(sides(page)).toContainText('9.00 ±'); // 4 µm × 90 / 40
  await expect(sides(page)).toContainText('13.50 ±'); // 6 µm × 90 / 40
  await expect(page.getByRole('region', { name: 'The comparator itself' })).toContainText('5.00 ±'); // 2 µm × 100 / 40
  await expect(page.getByRole('button', { name: 'Back to two sides' })).toBeDisabled();
});

test('an empty sheet makes way for another way of reading, which can be taken back', async ({
  page,
}) => {
  const [nose, column] = ['Nose comparator', 'Column'].map((way) =>
    page.getByRole('region', { name: `${way}: right and left`, exact: false }),
  );
  await expect(nose!).toBeVisible();
  await page.getByRole('button', { name: 'Column', exact: true }).tap();
  await expect(column!).toBeVisible();
  await expect(nose!).toHaveCount(0);
  await page.getByRole('main').getByRole('button', { name: 'Undo' }).tap();
  await expect(nose!).toBeVisible();
  await expect(column!).toHaveCount(0);
  await type(page, 'Nose height', '6');
  await page.getByRole('button', { name: 'Column', exact: true }).tap();
  await expect(nose!).toBeVisible();
  await expect(column!).toBeVisible();
});

test('a wild seating is named, left out in one tap, and put back', async ({ page }) => {
  await readBothSides(page, { nose: '6', indicator: '80', right: '34', left: '31' });
  await takeAsParallel(page, '0.1');
  for (const [side, seating, reading] of [
    ['Right side', 2, '34.2'],
    ['Right side, seating 2', 3, '33.9'],
    ['Left side', 2, '31.1'],
    ['Left side, seating 2', 3, '43'],
  ] as const) {
    await page.getByRole('textbox', { name: side, exact: true }).click();
    await page.getByRole('button', { name: /^Seat again/ }).tap();
    const name = side.replace(/,.*$/, '');
    await type(page, `${name}, seating ${seating}`, reading);
  }
  const agreement = page.getByRole('region', checks);
  await expect(agreement).toContainText('Left side, seating 3 looks');
  await expect(agreement).toContainText('high');
  await agreement.getByRole('button', { name: 'Leave it out' }).tap();
  await expect(agreement).toContainText('Left side, seating 3 is left out');
  await expect(agreement).toContainText('They agree as well as their doubt says');
  await page.reload();
  await expect(agreement).toContainText('Left side, seating 3 is left out');
  await agreement.getByRole('button', { name: 'Put it back' }).tap();
  await expect(agreement).toContainText('Left side, seating 3 looks');
});

test('a column with three heights shows the form, and the verdict takes it in', async ({
  page,
}) => {
  await page.getByRole('button', { name: 'Column', exact: true }).tap();
  await page.getByRole('button', { name: 'Add a height' }).tap();
  for (const [row, height] of [
    [1, '10'],
    [2, '45'],
    [3, '80'],
  ] as const) {
    await type(page, `Height ${row} above the plate`, height);
  }
  for (const [name, reading] of [
    ['Right at 10', '4'],
    ['Right at 45', '29.5'],
    ['Right at 80', '31'],
    ['Left at 10', '7'],
    ['Left at 45', '15.5'],
    ['Left at 80', '24'],
  ] as const) {
    await type(page, name, reading);
  }
  await takeAsParallel(page, '1');
  const form = page.getByRole('region', { name: 'Form', exact: true });
  // 29.5 stands 12 µm over the chord of 4 and 31: a crown, straight within 12.
  await expect(form).toContainText('Crown of 12.00 µm from bottom to top');
  await expect(form).toContainText('Straightness, minimum zone12.00 µm');
  await expect(page.locator('main')).toContainText('With the form at the 3 points read: ');
  await expect(page.locator('main')).toContainText('The readings span 70 of 90 mm');
  await expect(page.locator('main')).toContainText(/With the form .*\(95\s%: .* to .*\)/);
});

test('an indicator over the top maps what a grid of places shows', async ({ page }) => {
  await page.getByText('Form of the right').first().tap();
  await page.getByRole('button', { name: 'Indicator over the face' }).first().tap();
  await page.getByRole('button', { name: '3 × 3' }).tap();
  // A bowl on a slope: x² + y² in steps of the grid, plus 2 µm a column.
  for (const [index, reading] of ['2', '3', '6', '1', '2', '5', '2', '3', '6'].entries()) {
    await type(page, `Reading at place ${index + 1}`, reading);
  }
  const form = page.getByRole('region', { name: 'Form', exact: true });
  // The bowl's minimum zone is 2 µm: its four corners above, its middle below.
  await expect(form).toContainText('Flatness, minimum zone2.00 µm');
  await expect(form).toContainText('Hollow of 1.00 µm');
});
