// The service worker: keeps the app's files, so that a reload works without network, and the shop's last list of boards. The build
// puts VERSION and FILES before it and writes it as /sw.js.
const APP = `lapline-app-${VERSION}`;
const SHOP = "lapline-shop";
/** A network that does not answer is taken as away: nobody looks at a white page longer. */
const PATIENCE_MS = 4000;
/** Of the interface only these are kept; a board that is open keeps itself. */
const KEPT_CALLS = /^\/api\/boards(?:\/[^/]+)?$/;

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(APP).then((cache) => cache.addAll(["/", ...FILES])));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(dropOldFiles().then(() => self.clients.claim()));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== self.location.origin) return;
  // A copy of the shop, a photo or a Sheet takes as long as it takes.
  const isPage = request.mode === "navigate" && !pathname.startsWith("/api/");
  if (isPage) event.respondWith(openPage(request));
  else if (FILES.includes(pathname)) event.respondWith(openFile(request));
  else if (KEPT_CALLS.test(pathname) && request.cache !== "no-store") event.respondWith(askShop(request));
});

async function dropOldFiles() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith("lapline-app-") && name !== APP);
  await Promise.all(old.map((name) => caches.delete(name)));
}

/** Names carry a hash of what is in the file: what is kept is right. */
async function openFile(request) {
  return (await (await caches.open(APP)).match(request.url)) ?? fetch(request);
}

/** Each of the app's pages is the first page; the newest one where the shop's computer answers. */
async function openPage(request) {
  try {
    return await fetch(request, { signal: AbortSignal.timeout(PATIENCE_MS) });
  } catch {
    return (await (await caches.open(APP)).match("/")) ?? Response.error();
  }
}

async function askShop(request) {
  const kept = await caches.open(SHOP);
  try {
    const answer = await fetch(request, { signal: AbortSignal.timeout(PATIENCE_MS) });
    if (answer.ok) await kept.put(request.url, answer.clone());
    return answer;
  } catch {
    return (await kept.match(request.url)) ?? Response.error();
  }
}
