// @ts-check
/**
 * Draws the PNG icons in public/ from mark.svg: `node tests/tools/icons.mjs` after a change of it.
 * ImageMagick's `convert` brings them to a palette, which makes them a third as large.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { findChromium } from './find-chromium.mjs';

const PAPER = '#f4f1ea';

/** Rows of a palette are packed best as they are. */
const SMALLEST = ['compression-filter=0', 'compression-level=9', 'compression-strategy=0'].flatMap(
  (setting) => ['-define', `png:${setting}`],
);

/** Three colours, nothing, and the edges between them. */
const COLOURS = 24;

/** `share` of the width is the mark's: systems cut a maskable icon to a circle of 0.8. */
const ICONS = [
  { file: 'icon-192.png', size: 192, share: 1, background: 'transparent' },
  { file: 'icon-512.png', size: 512, share: 1, background: 'transparent' },
  { file: 'icon-maskable-512.png', size: 512, share: 0.76, background: PAPER },
  { file: 'apple-touch-icon.png', size: 180, share: 1, background: PAPER },
];

const publicFolder = new URL('../../public/', import.meta.url);
const mark = readFileSync(new URL('mark.svg', publicFolder), 'base64');

const browser = await chromium.launch({ executablePath: findChromium() ?? '' });
const page = await browser.newPage();
for (const { file, size, share, background } of ICONS) {
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(`
    <body style="margin: 0; height: 100vh; display: grid; place-items: center; background: ${background}">
      <img width="${size * share}" src="data:image/svg+xml;base64,${mark}">
    </body>`);
  const path = new URL(file, publicFolder).pathname;
  await page.screenshot({ path, omitBackground: true });
  const palette = ['+dither', '-colors', `${COLOURS}`, '-strip'];
  execFileSync('convert', [path, ...palette, ...SMALLEST, path]);
}
await browser.close();
