import { expect, type Page, test } from '@playwright/test';
import { describePart, press, sides, tapKeys, type } from './shop-floor';

/** The key to the other layer of the keypad. */
const SIGNS = 'mm + /: signs and units';

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

test('the keypad types units and signs, and repeats the reading before', async ({ page }) => {
  await page.goto('/?example');
  await expect(field(page, 'Right side')).toBeFocused();
  await tapKeys(page, ['4', '0', SIGNS, 'Plus', '1', '/', '2'].flatMap(keysFor));
  await expect(field(page, 'Right side')).toHaveAccessibleDescription(/= 40.5 µm/);
  await tapKeys(page, ['Next', 'Repeat the last: 40+1/2']);
  await expect(field(page, 'Left side')).toHaveValue('40+1/2');
  await tapKeys(page, [
    'Turn the sign',
    ...Array.from({ length: 5 }, () => 'Erase'),
    SIGNS,
    'tenths',
  ]);
  await expect(field(page, 'Left side')).toHaveValue('-4 tenths');
  await expect(field(page, 'Left side')).toHaveAccessibleDescription(/= −10.16 µm/);
});

/** A sign stands on the other layer of the keypad. */
function keysFor(key: string): readonly string[] {
  return key === '/' ? [SIGNS, 'Divided by'] : [key];
}

test('a field and its drawing stay in sight while the answer over them grows', async ({ page }) => {
  await page.goto('/?example');
  const right = field(page, 'Right side');
  await expect(right).toBeFocused();
  await tapKeys(page, ['4', '1']);
  await expect(right).toBeInViewport({ ratio: 1 });
  await page.locator('.so-far').evaluate((line) => {
    line.style.minHeight = `${line.clientHeight + 90}px`;
  });
  const edges = (part: string) =>
    page
      .locator(part)
      .first()
      .evaluate((one) => one.getBoundingClientRect().toJSON());
  await expect
    .poll(async () => (await edges('.tap-to-go')).top - (await edges('.band')).bottom)
    .toBeGreaterThanOrEqual(-1);
  const top = await right.evaluate((input) => input.getBoundingClientRect().top);
  expect(top).toBeGreaterThan((await edges('.tap-to-go')).bottom);
  await expect(right).toBeInViewport({ ratio: 1 });
});

test('no key is smaller than a finger, on either layer', async ({ page }) => {
  await page.goto('/?example');
  const key = (name: string) => page.locator('.keypad').getByRole('button', { name, exact: true });
  for (const [layer, one] of [
    [SIGNS, 'thou'],
    ['1 2 3: digits', '7'],
  ] as const) {
    await key(layer).tap();
    await expect(key(one)).toBeVisible();
    const small = await page
      .locator('.keypad button')
      .evaluateAll((keys) =>
        keys
          .map((key) => key.getBoundingClientRect())
          .filter(({ width, height }) => Math.min(width, height) < 48),
      );
    expect(small).toEqual([]);
  }
});

test('Enter stays in a last field that is marked, and else leads to the answer and to Finish', async ({
  page,
}) => {
  await describePart(page, { name: 'Block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await type(page, 'Nose height', '6');
  await type(page, 'Indicator height', '80');
  await type(page, 'Right side', '41');
  await page.keyboard.press('Enter');
  await expect(field(page, 'Left side')).toBeFocused();
  await page.keyboard.type('2..9');
  await expect(field(page, 'Left side')).toHaveAttribute('aria-invalid', 'true');
  await page.keyboard.press('Enter');
  await expect(field(page, 'Left side')).toBeFocused();
  await type(page, 'Left side', '31');
  await expect(field(page, 'Left side')).toHaveAttribute('aria-invalid', 'false');
  // A cable's Enter comes before the mark is drawn.
  await page.evaluate(() => {
    const input = document.activeElement as HTMLInputElement;
    input.value = '3..1';
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  });
  await expect(field(page, 'Left side')).toHaveAttribute('aria-invalid', 'true');
  await expect(field(page, 'Left side')).toBeFocused();
  await type(page, 'Left side', '29');
  await expect(field(page, 'Left side')).toHaveAttribute('aria-invalid', 'false');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'What they say' })).toBeFocused();
  await expect(page.getByRole('button', { name: 'Finish, after the readings' })).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Finish, after the readings' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Finish these readings' })).toBeFocused();
  await expect(page.getByRole('button', { name: 'Finish these readings' })).toBeInViewport();
});

