import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { describePart } from './shop-floor';

const TABLE = [
  'Face\tNose height (mm)\tIndicator at (mm)\tReading (µm)',
  'right\t6\t80\t34',
  'side\t6\t80\t31',
  'left\t6\t80\t31',
].join('\n');

test('a table of readings is pasted, its columns matched and its bad rows named', async ({
  page,
}) => {
  await describePart(page, { name: 'Table block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('link', { name: 'Readings as a table' }).tap();
  await page.getByRole('textbox', { name: 'Table of readings' }).fill(TABLE);
  // The heading of one column is not ours: it is chosen.
  await page.getByRole('combobox', { name: 'Indicator at (mm)' }).selectOption('height');
  await expect(page.getByRole('region', { name: 'In' })).toContainText('Line 3: ‘side’ is no face');
  await page.getByRole('button', { name: 'Take 2 readings as a new inspection' }).tap();
  await expect(page.getByRole('textbox', { name: 'Right side' })).toHaveValue('34');
  await expect(page.getByRole('textbox', { name: 'Indicator height' })).toHaveValue('80');

  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await page.getByRole('link', { name: 'Readings as a table' }).tap();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Readings', exact: true }).tap();
  const file = await download;
  expect(file.suggestedFilename()).toBe('Table block readings.csv');
  const csv = await readFile(await file.path(), 'utf8');
  expect(csv).toContain('reading (µm)');
  expect(csv.trim().split('\r\n')).toHaveLength(3);
});
