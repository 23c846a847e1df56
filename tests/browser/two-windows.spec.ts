import { readFileSync } from 'node:fs';
import { gunzipSync, gzipSync } from 'node:zlib';
import { expect, type Page, test } from '@playwright/test';
import { allStored } from './database';
import { press, sides, type } from './shop-floor';

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

/** The example, read on both sides and saved, in a window at the plate. */
async function atThePlate(page: Page): Promise<{ readonly plate: string; readonly part: string }> {
  await page.goto('/?example');
  await type(page, 'Right side', '34');
  await type(page, 'Left side', '31');
  await expect(sides(page)).toContainText('Right leans');
  const plate = new URL(page.url()).pathname;
  return { plate, part: plate.split('/readings/')[0] ?? '' };
}

test('the plate follows the drawing in another window, and neither loses what is typed', async ({
  page,
  context,
}) => {
  const { part } = await atThePlate(page);
  const drawing = await context.newPage();
  await drawing.goto(`${part}/drawing`);
  const before = await sides(page).textContent();
  await type(drawing, 'Z, bottom to top', '120');
  await expect(sides(page)).not.toHaveText(before ?? '');
  // Both at once, each on its own screen.
  await Promise.all([type(page, 'Right side', '-12.345'), type(drawing, 'Job reference', '4711')]);
  for (const window of [page, drawing]) {
    await expect(window.locator('.notice')).toHaveCount(0);
    await window.reload();
  }
  await expect(field(page, 'Right side')).toHaveValue('-12.345');
  await expect(field(drawing, 'Job reference')).toHaveValue('4711');
  await expect(field(drawing, 'Z, bottom to top')).toHaveValue('120');
});

test('readings that are finished in one window are finished in the other, in the midst of typing', async ({
  page,
  context,
}) => {
  const { plate } = await atThePlate(page);
  const other = await context.newPage();
  await other.goto(plate);
  await expect(field(other, 'Left side')).toHaveValue('31');
  await press(page.getByRole('button', { name: 'Finish these readings' }));
  await expect(other.getByText('Finished.')).toBeVisible();
  await expect(field(other, 'Left side')).toBeDisabled();
  await expect(field(other, 'Left side')).toHaveValue('31');
});

test('a part that is removed in one window says so in the other, where what is typed is kept', async ({
  page,
  context,
}) => {
  const { part } = await atThePlate(page);
  const drawing = await context.newPage();
  await drawing.goto(`${part}/drawing`);
  const other = await context.newPage();
  await other.goto(part);
  await press(other.getByText('Copy, archive or remove this part'));
  await press(other.getByRole('button', { name: 'Remove it from the list' }));
  for (const window of [page, drawing]) await expect(window.getByText(/^Removed /)).toBeVisible();
  await type(page, 'Left side', '29');
  await type(drawing, 'Job reference', '4711');
  await press(page.getByRole('button', { name: 'Put it back' }));
  await expect(drawing.getByText(/^Removed /)).toHaveCount(0);
  await page.reload();
  await expect(field(page, 'Left side')).toHaveValue('29');
  await drawing.reload();
  await expect(field(drawing, 'Job reference')).toHaveValue('4711');
});

test('a part that is erased for good in one window is told as gone in the other', async ({
  page,
  context,
}) => {
  const { part } = await atThePlate(page);
  const other = await context.newPage();
  await other.goto(part);
  await press(other.getByText('Copy, archive or remove this part'));
  await press(other.getByRole('button', { name: 'Remove it from the list' }));
  await other.getByText('Removed', { exact: true }).click();
  await press(other.getByRole('button', { name: 'Erase for good' }));
  await press(other.getByRole('button', { name: 'Yes, erase it for good' }));
  await expect(page.getByText('There is no such part in this browser.')).toBeVisible();
});

test('what one window merges is seen at the plate in the other, and what is typed there stays', async ({
  page,
  context,
}) => {
  const { plate } = await atThePlate(page);
  const files = await context.newPage();
  await files.goto('/files');
  const download = files.waitForEvent('download');
  await press(files.getByRole('button', { name: 'Back everything up' }));
  const records = gunzipSync(readFileSync(await (await download).path())).toString();
  // As another device would have gone on: later, and with another reading.
  const later = records
    .replaceAll('"text":"34"', '"text":"36"')
    .replaceAll('"changed":"20', '"changed":"21');
  const merge = files.getByRole('region', { name: 'Open a backup' });
  const buffer = gzipSync(later);
  const mimeType = 'application/gzip';
  const file = { name: 'later.highedge', mimeType, buffer };
  await merge.getByLabel('Choose a file, or drop it here').setInputFiles(file);
  await Promise.all([
    press(merge.getByRole('button', { name: 'Merge it' })),
    type(page, 'Left side', '29'),
  ]);
  await expect(merge).toContainText('A copy from before is kept');
  await expect(field(page, 'Right side')).toHaveValue('36');
  await page.goto(plate);
  await expect(field(page, 'Right side')).toHaveValue('36');
  const kept = await allStored(page);
  expect(JSON.stringify(kept)).toContain('"text":"29"');
});

test('the record follows what is typed in another window', async ({ page, context }) => {
  const { plate } = await atThePlate(page);
  const record = await context.newPage();
  await record.goto(plate.replace('/readings/', '/record/'));
  await expect(record.locator('main')).toContainText('Right side');
  await expect(record.locator('main')).not.toContainText('67.891');
  await type(page, 'Right side', '67.891');
  await expect(record.locator('main')).toContainText('67.891');
});

test('undo in one window takes back what was typed there alone', async ({ page, context }) => {
  const { plate } = await atThePlate(page);
  const other = await context.newPage();
  await other.goto(plate);
  await type(other, 'Left side', '29');
  await expect(field(page, 'Left side')).toHaveValue('29');
  // Another window has changed them since: nothing of before can be taken back here.
  const undo = page.getByRole('main').getByRole('button', { name: 'Undo', exact: true });
  await expect(undo).toBeDisabled();
  await type(page, 'Right side', '41');
  await expect(field(other, 'Right side')).toHaveValue('41');
  await press(undo);
  for (const window of [page, other]) {
    await expect(field(window, 'Right side')).toHaveValue('34');
    await expect(field(window, 'Left side')).toHaveValue('29');
  }
});
