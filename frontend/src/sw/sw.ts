/**
 * The service worker: it keeps the whole phone app at hand and does nothing else.
 * It never touches /api/: health data does not belong in a cache, and a cached reply could pass for an acknowledgement.
 */
import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute, type PrecacheEntry } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope & { __WB_MANIFEST: (PrecacheEntry | string)[] };

precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html'), { allowlist: [/^\/app\//] }));

// A new version waits until the person says yes, so that no page meets chunks of another build.
self.addEventListener('message', (event) => {
  if (event.data === 'use-new-version') void self.skipWaiting();
});
