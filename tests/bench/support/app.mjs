// @ts-check
/** The built app in a browser, as the browser's tests have it. */
import { chromium } from '@playwright/test';
import { findChromium } from '../../tools/find-chromium.mjs';
import { load } from './measure.mjs';

/** @type {typeof import('../../browser/server')} */
const { startServer } = await load('./tests/browser/server.ts');

/** Where `npm run bench` builds the app: `dist` is left to the tests. */
const FOLDER = 'test-results/bench';

/**
 * Runs `use` on a page of the app's own, with a session to Chromium's tools.
 *
 * @template Result
 * @param {(page: import('@playwright/test').Page, session: import('@playwright/test').CDPSession) => Promise<Result>} use
 * @param {{ serviceWorkers?: 'allow' | 'block' }} options storing the app for offline use is mostly no
 *   part of what is measured.
 */
export async function withApp(use, { serviceWorkers = 'block' } = {}) {
  const server = await startServer(FOLDER);
  const browser = await chromium.launch({
    executablePath: findChromium() ?? '',
    chromiumSandbox: false,
    args: ['--disable-gpu', '--disable-background-networking', '--disable-component-update'],
  });
  try {
    const page = await browser.newPage({
      baseURL: server.url,
      viewport: { width: 412, height: 915 },
      hasTouch: true,
      isMobile: true,
      serviceWorkers,
    });
    const session = await page.context().newCDPSession(page);
    return await use(page, session);
  } finally {
    await browser.close();
    await server.stop();
  }
}

/**
 * Waits until nothing is left to do on the page: the keystroke before is not to be measured too.
 *
 * @param {import('@playwright/test').Page} page
 */
export async function settle(page) {
  await page.evaluate(() => new Promise((resolve) => requestIdleCallback(resolve)));
  await page.waitForTimeout(150);
}
