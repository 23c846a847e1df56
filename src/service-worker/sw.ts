/*
 * The service worker: it has all of the app stored, so that it opens without a network, and takes what
 * other apps share with it. Its file goes out as `sw.js` for good: installed apps ask for it by that name.
 */

import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  type PrecacheEntry,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { layDownShared, SHARE } from '../store/shared-file';

declare const self: ServiceWorkerGlobalScope & {
  /** Every file of the app with its revision, put in by the build. */
  readonly __WB_MANIFEST: readonly PrecacheEntry[];
};

// A newer version waits until somebody asks for it: src/updates.ts.
self.addEventListener('message', ({ data }: ExtendableMessageEvent) => {
  if (data?.type === 'SKIP_WAITING') void self.skipWaiting();
});

// The first visit too is controlled, hence safe to take offline.
clientsClaim();
cleanupOutdatedCaches();
precacheAndRoute([...self.__WB_MANIFEST]);
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

const within = (path: string) => new URL(path, self.registration.scope).href;

// Any page may send something here: it is only shown, and taken where somebody says so.
registerRoute(
  ({ url }) => url.href === within(SHARE.path),
  async ({ request }) => {
    // What cannot be read as a form shares nothing: the app opens all the same.
    await request.formData().then(layDownShared).catch(console.error);
    return Response.redirect(within('files'), 303);
  },
  'POST',
);
