/**
 * The service worker: it keeps the whole phone app at hand and answers with the drawings that the app put by.
 * A walk that another app shares it keeps for the page.
 * It touches nothing else of /api/: health data does not belong in a cache, and a cached reply could pass for an acknowledgement.
 */
import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute, type PrecacheEntry } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { DRAWINGS, isDrawing, movingOf, stillOf } from './drawings';
import { MISSED_PATH, putBy, SHARE_PATH } from './shared';

declare const self: ServiceWorkerGlobalScope & { __WB_MANIFEST: (PrecacheEntry | string)[] };

precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html'), { allowlist: [/^\/app\//] }));

registerRoute(({ url, sameOrigin }) => sameOrigin && isDrawing(url), async ({ request }) => {
  // The app's own call is to bring a newer one: only image elements get what is kept.
  const kept = request.destination === 'image' ? await keptDrawing(request) : undefined;
  return kept ?? fetch(request);
});

// The redirect makes the next load an ordinary one: loading again does not share again.
registerRoute(({ url, sameOrigin }) => sameOrigin && url.pathname === SHARE_PATH, async ({ request }) => {
  const kept = await request.formData().then(putBy).then(() => true, () => false);
  return Response.redirect(kept ? SHARE_PATH : MISSED_PATH, 303);
}, 'POST');

async function keptDrawing({ url }: Request): Promise<Response | undefined> {
  try {
    const kept = await (await caches.open(DRAWINGS)).match(movingOf(url), { ignoreVary: true });
    if (!kept || url === movingOf(url)) return kept;
    return new Response(stillOf(await kept.text()), { headers: { 'Content-Type': 'image/svg+xml' } });
  } catch {
    return undefined; // storage refused: the network is asked
  }
}

// A new version waits until the person says yes, so that no page meets chunks of another build.
self.addEventListener('message', (event) => {
  if (event.data === 'use-new-version') void self.skipWaiting();
});
