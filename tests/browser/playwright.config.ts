import { defineConfig } from '@playwright/test';
import { findChromium } from '../tools/find-chromium.mjs';
import { address, previewCommand } from './server';

const PORT = 4174;

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results/browser',
  reporter: [['list'], ['json', { outputFile: '../../test-results/browser.json' }]],
  forbidOnly: true,
  fullyParallel: true,
  workers: 2,
  // Two cores, each with a browser and perhaps something else: slow is not wrong.
  timeout: 90_000,
  // What passes only at its second try is listed as flaky: it is a fault to be found, and not one to stop on.
  retries: 1,
  expect: { timeout: 15_000 },
  use: {
    baseURL: address(PORT),
    launchOptions: {
      executablePath: findChromium() ?? '',
      // As root, Chromium starts only without its sandbox.
      chromiumSandbox: false,
      args: [
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  projects: [
    {
      name: 'phone',
      use: { viewport: { width: 412, height: 915 }, hasTouch: true, isMobile: true },
    },
  ],
  webServer: {
    command: previewCommand(PORT).join(' '),
    cwd: '../..',
    url: address(PORT),
    reuseExistingServer: false,
  },
});
