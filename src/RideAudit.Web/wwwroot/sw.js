// Keeps the page for when there is no network. The list and its version are filled in when the site is written.
const version = '';
const files = [];

addEventListener('install', event => {
  event.waitUntil((async () => {
    const cache = await caches.open(`rideaudit-${version}`);
    await cache.addAll(files.map(file => new Request(file, { cache: 'reload' })));
    await skipWaiting();
  })());
});

addEventListener('activate', event => {
  event.waitUntil((async () => {
    const old = (await caches.keys()).filter(name => name.startsWith('rideaudit-') && name !== `rideaudit-${version}`);
    await Promise.all(old.map(name => caches.delete(name)));
    await clients.claim();
  })());
});

addEventListener('fetch', event => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(registration.scope)) return;
  event.respondWith((async () => {
    const cache = await caches.open(`rideaudit-${version}`);
    const wanted = request.mode === 'navigate' ? new Request(registration.scope + 'index.html') : request;
    return (await cache.match(wanted, { ignoreSearch: true })) ?? fetch(request);
  })());
});
