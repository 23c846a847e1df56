import type { Page } from '@playwright/test';

/** Waits until all of the app is stored and the page is served by its service worker. */
export async function untilReadyForOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { serviceWorker } = navigator;
    await serviceWorker.ready;
    if (serviceWorker.controller) return;
    await new Promise((resolve) => serviceWorker.addEventListener('controllerchange', resolve));
  });
}
