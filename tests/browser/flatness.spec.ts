import { expect, type Page, test } from '@playwright/test';
import { press, type } from './shop-floor';

/** A block whose bottom is to be flat within so many mm, and nothing else, at the plate. */
async function beginMap(page: Page, within: string): Promise<void> {
  await page.goto('/');
  await press(page.getByRole('button', { name: 'New part' }));
  await type(page, 'Name', 'Flat block');
  await type(page, 'X, left to right', '60');
  await type(page, 'Y, front to back', '40');
  await type(page, 'Z, bottom to top', '90');
  await press(page.getByRole('button', { name: 'Add a flatness' }));
  await type(page, 'Flat within', within);
  await press(page.getByRole('link', { name: 'To the part', exact: true }));
  await page.getByRole('button', { name: 'Take readings' }).tap();
}

async function readMap(page: Page, readings: readonly string[]): Promise<void> {
  for (const [index, reading] of readings.entries()) {
    await type(page, `Reading at place ${index + 1}`, reading);
  }
}

/** A bowl on a slope: x² + y² in steps of the grid, plus 2 µm a column. Its minimum zone is 2 µm. */
const BOWL = ['2', '3', '6', '1', '2', '5', '2', '3', '6'];

test('a map of nine places tells whether the bottom is flat enough, and the record has it', async ({
  page,
}) => {
  await beginMap(page, '0.003');
  const sheet = page.getByRole('region', { name: 'Flatness of the bottom', exact: true });
  await page.getByRole('button', { name: '3 × 3' }).tap();
  await readMap(page, BOWL.slice(0, 3));
  await expect(sheet).toContainText('Any three places lie in a plane.');
  await page.getByText('Where the places are').click();
  // The bottom lies on top while it is mapped: no place of it is up.
  await expect(page.getByRole('textbox', { name: 'In from front' })).toHaveCount(9);
  await page.getByText('Where the places are').click();
  await readMap(page, BOWL.slice(0, 4));
  await expect(sheet).toContainText('Read at 4 of 9 places: 1.00 µm out of flat so far');
  await expect(sheet).not.toContainText('In');
  await readMap(page, BOWL);
  await expect(sheet).toContainText('2.00 ±');
  await expect(sheet).toContainText('The chance that it meets the drawing is 94.8 %: not enough');
  await expect(sheet).toContainText('Read at 9 places');
  await expect(page.getByRole('region', { name: 'Form', exact: true })).toContainText(
    'The drawing allows3.00 µm',
  );
  await page.getByRole('button', { name: 'Finish these readings' }).tap();
  await page.getByRole('link', { name: 'Record of these readings' }).tap();
  const record = page.getByRole('article');
  await expect(record).toContainText('Bottom flat');
  await expect(
    record.getByRole('img', { name: 'Bottom flat within 0.003 mm: flatness', exact: true }),
  ).toBeVisible();
  await expect(record.getByRole('row', { name: /^Bottom flat/ })).toContainText('2.00 ±');
});

test('a face that is not flat says what has to come off, and where', async ({ page }) => {
  await beginMap(page, '0.003');
  await page.getByRole('button', { name: '3 × 3' }).tap();
  // Two opposite corners stand 12 µm up: a twist, which no tilt takes away.
  await readMap(page, ['0', '0', '12', '0', '0', '0', '12', '0', '0']);
  const sheet = page.getByRole('region', { name: 'Flatness of the bottom', exact: true });
  await expect(sheet).toContainText('Out');
  await expect(page.locator('main')).toContainText(/The bottom is out of flat by 12.00 µm/);
  await expect(page.locator('main')).toContainText('Bottom, place 3; Bottom, place 7');
});

test('levelled again on the jacks, the same face is as flat, and surer', async ({ page }) => {
  await beginMap(page, '0.003');
  const sheet = page.getByRole('region', { name: 'Flatness of the bottom', exact: true });
  await page.getByRole('button', { name: '3 × 3' }).tap();
  await readMap(page, BOWL);
  await expect(sheet).toContainText('2.00 ±');
  await press(page.getByRole('button', { name: 'Level again: bottom' }));
  const again = page.getByRole('region', { name: 'Map of the bottom, seating 2' });
  await expect(again.getByRole('textbox', { name: 'Reading at place 1, seating 2' })).toBeFocused();
  // The same bowl, 5 µm higher and with another 3 µm from row to row.
  for (const [index, shown] of BOWL.entries()) {
    const levelled = Number(shown) + 5 + 3 * Math.floor(index / 3);
    await type(page, `Reading at place ${index + 1}, seating 2`, String(levelled));
  }
  await expect(sheet).toContainText('2.00 ±');
  await expect(sheet).not.toContainText('The chance that it meets the drawing is 94.8 %');
  await expect(page.getByRole('button', { name: 'Level again: bottom' })).toHaveCount(1);
  await page.getByRole('main').getByRole('button', { name: 'Undo' }).tap();
  await expect(again.getByRole('textbox', { name: 'Reading at place 9, seating 2' })).toHaveValue(
    '',
  );
});

test('one place that stands off is asked about, and led to', async ({ page }) => {
  await beginMap(page, '0.003');
  const sheet = page.getByRole('region', { name: 'Flatness of the bottom', exact: true });
  await page.getByRole('button', { name: '3 × 3' }).tap();
  // A plane, and at place 6 a 12 with its digits swapped.
  await readMap(page, ['0', '5', '10', '2', '7', '21', '4', '9', '14']);
  await expect(sheet).toContainText(
    'Bottom, place 6 stands off by itself: the other 8 places lie within 0.00 µm. Two digits swapped? 12 would fit.',
  );
  await press(sheet.getByRole('button', { name: 'Go to Bottom, place 6' }));
  await expect(page.getByRole('textbox', { name: 'Reading at place 6' })).toBeFocused();
  await type(page, 'Reading at place 6', '12');
  await expect(sheet).toContainText('In');
  await expect(sheet).not.toContainText('stands off');
});