test('the last changes are taken back, a seating that was removed too', async ({ page }) => {
  await page.goto('/?example');
  await tapKeys(page, ['4', '1', 'Next', '2', '9']);
  await tapKeys(page, ['Undo']);
  await expect(field(page, 'Left side')).toHaveValue('');
  await expect(field(page, 'Right side')).toHaveValue('41');
  await tapKeys(page, ['2', '8']);
  await field(page, 'Left side').click();
  await page.getByRole('button', { name: 'Seat again: left side' }).tap();
  await expect(field(page, 'Left side, seating 2')).toBeFocused();
  await tapKeys(page, ['3', '0']);
  await page.getByRole('button', { name: 'Remove this seating' }).tap();
  await expect(field(page, 'Left side, seating 2')).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo', exact: true }).first().tap();
  await expect(field(page, 'Left side, seating 2')).toHaveValue('30');
  await page.getByRole('button', { name: 'Remove Micrometer: right and left' }).tap();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('textbox', { name: 'Thickness' })).toHaveCount(2);
  // All the way back, and no further.
  for (let back = 0; back < 8; back += 1) await page.keyboard.press('Control+z');
  await expect(field(page, 'Right side')).toHaveValue('');
  await expect(page.getByRole('button', { name: 'Undo', exact: true }).first()).toBeDisabled();
  await page.reload();
  await expect(field(page, 'Right side')).toHaveValue('');
});

test.describe('a gauge with a cable', () => {
  /** Types as the cable does: each key within a millisecond of the one before. */
  async function fromCable(page: Page, text: string, end: readonly string[]): Promise<void> {
    const session = await page.context().newCDPSession(page);
    const send = (key: string, own: object) =>
      Promise.all([
        session.send('Input.dispatchKeyEvent', { type: 'keyDown', key, ...own }),
        session.send('Input.dispatchKeyEvent', { type: 'keyUp', key }),
      ]);
    const keys = [
      ...[...text].map((key) => send(key, { text: key })),
      ...end.map((key) =>
        send(key, {
          code: key,
          windowsVirtualKeyCode: key === 'Tab' ? 9 : 13,
          ...(key === 'Enter' && { text: '\r' }),
        }),
      ),
    ];
    await Promise.all(keys);
  }

  for (const [name, end] of [
    ['Enter', ['Enter']],
    ['Enter twice', ['Enter', 'Enter']],
    ['Tab', ['Tab']],
  ] as const) {
    test(`that ends with ${name} fills one reading after the other`, async ({ page }) => {
      await page.goto('/?example');
      await expect(field(page, 'Right side')).toBeFocused();
      await fromCable(page, '+41.5', end);
      await expect(field(page, 'Left side')).toBeFocused();
      await fromCable(page, '-29,25', end);
      await expect(field(page, 'Right side')).toHaveValue('+41.5');
      await expect(field(page, 'Left side')).toHaveValue('-29,25');
      await page.reload();
      await expect(field(page, 'Left side')).toHaveValue('-29,25');
    });
  }

  test('is heard at once after loading, before there is a field, and from a button', async ({
    page,
  }) => {
    const open = await reloadHeld(page);
    await fromCable(page, '41.5', ['Enter']);
    open();
    await expect(field(page, 'Right side')).toHaveValue('41.5');
    await expect(field(page, 'Left side')).toBeFocused();
    await page.getByRole('button', { name: /Units/ }).focus();
    await fromCable(page, '29', ['Enter']);
    await expect(field(page, 'Left side')).toHaveValue('29');
    await expect(sides(page)).toContainText('Right leans out at the top');
  });

  for (const end of ['Enter', 'Tab']) {
    test(`what a hand types before there is a field is kept apart by ${end}`, async ({ page }) => {
      const open = await reloadHeld(page);
      const keys = ['4', '1', '2', 'Backspace', '+', '1', '/', '2', end, '2', '9'];
      for (const key of keys) await page.keyboard.press(key, { delay: 50 });
      open();
      await expect(field(page, 'Left side')).toHaveValue('29');
      await expect(field(page, 'Right side')).toHaveValue('41+1/2');
    });
  }

  test('Enter twice before there is a field leads one field on', async ({ page }) => {
    const open = await reloadHeld(page);
    await fromCable(page, '41', ['Enter', 'Enter']);
    await fromCable(page, '29', ['Enter', 'Enter']);
    open();
    await expect(field(page, 'Left side')).toHaveValue('29');
    await expect(field(page, 'Right side')).toHaveValue('41');
  });

  /** Opens the example anew, with its plate held back until what is returned is called. */
  async function reloadHeld(page: Page): Promise<() => void> {
    let open = () => {};
    const held = new Promise<void>((resolve) => {
      open = resolve;
    });
    await page.goto('/?example');
    await expect(field(page, 'Right side')).toBeFocused();
    await page.route(/plate-screen-.*\.js/, async (route) => {
      await held;
      await route.continue();
    });
    await page.reload({ waitUntil: 'commit' });
    await page.waitForFunction(() => document.querySelector('.notices') !== null);
    return () => open();
  }

  test.use({ serviceWorkers: 'block' });
});

