// The service worker caches one release, all of its files or none, and serves that
// release only. The build writes the list of files before this script.
//
//   release.ts   the list of files, and the file of an address
//   cache.ts     fetching, checking and caching files
//   messages.ts  the messages between page and worker
//
// A new worker waits until the reader accepts it. Then it controls all tabs, which
// reload, and deletes the cache of the old release.
import { cached, cachedEdition, install, repair } from "./cache";
import type { WorkerMessage } from "./messages";
import { breaksLinks, cacheName, cachePrefix, entryFor, fileAt, files } from "./release";

const worker = self as unknown as ServiceWorkerGlobalScope;

worker.addEventListener("install", (e) => e.waitUntil(install(sendToAll)));

worker.addEventListener("activate", (e) => e.waitUntil((async () => {
  for (const name of await caches.keys()) {
    if (name.startsWith(cachePrefix) && name !== cacheName) await caches.delete(name);
  }
  await worker.clients.claim();
})()));

worker.addEventListener("fetch", (e) => {
  const url = new URL(e.request.url);
  if (e.request.method !== "GET" || url.origin !== location.origin) return;
  const entry = entryFor(url);
  if (entry && e.request.mode === "navigate" && breaksLinks(url, entry)) e.respondWith(Response.redirect(entry.href + url.hash));
  else if (entry) e.respondWith(serve(entry.url));
  else if (e.request.mode === "navigate") e.respondWith(fetchOr404(e.request));
});

worker.addEventListener("message", (e) => {
  if (e.data?.type === "accept") e.waitUntil(worker.skipWaiting());
  if (e.data?.type === "status") e.waitUntil(sendStatus(e.source as Client | null));
});

/** A file of the release from the cache; a missing file is fetched and checked. */
async function serve(url: string): Promise<Response> {
  return (await cached(url)) ?? (await repair(url)) ?? Response.error();
}

/**
 * A page that is not in the release: from the network. Where that has none, a redirect to
 * the page for missing addresses, whose relative links are right only at its own address.
 */
async function fetchOr404(request: Request): Promise<Response> {
  const missing = fileAt("404.html");
  const answer = await fetch(request).catch(() => undefined);
  if (answer && answer.status !== 404 || !missing) return answer ?? Response.error();
  return Response.redirect(missing.href);
}

/** Sends the number of cached files; if files are missing, fetches them and sends the number again. */
async function sendStatus(to: Client | null): Promise<void> {
  const count = async (): Promise<number> => {
    const cache = await caches.open(cacheName);
    const cachedUrls = new Set((await cache.keys()).map((r) => r.url));
    const missing = files.filter((f) => !cachedUrls.has(f.href));
    const status: WorkerMessage = { kind: "status", edition: await cachedEdition(), count: files.length - missing.length, total: files.length };
    to?.postMessage(status);
    for (const f of missing) await repair(f.url);
    return missing.length;
  };
  if (await count()) await count();
}

async function sendToAll(message: WorkerMessage): Promise<void> {
  for (const client of await worker.clients.matchAll({ includeUncontrolled: true })) client.postMessage(message);
}
