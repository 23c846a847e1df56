import { expect, type Page, test } from '@playwright/test';
import { sides, type } from './shop-floor';

const guide = (page: Page) => page.getByRole('region', { name: 'Try-out' });
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

test('the invented part is played through: the zero falls out, the answer stays, and it has an end', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Try it on an invented part' }).tap();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('invented');
  await expect(guide(page)).toContainText('Type 41.00 µm for the right side');
  await type(page, 'Right side', '41');
  await expect(guide(page)).toContainText('it says nothing yet');
  await expect(guide(page).getByRole('img', { name: /Neither is known/ })).toBeVisible();
  await type(page, 'Left side', '29');
  const drawing = guide(page).getByRole('img', { name: /zero is/ });
  await expect(drawing).toHaveAccessibleName(/zero is 35.00 µm, the lean 6.00 µm/);
  // 6 µm over the 74 mm between nose and indicator, 90 mm high.
  await expect(sides(page)).toContainText('7.30 ±');

  await guide(page).getByRole('slider', { name: 'Turn the dial of the indicator' }).fill('10');
  await expect(drawing).toHaveAccessibleName(/right 51.00 µm, left 39.00 µm/);
  await expect(drawing).toHaveAccessibleName(/zero is 45.00 µm, the lean 6.00 µm/);
  await guide(page).getByRole('button', { name: 'Type these in' }).tap();
  await expect(field(page, 'Right side')).toHaveValue('51');
  await expect(field(page, 'Left side')).toHaveValue('39');
  await expect(page.getByRole('region', { name: 'The comparator itself' })).toContainText(
    '45.00 ±',
  );
  await expect(sides(page)).toContainText('7.30 ±');

  await page.getByRole('button', { name: 'I work the bottom' }).first().tap();
  await expect(page.locator('main')).toContainText('Invented: say that you lapped it');
  await type(page, 'How much', '12');
  await page.getByRole('button', { name: 'Measure again' }).tap();
  await expect(guide(page)).toContainText('36.00 µm for the right and 34.00 µm for the left');
  await type(page, 'Right side', '36');
  await type(page, 'Left side', '34');
  await expect(guide(page)).toContainText('60.001 mm at both places');
  for (const thickness of await page.getByRole('textbox', { name: 'Thickness' }).all()) {
    await thickness.fill('60.001');
  }
  await expect(guide(page)).toContainText('That is the whole job');
  await expect(page.locator('.so-far')).toContainText('1.22 ±');
  await guide(page).getByRole('link', { name: 'On to a part of your own' }).tap();
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
});

test('the guide is skipped for good, and no part of one’s own has it', async ({ page }) => {
  await page.goto('/?example');
  await guide(page).getByRole('button', { name: 'Skip this' }).tap();
  await expect(guide(page)).toHaveCount(0);
  await page.reload();
  await expect(field(page, 'Right side')).toBeVisible();
  await expect(guide(page)).toHaveCount(0);
});
