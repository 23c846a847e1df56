/**
 * The service worker's side of the app: whether it works offline and whether a newer version
 * waits. Nothing here reloads the page unasked: a reading may be half entered.
 */

import { registerSW } from 'virtual:pwa-register';
import { signal } from '@preact/signals';

/** All the app's files are stored on this device. */
export const offlineReady = signal(false);

/** The browser stores no app for offline use, as in some private windows. */
export const offlineRefused = signal(!('serviceWorker' in navigator));

/** A newer version is stored and takes over when `applyUpdate` is called. */
export const updateReady = signal(false);

/**
 * A part of the app could not be loaded: no network and not stored yet, or the server has only a
 * newer version's parts. Loading the page again helps, once there is network.
 */
export const partMissing = signal(false);

let registration: ServiceWorkerRegistration | undefined;

/** True once the newer version runs already, taken into use from another tab. */
let newVersionInCharge = false;

let letNewVersionTakeOver: (() => Promise<void>) | undefined;

/** Has all of the app stored on this device, or a newer version of it, which is much work for the browser. */
export function storeForOffline(): void {
  letNewVersionTakeOver = registerSW({
    onOfflineReady: () => {
      offlineReady.value = true;
    },
    onRegisteredSW: (_url, registered) => {
      registration = registered;
      // A worker that is active stored everything on an earlier visit.
      if (registered?.active) offlineReady.value = true;
    },
    onNeedRefresh: () => {
      updateReady.value = true;
    },
    // Without this the page would be reloaded, in other tabs too.
    onNeedReload: () => {
      newVersionInCharge = true;
    },
    onRegisterError: () => {
      // Private windows and some settings refuse service workers; the app then needs the network.
      offlineRefused.value = true;
    },
  });
}

/** Starts the newer version, which loads the page again: call it only when the user says so. */
export async function applyUpdate(): Promise<void> {
  if (newVersionInCharge) return location.reload();
  const { serviceWorker } = navigator;
  serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  await letNewVersionTakeOver?.();
}

/** Looks for a newer version. Offline this finds none, and that is no error. */
function checkForUpdate(): void {
  registration?.update().catch(() => {});
}

// An installed app may stay open for days: look again each time it comes to the front.
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') checkForUpdate();
});

window.addEventListener('vite:preloadError', () => {
  partMissing.value = true;
});
