import { expect, type Page } from '@playwright/test';
import { inventShop } from '../bench/support/invented-shop.mjs';
import { describePart, press, type } from './shop-floor';

/** Looks at the screen as it is; `name` says which one it is. */
type Look = (name: string) => Promise<void>;

/** Goes through every screen and every state of it: errors shown, answer shown, folds open. */
export async function walkEveryScreen(page: Page, look: Look): Promise<void> {
  await page.goto('/');
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
  await look('bench, empty');
  await theExample(page, look);
  await aPartWithMore(page, look);
  await aShopWithAPast(page, look);
  for (const address of ['kit', 'drawer', 'rates', 'comparators', 'files', 'no-such-place', '']) {
    await page.goto(`/${address}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await look(address || 'bench');
  }
}

async function theExample(page: Page, look: Look): Promise<void> {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  await look('plate, typing');
  await type(page, 'Left side', '2.9.');
  await look('plate, slip of typing');
  await type(page, 'Left side', '29');
  await openFolds(page);
  await look('plate, answered, all open');
  await press(page.getByRole('button', { name: /Units/ }));
  await look('plate, units');
  await press(page.getByRole('button', { name: 'I work the bottom' }).first());
  await type(page, 'How much', '10');
  await openFolds(page);
  await look('work');
  await press(page.getByRole('button', { name: 'Measure again' }));
  await type(page, 'Right side', '36');
  await type(page, 'Left side', '33');
  await press(page.getByRole('link', { name: 'Back to the part' }));
  await openFolds(page);
  await look('part');
  await press(page.getByRole('link', { name: 'Compare two' }));
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await look('compare');
  await press(page.getByRole('link', { name: 'Back to the part' }));
  await press(page.locator('main a[href*="/record/"]').first());
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await look('record');
  await page.goBack();
  await page.goto(`${page.url()}/table`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await look('table');
  await page.goBack();
  await press(page.getByRole('link', { name: 'Change' }));
  await openFolds(page);
  await look('drawing');
}

/** A part with nothing fixed yet, and a face that is mapped. */
async function aPartWithMore(page: Page, look: Look): Promise<void> {
  await describePart(page, { name: 'Trial', size: ['60', '40', '90'], within: '0.001' });
  await press(page.getByRole('button', { name: 'Take readings' }));
  await type(page, 'Nose height', '6');
  await type(page, 'Indicator height', '80');
  await type(page, 'Right side', '34');
  await type(page, 'Left side', '31');
  await look('plate, not fixed');
  await press(page.getByText('Form of the right').first());
  await press(page.getByRole('button', { name: 'Map of the face, on jacks' }).first());
  await press(page.getByRole('button', { name: '3 × 3' }));
  for (const [index, text] of ['2', '3', '6', '1', '2', '5', '2', '3', '6'].entries()) {
    await type(page, `Reading at place ${index + 1}`, text);
  }
  await look('plate, mapped');
  await press(page.getByRole('link', { name: 'Back to the part' }));
  await press(page.getByRole('link', { name: 'Change' }));
  // The bottom first, which is not mapped, and then the right, which is.
  await press(page.getByRole('button', { name: 'Add a flatness' }));
  await press(page.getByRole('button', { name: 'Add a flatness' }));
  await page.getByRole('textbox', { name: 'Flat within' }).first().fill('0.001');
  await page.getByRole('textbox', { name: 'Flat within' }).last().fill('0.001');
  await look('drawing, flatness');
  await press(page.getByRole('link', { name: 'To the part', exact: true }));
  await press(page.getByRole('link', { name: 'Go on with the readings' }));
  await openFolds(page);
  await look('plate, flatness');
}

/** Parts that were read and lapped many times: charts, passes and what the comparators did. */
async function aShopWithAPast(page: Page, look: Look): Promise<void> {
  await inventShop(page, { parts: 3, inspections: 6, seatings: 1, places: 2 });
  await page.goto('/part/part-00001');
  await expect(page.getByRole('heading', { name: 'Its story' })).toBeVisible();
  await openFolds(page);
  await expect(page.locator('.uplot').first()).toBeVisible();
  await look('part with a past');
  await press(page.locator('main a[href*="/record/"]').last());
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await look('record of a part with a past');
}

/** Folds out all that is folded away, and what is folded away within it. */
async function openFolds(page: Page): Promise<void> {
  const foldOut = () =>
    page.evaluate(() => {
      const folded = document.querySelectorAll<HTMLDetailsElement>('main details:not([open])');
      for (const details of folded) details.open = true;
      return folded.length;
    });
  await expect.poll(foldOut).toBe(0);
}
