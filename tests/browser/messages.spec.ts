import { expect, type Page, test } from '@playwright/test';
import { describePart } from './shop-floor';
import { expectTied } from './tied';

/** Fields for numbers that can be typed into. */
const NUMBERS = 'main input[data-number]:not(:disabled)';

/** Types `text` into every field for a number, each in a turn of its own. */
async function typeEverywhere(page: Page, text: string): Promise<void> {
  await page.evaluate(
    async ([selector, typed]) => {
      for (const input of document.querySelectorAll<HTMLInputElement>(selector!)) {
        input.value = typed!;
        input.dispatchEvent(new InputEvent('input', { bubbles: true }));
        await new Promise((drawn) => setTimeout(drawn));
      }
    },
    [NUMBERS, text],
  );
}

/** Letters are refused in every field, absurd numbers and none in most: what is said of each is tied to it. */
async function expectEachRefused(page: Page, screen: string): Promise<void> {
  await expect(page.locator(NUMBERS).first(), screen).toBeVisible();
  // Again, where more of the screen has come meanwhile.
  await expect(async () => {
    await typeEverywhere(page, '3a4');
    const taken = page.locator(`${NUMBERS}:not([aria-invalid="true"])`);
    await expect(taken, screen).toHaveCount(0, { timeout: 2000 });
  }).toPass();
  await expectTied(page, `${screen}, letters`);
  for (const text of ['-987654', '']) {
    await typeEverywhere(page, text);
    await expect(
      page.locator('.field-message').filter({ hasText: 'is no unit' }),
      screen,
    ).toHaveCount(0);
    await expectTied(page, `${screen}, '${text}'`);
  }
}

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

test('what is said of the drawing is tied to its fields', async ({ page }) => {
  await page.goto('/');
  await button(page, 'New part').click();
  await button(page, 'Add a requirement').click();
  await button(page, 'Add a flatness').click();
  await page.getByText('Limits of the sizes, and the finish').click();
  await expectEachRefused(page, 'drawing');
  const datum = page.getByRole('combobox', { name: 'To datum' });
  const face = page.getByRole('combobox', { name: 'Face', exact: true }).first();
  await datum.selectOption({ label: (await face.locator('option:checked').textContent()) ?? '' });
  for (const field of [face, datum]) {
    await expect(field).toHaveAccessibleDescription('A face cannot be its own datum');
    await expect(field).toHaveAttribute('aria-invalid', 'true');
  }
  await expectTied(page, 'face on itself');
});

test('what is said of readings is tied to their fields, however they are read', async ({
  page,
}) => {
  await describePart(page, { name: 'Trial', size: ['60', '40', '90'], within: '0.005' });
  await button(page, 'Take readings').click();
  await page.getByText('Form of the right').click();
  const ways = ['Column', 'Micrometer', 'Take as parallel', 'Indicator over the face'];
  for (const [index, way] of [...ways, 'Map of the face, on jacks'].entries()) {
    // What nothing stands in would make way for the next.
    await typeEverywhere(page, '1');
    await button(page, way).click();
    await expect(page.locator('.setup')).toHaveCount(index + 2);
    if (/face/.test(way)) await button(page, '2 × 2').last().click();
  }
  await expectEachRefused(page, 'plate');
});

test('what is said of kit and drawer is tied to their fields', async ({ page }) => {
  await page.goto('/kit');
  await page.getByRole('combobox', { name: 'Surface plate' }).selectOption({ index: 1 });
  await expectEachRefused(page, 'kit');
  await page.goto('/drawer');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  const adds = page.getByRole('button', { name: /^Add: / });
  await expect(adds).toHaveCount(6);
  for (const add of await adds.all()) await add.click();
  await expectEachRefused(page, 'drawer');
});

test('what is said of work and of a pasted table is tied to its field', async ({ page }) => {
  await page.goto('/?example');
  await page.getByRole('textbox', { name: 'Right side' }).fill('41');
  await page.getByRole('textbox', { name: 'Left side' }).fill('29');
  await button(page, 'I work the bottom').first().click();
  await expect(page.getByRole('textbox', { name: 'How much' })).toBeVisible();
  await expectEachRefused(page, 'work');
  await page.getByRole('link', { name: 'Back to the part' }).click();
  await page.getByRole('link', { name: 'Readings as a table, out and in' }).click();
  const table = page.getByRole('textbox', { name: 'Table of readings' });
  await table.fill(Array.from({ length: 2000 }, (_, column) => column).join(','));
  await expect(table).toHaveAccessibleDescription(/This table cannot be taken/);
  await expect(table).toHaveAttribute('aria-invalid', 'true');
  await expectTied(page, 'table');
});
