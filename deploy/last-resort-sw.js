// Served as /app/sw.js it takes a broken service worker off every phone at its next visit: the app then comes from the network.
// What was entered is in the database and is not touched; drawings and shared walks stay too.
self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(leave()));

async function leave() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith('workbox-precache')).map((name) => caches.delete(name)));
  await self.registration.unregister();
}
