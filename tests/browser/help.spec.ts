import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { describePart, press, readBothSides, takeAsParallel } from './shop-floor';

async function ask(page: Page, question: string, answer: RegExp): Promise<void> {
  const button = page.getByRole('button', { name: question }).first();
  await button.tap();
  await expect(button).toHaveAttribute('aria-expanded', 'true');
  const note = page.getByRole('note').filter({ hasText: answer });
  await expect(note).toBeVisible();
  await expect(note.getByRole('img').first()).toBeVisible();
}

test('what is read, and what is found, can be asked about at its place', async ({ page }) => {
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.001' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await ask(page, 'What is a nose comparator?', /No square is needed/);
  await readBothSides(page, { nose: '6', indicator: '80', right: '34', left: '31' });
  await takeAsParallel(page, '0.1');
  await ask(page, 'What am I saying here?', /the wrong side is blamed/);
  await page.getByText('More ways for right and left').tap();
  for (const [way, question, answer] of [
    ['Nose comparator, on all four sides', 'Why all four sides?', /sum to 360°/],
    ['Column', 'What is a column?', /leans a little itself/],
    ['Micrometer', 'What does the micrometer tell?', /thickness at two heights/],
  ] as const) {
    await page.getByRole('button', { name: way, exact: true }).tap();
    await ask(page, question, answer);
  }
  await page.getByText('Form of the right').tap();
  await page.getByRole('button', { name: 'Map of the face, on jacks' }).tap();
  await ask(page, 'What does this tell?', /Three jacks/);
  await ask(page, 'What is this number?', /ISO 1101/);
  await page.getByRole('button', { name: 'What is ±?' }).first().tap();
  await expect(page.getByRole('note').filter({ hasText: /95 of 100/ })).toBeVisible();
  await expect(page.getByRole('note').filter({ hasText: /ISO 1101/ })).toHaveCount(0);
  await ask(page, 'What is the verdict?', /nearly sure/);
  await ask(page, 'What is the chance?', /JCGM 106/);
  await ask(page, 'What is the high edge?', /a wedge has to come off/);
  await ask(page, 'Why press there?', /a third of the length in/);
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual(
    [],
  );
});

test('what matters is said where it matters, and gone with a tap', async ({ page }) => {
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  const main = page.locator('main');
  await expect(main).toContainText('Stone the burrs off');
  // The keypad would lie over it: that opens at a field, or with a tap that says it is done.
  await expect(page.getByText('Stone the burrs off')).toBeInViewport({ ratio: 1 });
  await expect(page.getByRole('textbox', { name: 'Nose height' })).toBeVisible();
  await expect(page.locator('.keypad')).toHaveCount(0);
  await page.getByRole('button', { name: 'Done: before reading' }).tap();
  await expect(main).not.toContainText('Stone the burrs off');
  await expect(page.getByRole('textbox', { name: 'Nose height' })).toBeFocused();
  await expect(page.locator('.keypad')).toBeVisible();
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Nose height' })).toBeVisible();
  await expect(main).not.toContainText('Stone the burrs off');
  await readBothSides(page, { nose: '6', indicator: '80', right: '34', left: '31' });
  await expect(main).toContainText('Lift it, wipe, and seat it again');
  await press(page.getByRole('button', { name: 'Seat each side again' }));
  await expect(main).not.toContainText('Lift it, wipe, and seat it again');
  await expect(page.getByRole('textbox', { name: 'Right side, seating 2' })).toBeFocused();
  await expect(page.getByRole('textbox', { name: 'Left side, seating 2' })).toBeVisible();
});
