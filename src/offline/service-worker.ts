/**
 * Keeps the whole app on the device: page, scripts, styles, sounds, fonts,
 * pictures. The list of files and their revisions is written in by the build.
 * A new version waits until a person lets it in; nothing is taken over under
 * an open page.
 */
import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  precacheAndRoute,
  type PrecacheEntry,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope & {
  readonly __WB_MANIFEST: readonly (PrecacheEntry | string)[];
};

// The name is the one that the build looks for.
// oxlint-disable-next-line no-underscore-dangle
precacheAndRoute([...self.__WB_MANIFEST]);
cleanupOutdatedCaches();

// Places are told apart by the address's hash: every navigation is the one page.
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

// The very first load is served from here at once; a later version claims nothing before it is let in.
clientsClaim();

self.addEventListener('message', (event) => {
  const data: unknown = event.data;
  const asks = typeof data === 'object' && data !== null && 'type' in data ? data.type : undefined;
  if (asks === 'SKIP_WAITING') void self.skipWaiting();
});
