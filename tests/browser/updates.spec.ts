import { appendFileSync, cpSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { untilReadyForOffline } from './offline';
import { startServer } from './server';

test('a newer version never reloads the page unasked', async ({ page }, testInfo) => {
  const site = testInfo.outputPath('site');
  cpSync('dist', site, { recursive: true });
  const server = await startServer(site);
  try {
    await page.goto(server.url);
    await untilReadyForOffline(page);
    await page.reload();
    await untilReadyForOffline(page);

    appendFileSync(`${site}/sw.js`, '// a newer version');
    const leftPage = await page.evaluate(async () => {
      const { serviceWorker } = navigator;
      const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
      const takeover = new Promise((resolve) =>
        serviceWorker.addEventListener('controllerchange', resolve),
      );
      let leaving = false;
      window.addEventListener('beforeunload', () => {
        leaving = true;
      });
      const registration = await (await serviceWorker.ready).update();
      while (!registration.waiting) await pause(50);
      await pause(500); // Until the app, too, has seen that it waits.
      registration.waiting.postMessage({ type: 'SKIP_WAITING' }); // As another tab would.
      await takeover;
      await pause(500);
      return leaving;
    });
    expect(leftPage).toBe(false);
  } finally {
    await server.stop();
  }
});
