import { expect, type Page, test } from '@playwright/test';
import { describePart, press, readBothSides, sides, takeAsParallel } from './shop-floor';

const kind = (page: Page, name: string) => page.getByRole('region', { name, exact: true });

/** Puts an indicator into the drawer that counts the other way and travels 0.4 mm, and takes it into the kit. */
async function keepTurnedIndicator(page: Page): Promise<void> {
  await page.goto('/drawer');
  await page.getByRole('button', { name: 'Add: Indicator' }).tap();
  const indicator = kind(page, 'Indicator');
  await indicator.getByRole('textbox', { name: 'Name or number' }).fill('Dial 3');
  await indicator.getByRole('textbox', { name: 'Range: how far it travels in all' }).fill('0.4');
  await indicator.getByRole('radio', { name: 'Let out' }).check();
  await expect(indicator).toContainText('This indicator counts the other way');
  await page.getByRole('button', { name: 'Add: Nose comparator' }).tap();
  await kind(page, 'Nose comparator').getByRole('textbox', { name: 'Name or number' }).fill('Tall');
  await page.getByRole('link', { name: 'Back to the kit' }).tap();
  await page.getByRole('combobox', { name: 'Indicator', exact: true }).selectOption('Dial 3');
  await page.getByRole('combobox', { name: 'Nose comparator' }).selectOption('Tall');
}

test('an indicator is entered once, read with, and its turned sign said wherever it counts', async ({
  page,
}) => {
  await keepTurnedIndicator(page);
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await expect(page.locator('.setup')).toContainText('counts the other way');
  await expect(page.locator('.setup')).toContainText('Read with: Tall, Dial 3');
  // What is 34 and 31 pushed in, it shows as −34 and −31.
  await readBothSides(page, { nose: '6', indicator: '80', right: '-34', left: '-31' });
  await takeAsParallel(page, '1');
  await expect(sides(page)).toContainText('Right leans out at the top');
  await expect(sides(page)).toContainText('1.82 ±');
  const comparator = page.getByRole('region', { name: 'The comparator itself' });
  await expect(comparator).toContainText('Tall; sign turned: plus is plunger pushed in');
  await expect(comparator).toContainText('32.50 ±');
  await comparator.getByText('Show the working').tap();
  await expect(comparator).toContainText('Right side (sign turned)');

  const right = page.getByRole('textbox', { name: 'Right side', exact: true });
  await right.fill('-412');
  await expect(right).toHaveAccessibleDescription(/Beyond the 0.4 mm that Dial 3 travels/);
  await expect(right).toHaveAttribute('aria-invalid', 'false');
});

test('another kit is one tap at the plate, and what was read stays as it was read', async ({
  page,
}) => {
  await page.goto('/kit');
  await page.getByRole('button', { name: 'Add another kit' }).tap();
  await keepTurnedIndicator(page);
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, { nose: '6', indicator: '80', right: '-34', left: '-31' });
  await takeAsParallel(page, '1');
  await expect(sides(page)).toContainText('Right leans out at the top');
  await page.getByRole('button', { name: 'Kit 1', exact: true }).tap();
  await expect(page.getByRole('status').filter({ hasText: 'From now on' })).toContainText('Kit 1');
  await expect(sides(page)).toContainText('Right leans out at the top');
  await expect(page.locator('.setup').first()).toContainText('Read with: Tall, Dial 3');
});

test('an instrument that was changed in the drawer since is said, and taken over in one tap', async ({
  page,
}) => {
  await keepTurnedIndicator(page);
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, { nose: '6', indicator: '80', right: '-34', left: '-31' });
  await takeAsParallel(page, '1');
  await expect(sides(page)).toContainText('Right leans out at the top');
  const plate = page.url();
  await page.goto('/drawer');
  await page.getByText('Dial 3', { exact: true }).tap();
  await kind(page, 'Indicator').getByRole('radio', { name: 'Pushed in' }).check();
  await page.goto(plate);
  const setup = page.locator('.setup').first();
  await expect(setup).toContainText(
    'Dial 3 has been changed in the drawer since: which way it counts',
  );
  await expect(setup).toContainText('plus on its dial is plunger let out');
  await expect(sides(page)).toContainText('Right leans out at the top');
  const takeOver = setup.getByRole('button', { name: 'Take it as it is in the drawer now' });
  await takeOver.tap();
  await expect(takeOver).toHaveCount(0);
  await expect(sides(page)).toContainText('Right leans in at the top');
  await page.getByRole('main').getByRole('button', { name: 'Undo' }).tap();
  await expect(sides(page)).toContainText('Right leans out at the top');
  await page.getByRole('button', { name: 'Finish these readings' }).tap();
  await expect(page.getByText('Finished.')).toBeVisible();
  await expect(takeOver).toHaveCount(0);
  await expect(setup).toContainText('plus on its dial is plunger let out');
});

test('from the plate to the kit and what lies behind it, and all the way back to the readings', async ({
  page,
}) => {
  await page.goto('/?example');
  await expect(page.getByRole('link', { name: 'Kit 1', exact: true })).toBeVisible();
  const plate = new URL(page.url()).pathname;
  for (const [behind, name] of [
    [/^The drawer/, 'the kit'],
    ['How fast your papers cut', 'kit and units'],
    ['Whether the comparators have moved', 'kit and units'],
  ] as const) {
    await press(page.getByRole('link', { name: 'Kit 1', exact: true }));
    await page.getByRole('link', { name: behind }).tap();
    // Loaded anew, nothing but the address tells where one came from.
    await page.reload();
    await page.getByRole('link', { name: `Back to ${name}` }).tap();
    await page.getByRole('link', { name: 'Back to the readings' }).tap();
    await expect(page).toHaveURL((url) => url.pathname === plate);
  }
});

test('a dial that is put into the kit once readings stand asks whether it counted, and turns them', async ({
  page,
}) => {
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, { nose: '6', indicator: '80', right: '-34', left: '-31' });
  await takeAsParallel(page, '1');
  await expect(sides(page)).toContainText('Right leans in at the top');
  const plate = page.url();
  await keepTurnedIndicator(page);
  await page.goto(plate);
  const setup = page.locator('.setup').first();
  await expect(setup).toContainText('Kit 1 has Dial 3 by now, and that counts the other way');
  await expect(sides(page)).toContainText('Right leans in at the top');
  await press(setup.getByRole('button', { name: 'It is read with that' }));
  await expect(setup).not.toContainText('by now');
  await expect(sides(page)).toContainText('Right leans out at the top');
});

test('an instrument that is removed by a slip is put back, into the kit too', async ({ page }) => {
  await keepTurnedIndicator(page);
  await page.goto('/drawer');
  const indicator = kind(page, 'Indicator');
  await indicator.getByText('Dial 3', { exact: true }).tap();
  await indicator.getByRole('button', { name: 'Remove Dial 3' }).tap();
  await expect(indicator.getByRole('status')).toContainText('Dial 3 is removed.');
  await indicator.getByRole('button', { name: 'Put it back' }).tap();
  await expect(indicator.getByText('Dial 3', { exact: true })).toBeVisible();
  await page.getByRole('link', { name: 'Back to the kit' }).tap();
  await expect(
    page.getByRole('combobox', { name: 'Indicator', exact: true }).locator('option:checked'),
  ).toHaveText('Dial 3');
});
