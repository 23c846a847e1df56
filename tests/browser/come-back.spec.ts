import { expect, type Page, test } from '@playwright/test';
import { describePart, type } from './shop-floor';

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

/** Notes in the page at what heights its button has stood, at each frame. */
function noteWhereNewPartStands(): void {
  const seen = new Set<number>();
  const look = () => {
    const button = [...document.querySelectorAll('button')].find(
      ({ textContent }) => textContent === 'New part',
    );
    if (button !== undefined) {
      seen.add(Math.round(button.getBoundingClientRect().top));
      document.documentElement.dataset.newPartAt = [...seen].join(' ');
    }
    requestAnimationFrame(look);
  };
  look();
}

async function readTheRight(page: Page): Promise<void> {
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await type(page, 'Nose height', '6');
  await type(page, 'Indicator height', '80');
  await type(page, 'Right side', '34');
}

test('opened again at the bench, one tap leads back to the same number, to be gone on with', async ({
  page,
  context,
}) => {
  await readTheRight(page);
  await type(page, 'Left side', '3');
  await page.close({ runBeforeUnload: false });
  const again = await context.newPage();
  await again.addInitScript(noteWhereNewPartStands);
  // An installed app starts at the bench.
  await again.goto('/');
  await expect(again.getByRole('link', { name: /^Go on where you were/ })).toBeVisible();
  // It comes with the parts, and nothing moves under a finger by then.
  expect(await again.evaluate(() => document.documentElement.dataset.newPartAt)).toMatch(/^\d+$/);
  await again.getByRole('link', { name: 'Go on where you were: Trial block, Left side' }).tap();
  await expect(field(again, 'Left side')).toBeFocused();
  await again.keyboard.type('1');
  await expect(field(again, 'Left side')).toHaveValue('31');
  await expect(field(again, 'Right side')).toHaveValue('34');
});

test('a reload comes back to the field that was left, not to the first empty one', async ({
  page,
}) => {
  await readTheRight(page);
  await field(page, 'Indicator height').fill('');
  await field(page, 'Left side').click();
  await page.reload();
  await expect(field(page, 'Left side')).toBeFocused();
});

test('so it does where a length of the part was typed with a unit, which is worked out first', async ({
  page,
}) => {
  await describePart(page, { name: 'Block', size: ['60', '40', '90'], within: '5 µm' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await field(page, 'Left side').click();
  await page.reload();
  await expect(field(page, 'Left side')).toBeFocused();
});

test('finished readings are no place to go on at, and work that was begun is one', async ({
  page,
}) => {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  await type(page, 'Left side', '29');
  await page.getByRole('button', { name: 'I work the bottom' }).first().tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Work the bottom');
  await page.goto('/');
  await page.getByRole('link', { name: /^Go on where you were: .*, Work the bottom$/ }).tap();
  await page.getByRole('button', { name: 'Measure again' }).tap();
  for (const name of ['Right side', 'Left side']) await type(page, name, '35');
  await page.getByRole('button', { name: 'Finish these readings' }).tap();
  await expect(page.getByText('Finished.')).toBeVisible();
  await page.goto('/');
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
  await expect(page.getByRole('link', { name: /^Go on where you were/ })).toHaveCount(0);
});

test('the screen is kept lit again after the page was out of sight', async ({ page }) => {
  await page.addInitScript(() => {
    const held: { released: boolean }[] = [];
    const request = async () => {
      const lock = {
        released: false,
        release: async () => {
          lock.released = true;
        },
      };
      held.push(lock);
      return lock;
    };
    Object.defineProperty(navigator, 'wakeLock', { value: { request } });
    Object.assign(window, { heldLocks: held });
  });
  const locks = () =>
    page.evaluate(() =>
      (window as unknown as { heldLocks: { released: boolean }[] }).heldLocks.map(
        ({ released }) => released,
      ),
    );
  await page.goto('/?example');
  await expect(field(page, 'Right side')).toBeVisible();
  await expect.poll(locks).toEqual([false]);
  // Out of sight the browser lets go of it.
  await page.evaluate(() => {
    const show = (state: string) => {
      Object.defineProperty(document, 'visibilityState', { value: state, configurable: true });
      document.dispatchEvent(new Event('visibilitychange'));
    };
    show('hidden');
    for (const lock of (window as unknown as { heldLocks: { released: boolean }[] }).heldLocks) {
      lock.released = true;
    }
    show('visible');
  });
  await expect.poll(locks).toEqual([true, false]);
  // A tap asks for none more while it is held, and the bench needs none.
  await field(page, 'Right side').tap();
  expect(await locks()).toEqual([true, false]);
  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await expect.poll(locks).toEqual([true, true]);
});
