import { expect, type Locator, type Page, test } from '@playwright/test';
import { describePart, press, tapKeys, type } from './shop-floor';

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const sheet = (page: Page, name: RegExp) => page.getByRole('region', { name });

// A tap goes to where a thing stands, not to where it was on its way.
test.use({ contextOptions: { reducedMotion: 'reduce' } });

test.beforeEach(async ({ page }) => {
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await page.getByRole('button', { name: 'Done: before reading' }).tap();
});

/** Taps the middle of what is drawn beside the field that is being filled: it is in sight already. */
async function tapDrawn(page: Page, part: Locator): Promise<void> {
  await expect(page.locator('input:focus')).toHaveCount(1);
  const box = await part.boundingBox();
  if (box === null) throw new Error('It is not drawn');
  await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
}

test('a tap on a side of the block leads to its reading', async ({ page }) => {
  const drawing = sheet(page, /^Nose comparator/).locator('.tap-to-go svg');
  for (const side of ['left', 'right']) {
    await tapDrawn(page, drawing.getByText(side, { exact: true }));
    const name = side === 'left' ? 'Left side' : 'Right side';
    await expect(field(page, name)).toBeFocused();
  }
});

test('a tap near a height of the column leads to what is read there', async ({ page }) => {
  await press(page.getByRole('button', { name: 'Column', exact: true }).first());
  await type(page, 'Height 1 above the plate', '10');
  await type(page, 'Height 2 above the plate', '80');
  await field(page, 'Right at 10').click();
  const column = sheet(page, /^Column/);
  // The other height is the point that is not lit.
  await tapDrawn(page, column.locator('.drawing-contact').last());
  await expect(field(page, 'Right at 80')).toBeFocused();
  await tapDrawn(page, column.locator('.tap-to-go svg').getByText('left', { exact: true }));
  await expect(page.locator('input:focus')).toHaveAccessibleName(/^Left at /);
});

test('a tap on a place of a face leads to its reading', async ({ page }) => {
  await press(page.getByText('Form of the right').first());
  await press(page.getByRole('button', { name: 'Indicator over the face' }).first());
  await page.getByRole('button', { name: '3 × 3' }).tap();
  const places = sheet(page, /^Over the right/).locator('.drawing-place');
  for (const place of [5, 9, 1]) {
    await tapDrawn(page, places.nth(place - 1));
    await expect(field(page, `Reading at place ${place}`)).toBeFocused();
  }
});

test('the drawing stays between band and keypad while readings far below it are typed', async ({
  page,
}) => {
  await press(page.getByRole('button', { name: 'Column', exact: true }).first());
  await type(page, 'Height 1 above the plate', '10');
  await type(page, 'Height 2 above the plate', '80');
  await field(page, 'Left at 80').click();
  const inSight = () =>
    page.evaluate(() => {
      const edges = (selector: string) => document.querySelector(selector)?.getBoundingClientRect();
      const focused = document.activeElement?.getBoundingClientRect();
      const drawing = document.activeElement
        ?.closest('.setup')
        ?.querySelector('svg')
        ?.getBoundingClientRect();
      const [band, pad] = [edges('.band'), edges('.keypad')];
      if (!(focused && drawing && band && pad)) return 'something is not there';
      if (drawing.top < band.bottom - 1) return 'the drawing is under the band';
      if (focused.top < drawing.bottom - 1) return 'the field is under the drawing';
      return focused.bottom > pad.top ? 'the field is under the keypad' : 'all in sight';
    });
  await expect.poll(inSight).toBe('all in sight');
});

test('with the text doubled the field has the room, and the drawing goes with the page', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('html { font-size: 225% !important }');
    document.adoptedStyleSheets.push(sheet);
  });
  await page.reload();
  const unseen = () =>
    page.evaluate(() => {
      const input = document.querySelector<HTMLInputElement>('input:focus');
      const pad = document.querySelector('.keypad');
      if (input === null || pad === null) return 'nothing to type in';
      const { left, top, width, bottom } = input.getBoundingClientRect();
      if (bottom > pad.getBoundingClientRect().top) return 'the field is under the keypad';
      const seen = document.elementFromPoint(left + width / 2, top + 2);
      return seen === input || seen?.contains(input) ? 'all in sight' : 'something lies over it';
    });
  await field(page, 'Nose height').click();
  await expect.poll(unseen).toBe('all in sight');
  for (const key of ['6', 'Next', '8', '0', 'Next', '3', '4', 'Next']) {
    await tapKeys(page, [key]);
    await expect.poll(unseen).toBe('all in sight');
  }
});

test('a tap on a filled field where the keypad comes up is typed over, and so is what was taken back', async ({
  page,
}) => {
  await type(page, 'Nose height', '6');
  await type(page, 'Indicator height', '80');
  await type(page, 'Right side', '34');
  await type(page, 'Left side', '31');
  await tapKeys(page, ['Done']);
  const left = field(page, 'Left side');
  // Low on the screen, where the keypad will be.
  await left.evaluate((input) => {
    scrollBy({ top: input.getBoundingClientRect().bottom - innerHeight + 20, behavior: 'instant' });
  });
  await left.tap();
  await tapKeys(page, ['2', '9']);
  await expect(left).toHaveValue('29');
  await tapKeys(page, ['Undo', '3', '0']);
  await expect(left).toHaveValue('30');
});

test('Next goes back to what was left out, and is Done once nothing is', async ({ page }) => {
  await type(page, 'Left side', '31');
  await tapKeys(page, ['Next', '6', 'Next', '8', '0', 'Next']);
  await expect(field(page, 'Right side')).toBeFocused();
  await tapKeys(page, ['3', '4', 'Done']);
  await expect(page.getByRole('heading', { name: 'What they say' })).toBeInViewport();
});

test('the bar leads to what is marked, and tells what the next reading will bring', async ({
  page,
}) => {
  const bar = page.locator('.so-far');
  await type(page, 'Nose height', '6');
  await type(page, 'Indicator height', '80');
  await type(page, 'Right side', '3,4,1');
  await tapKeys(page, ['Next']);
  await expect(bar).toContainText('Put right what is marked');
  await bar.tap();
  await expect(field(page, 'Right side')).toBeFocused();
  await tapKeys(page, ['3', '4']);
  await expect(bar).toContainText('Next: Left side. It shows what the sides differ by');
  await type(page, 'Left side', '31');
  await press(page.getByRole('button', { name: 'Take as parallel' }).first());
  await type(page, 'Parallel within, over the whole face', '1');
  await page.getByRole('textbox', { name: 'Right side', exact: true }).click();
  await page.getByRole('button', { name: 'Seat again: right side' }).tap();
  await expect(bar).toContainText('Right square to bottom: 1.82 ±');
  await expect(bar).toContainText(/Next: Right side, seating 2\. The ± goes to about \d/);
  await type(page, 'Right side, seating 2', '74');
  await expect(bar).toContainText('The readings disagree');
  await press(page.getByRole('button', { name: 'See which' }));
  const agreement = page.getByRole('region', { name: 'Do the readings agree?' });
  await expect(agreement).toBeInViewport();
  await expect(agreement.getByRole('heading')).toBeFocused();
  await agreement.getByRole('button', { name: 'Go to it' }).first().tap();
  await expect(page.locator('input:focus')).toHaveCount(1);
});
