// The worker caches one release on the device, whole or not at all, and serves
// that release only. The build puts the list of its files in front.
//
//   release.ts   the list of files, and the file behind an address
//   cache.ts     fetching, checking and caching files
//   messages.ts  the messages between page and worker
//
// A new worker waits until the reader accepts it; then it takes over all
// tabs, which reload, and only then the old release is deleted.
import { cached, cachedEdition, install, repair } from "./cache";
import type { Report } from "./messages";
import { astray, cacheName, entryFor, family, files } from "./release";

const worker = self as unknown as ServiceWorkerGlobalScope;

worker.addEventListener("install", (e) => e.waitUntil(install(toAll)));

worker.addEventListener("activate", (e) => e.waitUntil((async () => {
  for (const name of await caches.keys()) {
    if (name.startsWith(family) && name !== cacheName) await caches.delete(name);
  }
  await worker.clients.claim();
})()));

worker.addEventListener("fetch", (e) => {
  const url = new URL(e.request.url);
  if (e.request.method !== "GET" || url.origin !== location.origin) return;
  const entry = entryFor(url);
  if (entry && e.request.mode === "navigate" && astray(url, entry)) e.respondWith(Response.redirect(entry.href + url.hash));
  else if (entry) e.respondWith(serve(entry.url));
  else if (e.request.mode === "navigate") e.respondWith(elsewhere(e.request));
});

worker.addEventListener("message", (e) => {
  if (e.data?.type === "accept") e.waitUntil(worker.skipWaiting());
  if (e.data?.type === "status") e.waitUntil(report(e.source as Client | null));
});

/** A file of the release. A missing one is fetched and checked again. */
async function serve(url: string): Promise<Response> {
  return (await cached(url)) ?? (await repair(url)) ?? Response.error();
}

/** A page that is not in this release: from the network, else the page for missing addresses. */
async function elsewhere(request: Request): Promise<Response> {
  try {
    return await fetch(request);
  } catch {
    return (await cached("404.html")) ?? Response.error();
  }
}

/** Reports what is cached, fetches what is missing, and reports again. */
async function report(to: Client | null): Promise<void> {
  const count = async (): Promise<number> => {
    const cache = await caches.open(cacheName);
    const there = new Set((await cache.keys()).map((r) => r.url));
    const missing = files.filter((f) => !there.has(f.href));
    const status: Report = { kind: "status", edition: await cachedEdition(), count: files.length - missing.length, total: files.length };
    to?.postMessage(status);
    for (const f of missing) await repair(f.url);
    return missing.length;
  };
  if (await count()) await count();
}

async function toAll(message: Report): Promise<void> {
  for (const client of await worker.clients.matchAll({ includeUncontrolled: true })) client.postMessage(message);
}
