import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { type } from './shop-floor';

/** The invented part, read and finished, on its record. */
async function openRecord(page: Page): Promise<void> {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  await type(page, 'Left side', '29');
  await page.getByRole('textbox', { name: 'Measured by' }).fill('M. K.');
  await page.getByRole('button', { name: 'Finish these readings' }).tap();
  await page.getByRole('link', { name: 'Record of these readings' }).tap();
  // Drawn in turns: its foot comes last.
  await expect(page.getByRole('article')).toContainText('of its method');
}

test('the record holds the readings as entered, the results, the rule and who measured', async ({
  page,
}) => {
  await openRecord(page);
  const record = page.getByRole('article');
  // (41 - 29) / 2 = 6 µm over 74 mm, with no taper: 7.30 over 90 mm on either side.
  await expect(record.getByText('7.30 ± 1.33 µm')).toHaveCount(2);
  for (const said of [
    'M. K.',
    '41 µm',
    '29 µm',
    '60.001 mm',
    'ISO 14253-1',
    'version 1 of its method',
  ]) {
    await expect(record).toContainText(said);
  }
  await expect(
    record.getByRole('img', { name: /Right square to bottom within 0.005 mm: squareness/ }),
  ).toBeVisible();
});

test('on paper of either size nothing is cut off and nothing can be pressed', async ({ page }) => {
  await openRecord(page);
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await expect(page.getByRole('button', { name: /Print/ })).toBeHidden();
  // Widths between the margins, at 96 to the inch.
  for (const width of [Math.floor((186 / 25.4) * 96), Math.floor((192 / 25.4) * 96)]) {
    await page.setViewportSize({ width, height: 1000 });
    const over = await page.getByRole('article').evaluate((paper) => {
      const edge = paper.getBoundingClientRect().right;
      const inside = [...paper.querySelectorAll('td, th, svg, p, dd')];
      return inside.filter((one) => one.getBoundingClientRect().right > edge + 1).length;
    });
    expect(over).toBe(0);
  }
  const colours = await page
    .getByRole('article')
    .evaluate((paper) => [getComputedStyle(paper).color, getComputedStyle(paper).backgroundColor]);
  expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
});

test('the file that is handed on shows the same, with nothing loaded and nothing run', async ({
  page,
  context,
}) => {
  await openRecord(page);
  const paper = await page.getByRole('article').textContent();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).tap();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^Record Example block \(invented\) .*\.html$/);
  const text = await readFile(await file.path(), 'utf8');
  expect(text).not.toMatch(/<script|src=|href=|url\(/);
  const first = text.slice(0, 1024);
  for (const meta of ['charset="utf-8"', "default-src 'none'", 'name="viewport"']) {
    expect(first).toContain(meta);
  }
  const alone = await context.newPage();
  await alone.setContent(text);
  await expect(alone.getByRole('article')).toBeVisible();
  expect(await alone.getByRole('article').textContent()).toBe(paper);
});
