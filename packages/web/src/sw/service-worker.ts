declare const self: ServiceWorkerGlobalScope;

/** Both are filled in by the build: a digest of all outputs, and the files to keep, as JSON. */
const VERSION = "__NIGHTSPAN_VERSION__";
const FILES: unknown = JSON.parse("__NIGHTSPAN_FILES__");

const PREFIX = "nightspan-";
const CACHE = `${PREFIX}${VERSION}`;
const MATCH: CacheQueryOptions = { ignoreSearch: true, ignoreVary: true };

self.addEventListener("install", (event) => event.waitUntil(keepAll()));

self.addEventListener("activate", (event) => event.waitUntil(takeOver()));

self.addEventListener("message", (event) => {
  // A new version waits until the person asks for it.
  if (event.data === "skip") event.waitUntil(self.skipWaiting());
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(request.mode === "navigate" ? answer(new Request("./")) : answer(request));
});

async function keepAll(): Promise<void> {
  const cache = await caches.open(CACHE);
  const names = Array.isArray(FILES) ? FILES.filter((file) => typeof file === "string") : [];
  await cache.addAll(names.map((name) => new Request(name, { cache: "reload" })));
}

async function takeOver(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
}

/** From the cache; else from the net, kept for next time: the fonts of scripts first met today. */
async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(request, MATCH);
  if (kept !== undefined) return kept;
  const fresh = await fetch(request);
  if (fresh.ok && fresh.type === "basic") await cache.put(request, fresh.clone());
  return fresh;
}