test('heights taken over from the other pair lead to its reading, in sight under the drawing', async ({
  page,
}) => {
  await describePart(page, { name: 'Trial block', size: ['80', '50', '60'], within: '0.01' });
  await page.getByRole('link', { name: 'Change' }).tap();
  await press(page.getByRole('button', { name: 'Add a requirement' }));
  await press(page.getByRole('link', { name: 'To the part', exact: true }));
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await field(page, 'Nose height').first().tap();
  await tapKeys(page, '8 Next 5 2 Next 1 2 Next 4 Next'.split(' '));
  await page.evaluate(() => {
    document.addEventListener('scrollend', () => {
      document.documentElement.dataset.scrolled = 'true';
    });
  });
  // The keypad stays: the button stands above it.
  await page.getByRole('button', { name: 'Heights as for right and left' }).click();
  await expect(field(page, 'Back side')).toBeFocused();
  const unseen = () =>
    page.evaluate(() => {
      if (document.documentElement.dataset.scrolled === undefined) return 'still on the way';
      const input = document.activeElement;
      if (input === null) return 'nothing to type in';
      const { left, top, width, height } = input.getBoundingClientRect();
      const seen = document.elementFromPoint(left + width / 2, top + height / 2);
      return seen === input ? 'in sight' : 'something lies over it';
    });
  await expect.poll(unseen).toBe('in sight');
});

test('what is only begun is not marked while it is typed, and is once it is left', async ({
  page,
}) => {
  await page.goto('/?example');
  const right = field(page, 'Right side');
  await expect(right).toBeFocused();
  await tapKeys(page, ['4', SIGNS, 'Plus']);
  await expect(right).toHaveAccessibleDescription(/A number is missing after/);
  const message = page.locator('.field').filter({ has: right }).locator('.field-message');
  const mark = () => message.evaluate((said) => getComputedStyle(said, '::before').content);
  expect(await mark()).toBe('none');
  await tapKeys(page, ['Next']);
  await expect(right).not.toBeFocused();
  expect(await mark()).not.toBe('none');
});

