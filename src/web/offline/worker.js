/* The service worker: keeps the files of one build, so that the screens open with the server gone. */

const name = 'slateline-VERSION';
const files = 'FILES';

addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(name)
      .then((cache) => cache.addAll(files))
      .then(() => skipWaiting()),
  );
});

addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((one) => one !== name).map((one) => caches.delete(one))))
      .then(() => clients.claim()),
  );
});

addEventListener('fetch', (event) => {
  const address = new URL(event.request.url);
  const isOurs = address.origin === location.origin;
  const isData = /^\/(api|report)(\/|$)/.test(address.pathname);
  // What the book says is never answered from here: the screens keep it themselves and say that they did.
  if (!isOurs || isData || event.request.method !== 'GET') return;
  const wanted = event.request.mode === 'navigate' ? '/' : event.request;
  event.respondWith(answer(wanted, event.request));
});

async function answer(wanted, request) {
  const cache = await caches.open(name);
  return (await cache.match(wanted)) ?? fetch(request);
}
