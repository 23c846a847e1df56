import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, expect, type Page, test } from '@playwright/test';
import { findChromium } from '../tools/find-chromium.mjs';
import { type } from './shop-floor';

/** A browser with a profile on the disk, so that it can be killed and started again. */
async function startBrowser(profile: string): Promise<{ child: ChildProcess; browser: Browser }> {
  const portFile = join(profile, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  const child = spawn(
    findChromium() ?? '',
    [
      '--headless=new',
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    { stdio: 'ignore' },
  );
  await expect
    .poll(() => existsSync(portFile) && readFileSync(portFile, 'utf8').split('\n')[0] !== '')
    .toBe(true);
  const port = readFileSync(portFile, 'utf8').split('\n')[0];
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  return { child, browser };
}

async function pageOf(browser: Browser): Promise<Page> {
  const context = browser.contexts()[0];
  if (context === undefined) throw new Error('The browser has no context');
  return context.pages()[0] ?? context.newPage();
}

test('a browser that is killed while a number is typed has kept it', async ({
  baseURL,
}, testInfo) => {
  const profile = testInfo.outputPath('profile');
  const first = await startBrowser(profile);
  const page = await pageOf(first.browser);
  await page.goto(`${baseURL}?example`);
  await type(page, 'Right side', '41');
  await type(page, 'Left side', '2');
  const address = page.url();
  // The last stroke may be lost with the battery; what was typed before it may not.
  await page.getByRole('textbox', { name: 'Left side', exact: true }).press('9');
  first.child.kill('SIGKILL');
  await once(first.child, 'exit');

  const second = await startBrowser(profile);
  const again = await pageOf(second.browser);
  await again.goto(address);
  const field = (name: string) => again.getByRole('textbox', { name, exact: true });
  await expect(field('Right side')).toHaveValue('41');
  await expect(field('Left side')).toHaveValue(/^29?$/);
  await second.browser.close();
  second.child.kill('SIGKILL');
});
