import { expect, test } from '@playwright/test';
import { press, type } from './shop-floor';

test.use({ viewport: { width: 412, height: 915 }, hasTouch: true, isMobile: true });

test('a block in inches is read with a column from the first sheet to the record', async ({
  page,
}) => {
  await page.goto('/');
  await press(page.getByRole('button', { name: 'New part' }));
  await press(page.getByRole('button', { name: /^Units/ }));
  await press(page.getByText('inch', { exact: true }));
  await expect(page.getByRole('button', { name: 'Units: in and tenths. Change' })).toBeVisible();
  await press(page.getByRole('button', { name: 'Done' }));
  await type(page, 'Name', 'Column block');
  await type(page, 'X, left to right', '2.5');
  await type(page, 'Y, front to back', '1.5');
  await type(page, 'Z, bottom to top', '3+1/4');
  await press(page.getByRole('button', { name: 'Add a requirement' }));
  await type(page, 'Within', '2 tenths');
  await press(page.getByRole('link', { name: 'To the part', exact: true }));
  await expect(page.getByText('2.5 × 1.5 × 3.25 in')).toBeVisible();
  await press(page.getByRole('button', { name: 'Take readings' }));
  await press(page.getByRole('button', { name: 'I read with a column' }));
  await expect(page.getByRole('textbox', { name: 'Height 1 above the plate' })).toBeFocused();
  await type(page, 'Height 1 above the plate', '0.5');
  await type(page, 'Height 2 above the plate', '2.25');
  await press(page.getByRole('button', { name: 'Turn it on all four sides' }));
  for (const [label, low, high] of [
    ['Right on bottom', '1.5', '7'],
    ['Left on bottom', '1', '0.00035 in'],
    ['Top on right', '0.5', '2.5'],
    ['Left on top', '1', '5'],
  ] as const) {
    await type(page, `${label} at 0.5`, low);
    await type(page, `${label} at 2.25`, high);
  }
  await expect(page.locator('main')).toContainText(/Stock: [\d.]+ in³/);
  await press(page.getByRole('button', { name: 'Finish these readings' }));
  await press(page.getByRole('link', { name: 'Record of these readings' }));
  const paper = page.locator('.record');
  await expect(paper.getByRole('row', { name: /Left on bottom at 2.25/ })).toContainText(
    /0\.00035 in$/,
  );
  await expect(paper).toContainText('1 tenth');
  await expect(paper).not.toContainText('3+1/4');
});
