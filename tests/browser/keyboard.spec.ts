import { expect, type Locator, type Page, test } from '@playwright/test';
import { describePart, takeAsParallel, type } from './shop-floor';

// At a desk, where the parts stand beside the one at hand, and with the keyboard alone.
test.use({ viewport: { width: 1440, height: 900 }, hasTouch: false, isMobile: false });

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

/** Types into what has the focus, once that is `field`, and goes on with Enter. */
async function fill(page: Page, target: Locator, text: string): Promise<void> {
  await expect(target).toBeFocused();
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** From the first screen to the contents of a new part. */
async function beginPart(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: 'New part' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('main', { name: 'New part' })).toBeFocused();
}

test('Enter goes through the fields of a new part and on to what the drawing asks', async ({
  page,
}) => {
  await beginPart(page);
  await page.keyboard.press('Tab');
  await fill(page, field(page, 'Name'), 'Block');
  await fill(page, field(page, 'Job reference'), 'J-17');
  await fill(page, page.getByRole('combobox', { name: 'Material' }), 'Steel');
  await fill(page, field(page, 'X, left to right'), '60');
  await fill(page, field(page, 'Y, front to back'), '40');
  await fill(page, field(page, 'Z, bottom to top'), '90');
  const add = page.getByRole('button', { name: 'Add a requirement' });
  await expect(add).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('combobox', { name: 'Face', exact: true })).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(field(page, 'Within')).toBeFocused();
  // Faster would be the cable of a gauge, and Tab the end of its reading.
  await page.keyboard.type('0.01', { delay: 60 });
  await page.keyboard.press('Tab');
  await expect(add).toBeFocused();
});

test('the focus is back at the button of the units once they are chosen', async ({ page }) => {
  await beginPart(page);
  const units = page.getByRole('button', { name: /^Units: / });
  for (const end of ['Enter', 'Escape']) {
    await units.focus();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('region', { name: 'Units' })).toBeVisible();
    await page.keyboard.press('Tab');
    await expect(page.getByRole('radio', { name: 'mm' }).first()).toBeFocused();
    if (end === 'Enter') await page.getByRole('button', { name: 'Done' }).focus();
    await page.keyboard.press(end);
    await expect(units).toBeFocused();
  }
});

test('the question of what the dial steps by leads on to the first field once it is answered', async ({
  page,
}) => {
  await page.goto('/?example');
  await expect(field(page, 'Right side')).toBeFocused();
  await page.getByRole('button', { name: /^Units: / }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('radio', { name: 'tenths' }).focus();
  await page.keyboard.press('Space');
  const mine = page.getByRole('button', { name: 'Mine steps by 1 tenth' });
  await mine.focus();
  await page.keyboard.press('Enter');
  await expect(mine).toBeHidden();
  await expect(field(page, 'Right side')).toBeFocused();
});

test('what the focus comes to is not hidden under the band', async ({ page }) => {
  await page.goto('/?example');
  const main = page.getByRole('main');
  await expect(field(page, 'Right side')).toBeFocused();
  await expect(main.getByRole('button', { name: 'Finish these readings' })).toBeAttached();
  await field(page, 'Measured by').focus();
  const band = await page.locator('.band').boundingBox();
  for (let steps = 0; steps < 12; steps += 1) {
    await page.keyboard.press('Shift+Tab');
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getBoundingClientRect().top))
      .toBeGreaterThanOrEqual(band?.height ?? 0);
  }
});

/** The example with both sides read, the focus where Enter leads from the last of them. */
async function readExample(page: Page): Promise<void> {
  await page.goto('/?example');
  await fill(page, field(page, 'Right side'), '41');
  await fill(page, field(page, 'Left side'), '29');
  await expect(page.getByRole('button', { name: 'I work the bottom' }).first()).toBeAttached();
}

test('from the answer it is a few keys to the work, to Finish and to the record', async ({
  page,
}) => {
  await readExample(page);
  const answer = page.getByRole('heading', { name: 'What they say' });
  await answer.focus();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Finish, after the readings' })).toBeFocused();
  await page.keyboard.press('Tab');
  const onward = page.getByRole('button', { name: 'What to take off' });
  await expect(onward).toBeFocused();
  await expect(onward).toBeInViewport({ ratio: 1 });
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'What to take off' })).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'To where the work begins' })).toBeFocused();
  await page.keyboard.press('Enter');
  const work = page.getByRole('button', { name: 'I work the bottom' }).first();
  await expect(work).toBeFocused();
  await expect(work).toBeInViewport({ ratio: 1 });
  await field(page, 'Measured by').focus();
  await page.keyboard.press('Enter');
  // The key only leads there: it is the next one that finishes them.
  await expect(page.getByRole('button', { name: 'Finish these readings' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('link', { name: 'Record of these readings' })).toBeFocused();
});

test('from the answer it is a few keys to what another pair lacks', async ({ page }) => {
  await describePart(page, { name: 'Trial', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('link', { name: 'Change' }).click();
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  await button('Add a requirement').click();
  await field(page, 'Within').last().fill('0.005');
  await page.getByRole('link', { name: 'To the part', exact: true }).click();
  await button('Take readings').click();
  await field(page, 'Nose height').first().fill('6');
  await field(page, 'Indicator height').first().fill('80');
  await type(page, 'Right side', '34');
  await type(page, 'Left side', '31');
  await takeAsParallel(page, '1');
  await button('Heights as for right and left').click();
  await type(page, 'Front side', '12');
  await type(page, 'Back side', '14');
  const micrometer = button('Use the micrometer');
  await expect(micrometer).toBeVisible();
  await page.getByRole('heading', { name: 'What they say' }).focus();
  const focused = () => page.evaluate(() => document.activeElement?.textContent);
  for (let keys = 0; keys < 6 && (await focused()) !== 'Use the micrometer'; keys += 1) {
    await page.keyboard.press((await focused()) === 'To what is not fixed' ? 'Enter' : 'Tab');
  }
  await expect(micrometer).toBeFocused();
  await expect(micrometer).toBeInViewport({ ratio: 1 });
});

test('an answer that one has scrolled down in is shown from its top again', async ({ page }) => {
  await readExample(page);
  const answer = page.getByRole('heading', { name: 'What they say' });
  await page.getByText('Every reading').focus();
  await expect(answer).not.toBeInViewport();
  await page
    .getByRole('banner')
    .getByRole('button', { name: /square to bottom/ })
    .focus();
  await page.keyboard.press('Enter');
  await expect(answer).toBeFocused();
  await expect(answer).toBeInViewport({ ratio: 1 });
});

test('a map that is added begins at the choice of its grid, and goes on at its first place', async ({
  page,
}) => {
  await page.goto('/?example');
  await page.getByText('Form of the right').focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Indicator over the face' }).focus();
  await page.keyboard.press('Enter');
  const grid = page.getByRole('button', { name: '2 × 2' });
  await expect(grid).toBeFocused();
  await expect(grid).toBeInViewport({ ratio: 1 });
  await page.keyboard.press('Enter');
  await expect(field(page, 'Reading at place 1')).toBeFocused();
});
