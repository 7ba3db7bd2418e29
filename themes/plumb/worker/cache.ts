// Fetching, checking and caching the files of the release.
import type { WorkerMessage } from "./messages";
import { cacheName, cachePrefix, fileAt, files, type ReleaseFile } from "./release";

const maxRequests = 4; // at a time: a phone's bandwidth is low

/** Caches all files of the release; on an error deletes the cache, sends the reason and rejects. */
export async function install(send: (r: WorkerMessage) => Promise<void>): Promise<void> {
  const cache = await caches.open(cacheName);
  const older = (await caches.keys()).filter((n) => n.startsWith(cachePrefix) && n !== cacheName);
  const queue = [...files];
  let count = 0;
  let failed = false; // other requests can still end after one has failed
  const work = async () => {
    for (let f = queue.pop(); f; f = queue.pop()) {
      if (!(await cache.match(f.href))) await put(cache, f, await fromOlder(older, f));
      count++;
      if (!failed) await send({ kind: "saving", count, total: files.length });
    }
  };
  try {
    await Promise.all(Array.from({ length: maxRequests }, work));
  } catch (e) {
    failed = true;
    queue.length = 0;
    await caches.delete(cacheName);
    await send({ kind: "failed", why: reason(e) });
    throw e;
  }
}

/** A file from the cache; undefined if it is missing. */
export async function cached(url: string): Promise<Response | undefined> {
  const file = fileAt(url);
  return file && (await caches.open(cacheName)).match(file.href);
}

/** Fetches a missing file and caches it if its hash is right; undefined on failure. */
export async function repair(url: string): Promise<Response | undefined> {
  const file = fileAt(url);
  if (!file) return undefined;
  try {
    const cache = await caches.open(cacheName);
    await put(cache, file);
    return await cache.match(file.href);
  } catch {
    return undefined;
  }
}

/** The edition of the cached release; empty if release.json is missing. */
export async function cachedEdition(): Promise<string> {
  return (await (await cached("release.json"))?.json())?.edition ?? "";
}

class WrongFile extends Error {}

async function put(cache: Cache, file: ReleaseFile, old?: Response): Promise<void> {
  await cache.put(file.href, old ?? (await fetched(file)));
}

/** Fetches a file, bypassing the HTTP cache, and checks its hash. */
async function fetched(file: ReleaseFile): Promise<Response> {
  const response = await fetch(file.href, { cache: "reload", credentials: "same-origin" });
  if (response.status !== 200 || response.type !== "basic") throw new WrongFile(file.url + ": " + response.status);
  const bytes = await response.arrayBuffer();
  if ((await integrityOf(bytes)) !== file.integrity) throw new WrongFile(file.url + ": not the file of this release");
  return copyOf(bytes, response);
}

/** The file from the cache of an older release, if its hash is right. */
async function fromOlder(older: string[], file: ReleaseFile): Promise<Response | undefined> {
  for (const name of older) {
    const response = await (await caches.open(name)).match(file.href);
    if (!response) continue;
    const bytes = await response.arrayBuffer();
    if ((await integrityOf(bytes)) === file.integrity) return copyOf(bytes, response);
  }
  return undefined;
}

/** A copy of a response. Browsers reject a redirected response for a navigation; the copy is not one. */
function copyOf(bytes: ArrayBuffer, from: Response): Response {
  return new Response(bytes, { headers: { "Content-Type": from.headers.get("Content-Type") ?? "application/octet-stream" } });
}

async function integrityOf(bytes: ArrayBuffer): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return "sha256-" + btoa(String.fromCharCode(...sum));
}

function reason(e: unknown): "full" | "changed" | "failed" {
  if (e instanceof DOMException && e.name === "QuotaExceededError") return "full";
  return e instanceof WrongFile ? "changed" : "failed";
}
