import { expect, type Page, test } from '@playwright/test';
import { describePart, readBothSides, sides, takeAsParallel, type } from './shop-floor';

const GOOD = { nose: '6', indicator: '80', right: '34', left: '31' };

test.beforeEach(async ({ page }) => {
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, GOOD);
  await takeAsParallel(page, '1');
  await expect(sides(page)).toContainText('1.82 ±');
});

async function expectRefusal(page: Page, label: string, text: string, message: string) {
  await type(page, label, text);
  const field = page.getByRole('textbox', { name: label, exact: true });
  await expect(field).toHaveValue(text);
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(field).toHaveAccessibleDescription(new RegExp(message));
  await expect(sides(page)).toHaveCount(0);
  await expect(page.locator('main')).not.toContainText(/±\s*\d|NaN|Infinity/);
}

for (const [what, label, text, message, right] of [
  ['letters', 'Right side', '3a4', 'is no unit', '34'],
  ['two decimal marks', 'Right side', '3.4,1', 'Two decimal marks', '34'],
  ['an absurd reading', 'Left side', '99999', 'Beyond 5 mm', '31'],
  ['a height above the part', 'Indicator height', '95', 'Above the part', '80'],
  ['an indicator at the nose', 'Indicator height', '6', 'must stand above the nose', '80'],
  ['an indicator below the nose', 'Indicator height', '5.5', 'must stand above the nose', '80'],
] as const) {
  test(`refuses ${what} beside the field and gives no number`, async ({ page }) => {
    await expectRefusal(page, label, text, message);
    await type(page, label, right);
    await expect(sides(page)).toContainText('1.82 ±');
  });
}

test('asks for the side that is missing', async ({ page }) => {
  const left = page.getByRole('textbox', { name: 'Left side', exact: true });
  await left.fill('');
  await expect(left).toHaveAccessibleDescription(/read the left side too/);
  await expect(page.locator('main')).not.toContainText(/±\s*\d/);
});

test('refuses the same height twice', async ({ page }) => {
  await page.getByRole('button', { name: 'Column', exact: true }).tap();
  await type(page, 'Height 1 above the plate', '10');
  await expectRefusal(page, 'Height 2 above the plate', '10.0', 'there already');
});

test('refuses absurd sizes, and no reading is taken of such a part', async ({ page }) => {
  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await page.getByRole('link', { name: 'Change' }).tap();
  await type(page, 'Z, bottom to top', '90000');
  const field = page.getByRole('textbox', { name: 'Z, bottom to top' });
  await expect(field).toHaveAccessibleDescription(/Over 3 m/);
  await expect(page.getByRole('link', { name: 'To the part', exact: true })).toHaveCount(0);
});

test('the key for next goes to what is marked before it says that all is done', async ({
  page,
}) => {
  await type(page, 'Right side', '3a4');
  const [right, left] = ['Right side', 'Left side'].map((name) =>
    page.getByRole('textbox', { name, exact: true }),
  );
  await left?.tap();
  await page.getByRole('button', { name: 'Next', exact: true }).tap();
  await expect(right!).toBeFocused();
  await type(page, 'Right side', '34');
  await left?.tap();
  await expect(page.getByRole('button', { name: 'Done', exact: true }).last()).toBeVisible();
});

test('a part that was begun and left with nothing typed leaves no trace in the list', async ({
  page,
}) => {
  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await page.getByRole('link', { name: 'Back to the bench' }).tap();
  await page.getByRole('button', { name: 'New part' }).tap();
  await expect(page.getByRole('heading', { name: 'New part' })).toBeVisible();
  await page.goBack();
  await expect(page.getByText('1 part', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'New part' }).tap();
  await page.getByRole('textbox', { name: 'Job reference' }).fill('7');
  await page.goBack();
  await expect(page.getByText('2 parts', { exact: true })).toBeVisible();
});

test('with three places of the micrometer going on asks how far in each is, and once only', async ({
  page,
}) => {
  await page.getByRole('button', { name: 'Micrometer', exact: true }).tap();
  await page.getByRole('button', { name: 'Add a place', exact: true }).tap();
  const fields = (name: string) => page.getByRole('textbox', { name, exact: true });
  await expect(fields('Up from bottom')).toHaveCount(3);
  const next = page.getByRole('button', { name: 'Next', exact: true });
  await fields('Up from bottom').first().fill('10');
  await next.tap();
  await expect(fields('In from front').first()).toBeFocused();
  await next.tap();
  await expect(fields('Thickness').first()).toBeFocused();
  for (const place of [0, 1, 2]) {
    await fields('Up from bottom').nth(place).fill('10');
    await fields('Thickness').nth(place).fill('60');
  }
  // The middle is meant where nothing stands: at the end that is no reason to go back.
  await expect(page.getByRole('button', { name: 'Done', exact: true }).last()).toBeVisible();
});
