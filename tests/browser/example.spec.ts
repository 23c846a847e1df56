import { expect, type Locator, type Page, test } from '@playwright/test';
import { sides, type } from './shop-floor';

const guide = (page: Page) => page.getByRole('region', { name: 'Try-out' });
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

test('the invented part is played through: the zero falls out, the answer stays, and it has an end', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Try it on an invented part' }).tap();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('invented');
  await expect(guide(page)).toContainText('Type 41.00 µm for the right side');
  await type(page, 'Right side', '41');
  await expect(guide(page)).toContainText('says nothing yet');
  await expect(guide(page).getByRole('img', { name: /Neither is known/ })).toBeVisible();
  await type(page, 'Left side', '29');
  const drawing = guide(page).getByRole('img', { name: /zero is/ });
  await expect(drawing).toHaveAccessibleName(/zero is 35.00 µm, the lean 6.00 µm/);
  // 6 µm over the 74 mm between nose and indicator, 90 mm high.
  await expect(sides(page)).toContainText('7.30 ±');

  await guide(page).getByRole('slider', { name: 'Turn the dial of the indicator' }).fill('10');
  await expect(drawing).toHaveAccessibleName(/right 51.00 µm, left 39.00 µm/);
  await expect(drawing).toHaveAccessibleName(/zero is 45.00 µm, the lean 6.00 µm/);
  await guide(page).getByRole('button', { name: 'Type these in' }).tap();
  await expect(field(page, 'Right side')).toHaveValue('51');
  await expect(field(page, 'Left side')).toHaveValue('39');
  await expect(page.getByRole('region', { name: 'The comparator itself' })).toContainText(
    '45.00 ±',
  );
  await expect(sides(page)).toContainText('7.30 ±');

  await page.getByRole('button', { name: 'I work the bottom' }).first().tap();
  await expect(page.locator('main')).toContainText('Invented: say that you lapped it');
  await type(page, 'How much', '12');
  await page.getByRole('button', { name: 'Measure again' }).tap();
  await expect(guide(page)).toContainText('36.00 µm for the right and 34.00 µm for the left');
  await type(page, 'Right side', '36');
  await type(page, 'Left side', '34');
  await expect(guide(page)).toContainText('tap ‘As last time’');
  await page.getByRole('button', { name: /^As last time/ }).tap();
  await expect(guide(page)).toContainText('That is the whole job');
  await expect(page.locator('.so-far')).toContainText('1.22 ±');
  // The dial was turned by 10 µm before.
  await expect(guide(page)).toContainText('The zero is elsewhere');
  await expect(guide(page)).toContainText('The lean is nearly gone');
  await guide(page).getByRole('link', { name: 'On to a part of your own' }).tap();
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
});

test('where the micrometer shows a taper, the guide tells the zero that the answer finds', async ({
  page,
}) => {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  await type(page, 'Left side', '29');
  await expect(guide(page)).toContainText('the sides were found parallel');
  const thickness = field(page, 'Thickness').last();
  await thickness.fill('60.003');
  const zero = page.getByRole('region', { name: 'The comparator itself' });
  // 2 µm over the 80 mm between the places; half the taper over the comparator's 74 mm: 35 - 0.925.
  await expect(zero).toContainText('34.08 ±');
  await expect(guide(page)).toContainText('not the mean of the two, 35.00 µm');
  await expect(guide(page)).toContainText('it is 34.08 µm');
  await expect(guide(page).getByRole('img', { name: /zero is 34.08 µm/ })).toBeVisible();
  await expect(guide(page)).toContainText('say ‘I work the bottom’');
  // A taper as large makes the right the side to be worked.
  await thickness.fill('60.009');
  await expect(guide(page)).toContainText('say ‘I work the right’');
  await expect(page.getByRole('button', { name: /^I work the/ }).first()).toHaveText(
    'I work the right',
  );
  await page.getByRole('button', { name: /^Remove Micrometer/ }).click();
  await expect(guide(page)).toContainText('nothing tells that now');
});

test('the guide is skipped for good, and no part of one’s own has it', async ({ page }) => {
  await page.goto('/?example');
  await guide(page).getByRole('button', { name: 'Skip this' }).tap();
  await expect(guide(page)).toHaveCount(0);
  await page.reload();
  await expect(field(page, 'Right side')).toBeVisible();
  await expect(guide(page)).toHaveCount(0);
});

/** What can be read in two minutes beside thirty taps: about 120 words a minute are read slowly, a tap takes a second. */
const MOST = { words: 180, taps: 30 } as const;

test.describe('on a phone, with the keypad open', () => {
  test.use({ viewport: { width: 412, height: 915 }, hasTouch: true, isMobile: true });

  test('what to type is in sight at each step, and the whole is played in a few taps and words', async ({
    page,
  }) => {
    let taps = 0;
    const read = new Set<string>();
    const tap = async (target: Locator) => {
      taps += 1;
      await target.tap();
    };
    const keys = async (...names: readonly string[]) => {
      for (const name of names) {
        await tap(page.locator('.keypad').getByRole('button', { name, exact: true }));
      }
    };
    /** What the guide says stands in sight, above the keypad where that is open. */
    const isInSight = async (told: string) => {
      const sentence = guide(page).locator('p').filter({ hasText: told });
      await expect(sentence).toBeVisible();
      for (const text of await guide(page).locator('p').allInnerTexts()) read.add(text);
      const isClear = () =>
        sentence.evaluate((text) => {
          const top = document.querySelector('.band')?.getBoundingClientRect().bottom ?? 0;
          const pad = document.querySelector('.keypad')?.getBoundingClientRect();
          const { top: from, bottom: to } = text.getBoundingClientRect();
          return from >= top && to <= (pad?.top ?? innerHeight);
        });
      await expect.poll(isClear, { message: told }).toBe(true);
    };
    await page.goto('/');
    await tap(page.getByRole('button', { name: 'Try it on an invented part' }));
    await isInSight('41.00 µm for the right side');
    await keys('4', '1', 'Next');
    await isInSight('29.00 µm for the left side');
    await keys('2', '9', 'Done');
    await isInSight('The zero falls out.');
    await tap(page.getByRole('button', { name: 'I work the bottom' }).first());
    await tap(field(page, 'How much'));
    await keys('1', '2', 'Done');
    await tap(page.getByRole('button', { name: 'Measure again' }));
    await isInSight('36.00 µm for the right and 34.00 µm for the left');
    await keys('3', '6', 'Next', '3', '4');
    await isInSight('tap ‘As last time’');
    await tap(page.getByRole('button', { name: /^As last time/ }));
    await expect(guide(page)).toContainText('That is the whole job');
    await expect(guide(page)).toBeInViewport();
    for (const text of await guide(page).locator('p').allInnerTexts()) read.add(text);
    const words = [...read].flatMap((text) => text.split(/\s+/)).length;
    test.info().annotations.push({ type: 'played', description: `${taps} taps, ${words} words` });
    expect(taps).toBeLessThanOrEqual(MOST.taps);
    expect(words).toBeLessThanOrEqual(MOST.words);
  });
});
