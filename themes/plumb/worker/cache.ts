// Fetching, checking and caching the files of the release.
import type { Report } from "./messages";
import { cacheName, family, fileAt, files, type File_ } from "./release";

const atOnce = 4; // requests at a time: a phone's signal is thin

/** Caches the whole release, or nothing of it. */
export async function install(tell: (r: Report) => Promise<void>): Promise<void> {
  const cache = await caches.open(cacheName);
  const older = (await caches.keys()).filter((n) => n.startsWith(family) && n !== cacheName);
  const queue = [...files];
  let count = 0;
  let broken = false; // requests under way may still end after one has failed
  const work = async () => {
    for (let f = queue.pop(); f; f = queue.pop()) {
      if (!(await cache.match(f.href))) await put(cache, f, await fromOlder(older, f));
      count++;
      if (!broken) await tell({ kind: "saving", count, total: files.length });
    }
  };
  try {
    await Promise.all(Array.from({ length: atOnce }, work));
  } catch (e) {
    broken = true;
    queue.length = 0;
    await caches.delete(cacheName);
    await tell({ kind: "failed", why: reason(e) });
    throw e;
  }
}

/** A file from the cache; undefined where it is missing. */
export async function cached(url: string): Promise<Response | undefined> {
  const file = fileAt(url);
  return file && (await caches.open(cacheName)).match(file.href);
}

/** Fetches a missing file and caches it, if its hash is right. */
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

/** The edition of the cached release; empty where its list is missing. */
export async function cachedEdition(): Promise<string> {
  return (await (await cached("release.json"))?.json())?.edition ?? "";
}

class Wrong extends Error {}

async function put(cache: Cache, file: File_, old?: Response): Promise<void> {
  await cache.put(file.href, old ?? (await fetched(file)));
}

/** Fetches a file, bypassing the HTTP cache, and checks its hash. */
async function fetched(file: File_): Promise<Response> {
  const response = await fetch(file.href, { cache: "reload", credentials: "same-origin" });
  if (response.status !== 200 || response.type !== "basic") throw new Wrong(file.url + ": " + response.status);
  const bytes = await response.arrayBuffer();
  if ((await integrityOf(bytes)) !== file.integrity) throw new Wrong(file.url + ": not the file of this release");
  return plain(bytes, response);
}

/** The file from the cache of an older release, where it is the same. */
async function fromOlder(older: string[], file: File_): Promise<Response | undefined> {
  for (const name of older) {
    const response = await (await caches.open(name)).match(file.href);
    if (!response) continue;
    const bytes = await response.arrayBuffer();
    if ((await integrityOf(bytes)) === file.integrity) return plain(bytes, response);
  }
  return undefined;
}

/** A copy of a response: a redirected one is refused for a navigation. */
function plain(bytes: ArrayBuffer, from: Response): Response {
  return new Response(bytes, { headers: { "Content-Type": from.headers.get("Content-Type") ?? "application/octet-stream" } });
}

async function integrityOf(bytes: ArrayBuffer): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return "sha256-" + btoa(String.fromCharCode(...sum));
}

function reason(e: unknown): "full" | "changed" | "failed" {
  if (e instanceof DOMException && e.name === "QuotaExceededError") return "full";
  return e instanceof Wrong ? "changed" : "failed";
}
