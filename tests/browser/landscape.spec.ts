import { expect, test } from '@playwright/test';
import { describePart, press } from './shop-floor';

test.use({ viewport: { width: 915, height: 412 }, hasTouch: true, isMobile: true });

test('on a phone that lies on its side every field is seen beside the keys while it is typed into', async ({
  page,
}) => {
  await describePart(page, { name: 'On its side', size: ['60', '40', '90'], within: '0.005' });
  await press(page.getByRole('button', { name: 'Take readings' }));
  await page.getByRole('textbox', { name: 'Nose height', exact: true }).tap();
  for (const [label, text] of [
    ['Nose height', '6'],
    ['Indicator height', '80'],
    ['Right side', '12'],
    ['Left side', '14'],
  ] as const) {
    const field = page.getByRole('textbox', { name: label, exact: true });
    await expect(field).toBeFocused();
    await expect(field).toBeInViewport({ ratio: 1 });
    await page.keyboard.type(text);
    const keys = await page.locator('.keypad').boundingBox();
    const box = await field.boundingBox();
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(keys?.x ?? 0);
    for (const name of ['7', '0', 'Decimal point', 'Erase']) {
      const key = page.locator('.keypad').getByRole('button', { name, exact: true });
      await expect(key).toBeInViewport({ ratio: 1 });
    }
    await page
      .locator('.keypad')
      .getByRole('button', { name: /^(Next|Done)$/ })
      .tap();
  }
});
