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

test('the whole shop goes out as one table, and is told apart when it is opened again', async ({
  page,
}) => {
  for (const name of ['First block', 'Second block']) {
    await describePart(page, { name, size: ['60', '40', '90'], within: '0.005' });
    await page.getByRole('link', { name: 'Readings as a table' }).tap();
    await page
      .getByRole('textbox', { name: 'Table of readings' })
      .fill(TABLE.replace('side', 'left'));
    await page.getByRole('combobox', { name: 'Indicator at (mm)' }).selectOption('height');
    await page.getByRole('button', { name: 'Take 3 readings as a new inspection' }).tap();
    await expect(page.getByRole('textbox', { name: 'Right side' })).toHaveValue('34');
  }
  await page.goto('/files');
  const tables = page.getByRole('region', { name: 'The whole shop as a table' });
  const saved = async (button: string) => {
    const download = page.waitForEvent('download');
    await tables.getByRole('button', { name: button }).tap();
    return (await download).path();
  };
  const results = await readFile(await saved('All results'), 'utf8');
  expect(results.trim().split('\r\n')).toHaveLength(1 + 2 * 2);
  const readings = await saved('All readings');
  const sheet = page.getByRole('region', { name: 'Open a backup or a table' });
  await sheet.getByLabel('Choose a file, or drop it here').setInputFiles(readings);
  await expect(sheet).toContainText('is a table with 6 rows: 2 inspections of 2 parts');
  await sheet.getByRole('button', { name: 'First block' }).tap();
  await page.getByRole('combobox', { name: 'Which of them' }).selectOption({ index: 1 });
  await expect(
    page.getByRole('button', { name: 'Take 3 readings as a new inspection' }),
  ).toBeVisible();
});

test('a table of a whole shop, longer than is seen at once, is gone through and one inspection of it taken', async ({
  page,
}) => {
  await describePart(page, { name: 'Long block', size: ['60', '40', '90'], within: '0.005' });
  await page.goto('/files');
  const head = 'part,job,taken,face,nose height (mm),height (mm),reading (µm)';
  const rows = Array.from({ length: 6000 }, (_, index) => {
    const inspection = Math.floor(index / 2);
    const name = inspection === 2500 ? 'Long block' : `Block ${inspection % 300}`;
    const face = index === 999 ? 'side' : index % 2 === 0 ? 'right' : 'left';
    return `${name},J 1,2024-03-05T00:${String(inspection).padStart(5, '0')},${face},6,80,${index}`;
  });
  const buffer = Buffer.from([head, ...rows].join('\n'));
  const sheet = page.getByRole('region', { name: 'Open a backup or a table' });
  await sheet
    .getByLabel('Choose a file, or drop it here')
    .setInputFiles({ name: 'shop.csv', mimeType: 'text/csv', buffer });
  await expect(sheet).toContainText('6000 rows: 3000 inspections of 301 parts');
  await expect(sheet).toContainText('Line 1001: ‘side’ is no face');
  await sheet.getByRole('button', { name: 'Long block' }).tap();
  await expect(page.getByRole('combobox', { name: 'Which of them' })).toContainText('Long block');
  await page.getByRole('searchbox', { name: 'Find by part, job or time' }).fill('00:00007');
  await expect(page.getByRole('combobox', { name: 'Which of them' })).toContainText('Block 7');
  await page.getByRole('searchbox', { name: 'Find by part, job or time' }).fill('');
  await page.getByRole('button', { name: 'Take 2 readings as a new inspection' }).tap();
  await expect(page.getByRole('textbox', { name: 'Right side' })).toHaveValue('5000');
});

test('a shop that moves over takes all inspections of a table in at once, and can put them back', async ({
  page,
}) => {
  await describePart(page, { name: 'Block here', size: ['60', '40', '90'], within: '0.005' });
  await page.goto('/files');
  const buffer = Buffer.from(
    [
      'part,job,taken,face,nose height (mm),height (mm),reading (µm)',
      'Block here,,2024-03-01T08:00Z,right,6,80,34',
      'Block here,,2024-03-01T08:00Z,left,6,80,31',
      'New block,J 7,2024-03-02T08:00Z,right,6,80,12',
      'New block,J 7,2024-03-02T08:00Z,side,6,80,13',
      'New block,J 7,some day in March,right,6,80,14',
    ].join('\n'),
  );
  const file = { name: 'moved.csv', mimeType: 'text/csv', buffer };
  const sheet = page.getByRole('region', { name: 'Open a backup or a table' });
  const choose = () => sheet.getByLabel('Choose a file, or drop it here').setInputFiles(file);
  await choose();
  await expect(sheet).toContainText('Line 5: ‘side’ is no face');
  await expect(sheet).toContainText('2 inspections to 1 part that is here and 1 new part');
  await expect(sheet).toContainText('1 inspection to be taken one at a time');
  await sheet.getByRole('button', { name: 'Take 2 inspections in' }).tap();
  await expect(sheet).toContainText('A copy from before is kept');
  await expect(sheet).toContainText('New here1 part and 2 inspections');

  await choose();
  await expect(sheet).toContainText('2 inspections of the same part and time here already');
  await expect(sheet.getByRole('button', { name: /^Take / })).toHaveCount(0);

  await page.getByRole('link', { name: 'Back to the bench' }).tap();
  await page.getByRole('link', { name: /Block here/ }).tap();
  await page.getByRole('link', { name: 'Readings as a table' }).tap();
  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await expect(page.getByRole('region', { name: 'Its story' })).toContainText('2024');

  await page.goto('/files');
  await sheet.getByRole('button', { name: /Put back what was here/ }).tap();
  await expect(sheet).toContainText('1 part from the file removed');
  await page.getByRole('link', { name: 'Back to the bench' }).tap();
  await expect(page.getByRole('link', { name: /Block here/ })).toBeVisible();
  await expect(page.getByRole('link', { name: /New block/ })).toHaveCount(0);
});

test('headings are asked for in the units in use, and a column is told with its own', async ({
  page,
}) => {
  await describePart(page, { name: 'In inches', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('link', { name: /Readings as a table/ }).tap();
  const sheet = page.getByRole('region', { name: 'In', exact: true });
  await expect(sheet).toContainText('height (mm) and reading (µm)');
  await page.getByRole('button', { name: /^Units/ }).tap();
  await page.getByText('inch', { exact: true }).tap();
  await expect(sheet).toContainText('height (in) and reading (tenths)');
  await page
    .getByRole('textbox', { name: 'Table of readings' })
    .fill('face,height (in),reading (tenths)\nright,0.5,1.5\nright,2.5,3\n');
  const chosen = (label: string) =>
    page
      .getByRole('combobox', { name: label })
      .evaluate((field: HTMLSelectElement) => field.selectedOptions[0]?.text);
  await expect.poll(() => chosen('height (in)')).toBe('height (in)');
  expect(await chosen('reading (tenths)')).toBe('reading (tenths)');
});
