import { expect, test } from '@playwright/test';
import { describePart, press, readBothSides, takeAsParallel, type } from './shop-floor';

test.use({ viewport: { width: 412, height: 915 }, hasTouch: true, isMobile: true });

test('a slip in finished readings is put right, and what they were stays on record', async ({
  page,
}) => {
  await describePart(page, { name: 'Story block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await takeAsParallel(page, '1');
  await readBothSides(page, { nose: '6', indicator: '80', right: '34', left: '13' });
  await page.getByRole('button', { name: 'Finish these readings' }).tap();
  await page.getByRole('button', { name: 'Open them again' }).tap();
  await type(page, 'Why are they opened?', '13 was typed for 31');
  await page.getByRole('button', { name: 'Open them, keep the earlier' }).tap();
  await type(page, 'Left side', '31');
  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await expect(page.getByRole('list', { name: 'Earlier versions' })).toContainText(
    '13 was typed for 31',
  );
  await page.getByRole('link', { name: 'What has changed' }).tap();
  await expect(page.getByRole('row', { name: '≠ Left side 13 µm 31 µm' })).toBeVisible();
});

test('a part is removed from the list and put back at once', async ({ page }) => {
  await describePart(page, { name: 'Wrong block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByText('Copy, archive or remove this part').tap();
  await page.getByRole('button', { name: 'Remove it from the list' }).tap();
  await expect(page.getByText('No part lies here.')).toBeVisible();
  await page.getByRole('status').getByRole('button', { name: 'Put it back' }).tap();
  await expect(page.getByRole('link', { name: /Wrong block/ })).toBeVisible();
});

test('a chart follows the readings of a part, and is gone with its screen', async ({ page }) => {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  await type(page, 'Left side', '29');
  await page.getByRole('button', { name: 'I work the bottom' }).first().tap();
  await page.getByRole('button', { name: 'Measure again' }).tap();
  await type(page, 'Right side', '36');
  await type(page, 'Left side', '34');
  const thicknesses = page.getByRole('textbox', { name: 'Thickness', exact: true });
  for (const thickness of await thicknesses.all()) await thickness.fill('60.001');
  await page.getByRole('link', { name: 'Back to the part' }).tap();
  const chart = page.getByRole('img', { name: /Right square to bottom through 2 inspections/ });
  await expect(chart.locator('canvas')).toBeVisible();
  await page.getByRole('link', { name: 'Back to the bench' }).tap();
  await expect(page.locator('canvas')).toHaveCount(0);
});

test('finished readings ask for nothing more, whatever was left empty', async ({ page }) => {
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, { nose: '6', indicator: '80', right: '34', left: '31' });
  await press(page.getByRole('button', { name: 'Use the micrometer' }).first());
  const micrometer = page.getByRole('region', { name: /^Micrometer/ });
  await micrometer.getByRole('textbox', { name: 'Up from bottom' }).first().fill('5');
  await expect(micrometer).toContainText('What did the micrometer say?');
  await expect(page.locator('.so-far')).toContainText('Next: Micrometer');
  await press(page.getByRole('button', { name: 'Finish these readings' }));
  await expect(page.locator('.so-far')).toContainText('see what is missing');
  await expect(page.locator('.so-far')).not.toContainText('Next');
  await expect(micrometer).not.toContainText('What did the micrometer say?');
});
