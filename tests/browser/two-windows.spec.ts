import { expect, type Page, test } from '@playwright/test';
import { type } from './shop-floor';

function field(page: Page, name: string) {
  return page.getByRole('textbox', { name, exact: true });
}

test('two windows on the same readings see what the other types, and lose nothing', async ({
  page,
  context,
}) => {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(field(other, 'Right side')).toHaveValue('41');

  await type(other, 'Left side', '29');
  await expect(field(page, 'Left side')).toHaveValue('29');
  await type(page, 'Right side', '42');
  await expect(field(other, 'Right side')).toHaveValue('42');

  // Both at once, without waiting for one another.
  await Promise.all([type(page, 'Right side', '-12.345'), type(other, 'Left side', '67.891')]);
  for (const window of [page, other]) {
    await expect(field(window, 'Right side')).toHaveValue('-12.345');
    await expect(field(window, 'Left side')).toHaveValue('67.891');
  }
  await other.reload();
  await expect(field(other, 'Right side')).toHaveValue('-12.345');
  await expect(field(other, 'Left side')).toHaveValue('67.891');
});

test('a part that is begun in one window is on the bench of the other', async ({
  page,
  context,
}) => {
  await page.goto('/');
  const other = await context.newPage();
  await other.goto('/');
  await other.getByRole('button', { name: 'New part' }).tap();
  await type(other, 'Name', 'Gauge block holder');
  await expect(page.getByRole('link', { name: 'Gauge block holder' })).toBeVisible();
});
