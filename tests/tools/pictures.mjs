// @ts-check
/**
 * Takes a picture of every screen of the built app, at phone and at desk size and 320 px wide, light
 * and dark, into test-results/pictures; and the one that the README shows. Run `npm run build` first.
 * What is given after it is what a picture's name must begin with: 'desk, dark' for a few of them;
 * 'readme' for the README's alone.
 */
import { spawn } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { inventShop } from '../bench/support/invented-shop.mjs';
import { findChromium } from './find-chromium.mjs';

const PORT = 4175;
const ADDRESS = `http://127.0.0.1:${PORT}/`;
const PICTURES = 'test-results/pictures';
const README_PICTURE = 'tests/pictures/at-the-plate.png';

const SIZES = /** @type {const} */ ({
  phone: { width: 412, height: 915 },
  desk: { width: 1440, height: 900 },
  narrow: { width: 320, height: 640 },
});

/** @typedef {import('@playwright/test').Page} Page */

/**
 * @param {Page} page
 * @param {(name: string, how?: 'as seen') => Promise<void>} show takes the picture of the whole screen, or of what is in sight
 */
async function walk(page, show) {
  /** @param {string} name @param {string} text */
  const type = (name, text) => page.getByRole('textbox', { name, exact: true }).fill(text);
  const leaveField = () => page.getByRole('heading', { level: 1 }).click();
  await page.goto(ADDRESS);
  await page.getByRole('button', { name: 'New part' }).waitFor();
  await show('bench, empty');
  await page.goto(`${ADDRESS}?example`);
  await type('Right side', '41');
  await show('plate, typing', 'as seen');
  await type('Left side', '2.9.');
  await leaveField();
  await show('plate, slip of typing');
  await type('Left side', '29');
  await leaveField();
  await page.getByText('Faces that cannot do it alone').click();
  await page.getByText('Show the working').first().click();
  await show('plate, answered');
  await page.getByRole('button', { name: /Units/ }).click();
  await show('plate, units', 'as seen');
  await page.getByRole('button', { name: /Units/ }).click();
  await page.getByRole('button', { name: 'I work the bottom' }).first().click();
  await type('How much', '12');
  await show('work');
  await page.getByRole('button', { name: 'Measure again' }).click();
  await type('Right side', '36');
  await type('Left side', '34');
  await show('plate, measured again');
  for (const thickness of await page.getByRole('textbox', { name: 'Thickness' }).all()) {
    await thickness.fill('60.001');
  }
  await leaveField();
  await page.getByRole('button', { name: 'What is this number?' }).first().click();
  await show('plate, help');
  await page.getByRole('link', { name: 'Back to the part' }).click();
  await page.getByRole('heading', { name: 'Its story' }).waitFor();
  await show('part');
  await page.getByRole('link', { name: 'Compare two' }).click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await show('compare');
  await page.getByRole('link', { name: 'Back to the part' }).click();
  await page.locator('main a[href*="/record/"]').first().click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await show('record');
  await page.goBack();
  await page.goto(`${page.url()}/table`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await show('table');
  await page.goBack();
  await page.getByRole('link', { name: 'Change' }).click();
  await page.getByRole('heading', { name: 'What the drawing asks' }).waitFor();
  await show('drawing');
  await everySide(page, show);
  await busyShop(page, show);
  for (const address of ['kit', 'drawer', 'rates', 'comparators', 'files', 'no-such-place', '']) {
    await page.goto(ADDRESS + address);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.getByText('Looking through all parts…').waitFor({ state: 'hidden' });
    await show(address || 'bench');
  }
}

/**
 * A part with more to it: all its sides asked for, none fixed yet; stood on its top; a face mapped.
 *
 * @param {Page} page
 * @param {(name: string) => Promise<void>} show
 */
async function everySide(page, show) {
  /** @param {string} name @param {string} text */
  const type = (name, text) => page.getByRole('textbox', { name, exact: true }).first().fill(text);
  const leaveField = () => page.getByRole('heading', { level: 1 }).click();
  await page.goto(ADDRESS);
  await page.getByRole('button', { name: 'New part' }).click();
  await type('Name', 'Parallel, stood on its top');
  for (const [name, size] of [
    ['X, left to right', '50'],
    ['Y, front to back', '40'],
    ['Z, bottom to top', '60'],
  ]) {
    await type(name ?? '', size ?? '');
  }
  await page.getByRole('combobox', { name: 'It stands on, as datum A' }).selectOption('Top');
  for (const [face, datum] of [
    ['Right', 'Top'],
    ['Left', 'Top'],
    ['Front', 'Top'],
    ['Back', 'Top'],
    ['Bottom', 'Top'],
  ]) {
    const faces = page.getByRole('combobox', { name: 'Face' });
    const before = await faces.count();
    await page.getByRole('button', { name: 'Add a requirement' }).click();
    // The last is the one before until the new one is drawn.
    await faces.nth(before).waitFor();
    await faces.last().selectOption(face ?? '');
    await page
      .getByRole('combobox', { name: 'To datum' })
      .last()
      .selectOption(datum ?? '');
    await page.getByRole('textbox', { name: 'Within' }).last().fill('0.005');
  }
  await leaveField();
  await show('drawing, five asked');
  await page.getByRole('link', { name: 'To the part', exact: true }).click();
  await page.getByRole('button', { name: 'Take readings' }).click();
  await type('Nose height', '6');
  await type('Indicator height', '50');
  await type('Right side', '12');
  await leaveField();
  await show('plate, not fixed');
  await page
    .getByText(/^Form of the/)
    .first()
    .click();
  await page.getByRole('button', { name: 'Map of the face, on jacks' }).first().click();
  await page.getByRole('button', { name: '4 × 3' }).click();
  const shown = ['2', '3.5', '4', '3', '1', '2', '3', '2.5', '0', '1', '1.5', '1'];
  for (const [index, text] of shown.entries()) await type(`Reading at place ${index + 1}`, text);
  await leaveField();
  await show('plate, mapped');
}

/**
 * A shop with a past: parts that were read and lapped many times.
 *
 * @param {Page} page
 * @param {(name: string) => Promise<void>} show
 */
async function busyShop(page, show) {
  await inventShop(page, { parts: 6, inspections: 10, seatings: 1, places: 2 });
  await page.goto(`${ADDRESS}part/part-00002`);
  await page.locator('.uplot').first().waitFor();
  await show('part with a past');
  await page.locator('main a[href*="/record/"]').last().click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await show('record of a part with a past');
}

/** The README's picture: what is typed, what it means and what to take off, side by side. @param {import('@playwright/test').Browser} browser */
async function readmePicture(browser) {
  const context = await browser.newContext({
    viewport: SIZES.phone,
    hasTouch: true,
    isMobile: true,
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  /** @type {string[]} */
  const shots = [];
  const shoot = async () => {
    await page.waitForTimeout(300);
    shots.push((await page.screenshot()).toString('base64'));
  };
  await page.goto(`${ADDRESS}?example`);
  await page.getByRole('textbox', { name: 'Right side', exact: true }).pressSequentially('41');
  await page.getByRole('button', { name: 'Next', exact: true }).click();
  await page.getByRole('textbox', { name: 'Left side', exact: true }).pressSequentially('29');
  await shoot();
  await page.getByRole('button', { name: 'Done', exact: true }).click();
  await shoot();
  await page.getByRole('button', { name: 'I work the bottom' }).first().click();
  await page.getByRole('textbox', { name: 'How much' }).waitFor();
  await shoot();
  await context.close();
  const sheet = await browser.newPage({ viewport: { width: 3 * 412 + 80, height: 955 } });
  const images = shots.map((shot) => `<img src="data:image/png;base64,${shot}">`).join('');
  await sheet.setContent(
    `<body style="margin:0;padding:20px;display:flex;gap:20px;background:#fff">${images}</body>`,
  );
  mkdirSync('tests/pictures', { recursive: true });
  await sheet.screenshot({ path: README_PICTURE });
  await sheet.close();
}

const args = ['node_modules/vite/bin/vite.js', 'preview', '--host', '127.0.0.1', '--strictPort'];
const server = spawn('node', [...args, '--port', String(PORT)], { stdio: 'ignore' });
const browser = await chromium.launch({
  executablePath: findChromium() ?? '',
  chromiumSandbox: false,
  args: ['--disable-gpu', '--disable-background-networking'],
});
try {
  while (!(await fetch(ADDRESS).catch(() => undefined))?.ok) {
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  mkdirSync(PICTURES, { recursive: true });
  const wanted = process.argv[2] ?? '';
  for (const [name, viewport] of Object.entries(SIZES)) {
    for (const colorScheme of /** @type {const} */ (['light', 'dark'])) {
      const series = `${name}, ${colorScheme}`;
      if (!series.startsWith(wanted)) continue;
      const isMobile = name !== 'desk';
      const context = await browser.newContext({
        ...{ viewport, colorScheme, isMobile, hasTouch: isMobile, reducedMotion: 'reduce' },
      });
      const page = await context.newPage();
      await walk(page, async (screen, how) => {
        await page.waitForTimeout(300);
        // On a screen as high as the page, what is pinned stands where it belongs.
        const height = await page.evaluate(() => document.documentElement.scrollHeight);
        if (how !== 'as seen') await page.setViewportSize({ ...viewport, height });
        await page.screenshot({ path: `${PICTURES}/${series}, ${screen}.png` });
        await page.setViewportSize(viewport);
      });
      await context.close();
    }
  }
  if (wanted === '' || wanted === 'readme') await readmePicture(browser);
} finally {
  await browser.close();
  server.kill();
}