test('from opening the app to the verdict on a known part: at most 12 taps beside the digits', async ({
  page,
}) => {
  // The part is known: it has been read before.
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await type(page, 'Nose height', '6');
  await type(page, 'Indicator height', '80');
  await type(page, 'Right side', '34');
  await type(page, 'Left side', '31');
  await page.getByRole('button', { name: 'Take as parallel' }).first().tap();
  await type(page, 'Parallel within, over the whole face', '1');
  await expect(sides(page)).toContainText('1.82 ±');
  await page.getByRole('button', { name: 'Finish these readings' }).tap();

  await page.goto('/');
  await page.evaluate(() => {
    document.addEventListener('click', ({ target }) => {
      const isDigit = target instanceof Element && /^[0-9.]$/.test(target.textContent ?? '');
      if (!isDigit) document.documentElement.dataset.taps = `${taps() + 1}`;
    });
    const taps = () => Number(document.documentElement.dataset.taps ?? 0);
  });
  await page
    .getByRole('link', { name: /Trial block/ })
    .first()
    .tap();
  await page
    .getByRole('button', { name: /Take readings|Measure again|Read again/ })
    .first()
    .tap();
  await page.getByRole('button', { name: 'Done: before reading' }).tap();
  await tapKeys(page, ['3', '3', 'Next', '3', '2', 'Done']);
  await expect(page.getByRole('heading', { name: 'What they say' })).toBeInViewport();
  await expect(sides(page)).toContainText('0.61 ±'); // 0.5 µm × 90 / 74
  await expect(page.getByRole('button', { name: /Right square to bottom.*In/ })).toBeVisible();
  const taps = Number(await page.evaluate(() => document.documentElement.dataset.taps));
  expect(taps).toBeGreaterThan(0);
  expect(taps).toBeLessThanOrEqual(12);
});

test.describe('at a desk', () => {
  test.use({ viewport: { width: 1440, height: 900 }, hasTouch: false, isMobile: false });

  /** Goes on with Tab until `name` has the focus. */
  async function tabTo(page: Page, role: 'button' | 'link' | 'textbox', name: string | RegExp) {
    const wanted = page.getByRole(role, { name, exact: true }).first();
    await expect(wanted).toBeVisible();
    for (let tabs = 0; tabs < 80; tabs += 1) {
      if (await wanted.evaluate((element) => element === document.activeElement)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`Tab does not lead to ${name}`);
  }

  test('four sides are read on a keyboard alone, from a new part to the verdict', async ({
    page,
  }) => {
    const keys = page.keyboard;
    const press = async (role: 'button' | 'link', name: string) => {
      await tabTo(page, role, name);
      await keys.press('Enter');
    };
    const typeLine = async (text: string) => {
      await keys.type(text, { delay: 40 });
      await keys.press('Enter');
    };
    await page.goto('/');
    await press('button', 'New part');
    await tabTo(page, 'textbox', 'Name');
    await keys.type('Trial block');
    await tabTo(page, 'textbox', 'X, left to right');
    for (const size of ['60', '40']) await typeLine(size);
    await keys.type('90');
    for (const _ of ['right', 'left']) {
      await press('button', 'Add a requirement');
      await tabTo(page, 'textbox', 'Within');
      await keys.press('ControlOrMeta+a');
      await keys.type('0.02');
    }
    await press('link', 'To the part');
    await press('button', 'Take readings');

    await expect(field(page, 'Nose height')).toBeFocused();
    await typeLine('5');
    await typeLine('55');
    await press('button', 'Turn it on all four sides');
    for (const [name, reading] of [
      ['Right side on bottom', '6'],
      ['Left side on bottom', '-5'],
      ['Top side on right', '-1'],
      ['Left side on top', '7'],
    ] as const) {
      await expect(field(page, name)).toBeFocused();
      await typeLine(reading);
    }
    const so = (text: RegExp) => expect(page.getByRole('button', { name: text })).toBeVisible();
    await so(/^Left square to bottom: .*In/);
    // Back to the side that was read wrongly, with the keyboard still.
    while (
      !(await field(page, 'Left side on bottom').evaluate((one) => one === document.activeElement))
    )
      await keys.press('Shift+Tab');
    await keys.press('ControlOrMeta+a');
    await keys.type('-4');
    await so(/^Left square to bottom: 10\.80 .*In/); // 6 µm × 90 / 50
    await expect(sides(page)).toContainText('7.20 ±'); // 4 µm × 90 / 50
    await keys.press('ControlOrMeta+z');
    await expect(field(page, 'Left side on bottom')).toHaveValue('-5');
    await expect(field(page, 'Left side on bottom')).toBeFocused();
  });
});
