// Fetching, checking and keeping the files of the release.
import type { Report } from "./messages";
import { cacheName, family, fileAt, files, type File_ } from "./release";

const atOnce = 4; // requests at a time: a phone's signal is thin

/** Keeps the whole release, or nothing of it. */
export async function install(tell: (r: Report) => Promise<void>): Promise<void> {
  const cache = await caches.open(cacheName);
  const older = (await caches.keys()).filter((n) => n.startsWith(family) && n !== cacheName);
  const queue = [...files];
  let count = 0;
  let broken = false; // requests under way may still end after one has failed
  const carry = async () => {
    for (let f = queue.pop(); f; f = queue.pop()) {
      if (!(await cache.match(f.href))) await put(cache, f, await fromOlder(older, f));
      count++;
      if (!broken) await tell({ kind: "saving", count, total: files.length });
    }
  };
  try {
    await Promise.all(Array.from({ length: atOnce }, carry));
  } catch (e) {
    broken = true;
    queue.length = 0;
    await caches.delete(cacheName);
    await tell({ kind: "failed", why: reason(e) });
    throw e;
  }
}

/** A file as kept; undefined where it is not. */
export async function kept(url: string): Promise<Response | undefined> {
  const file = fileAt(url);
  return file && (await caches.open(cacheName)).match(file.href);
}

/** Fetches a file that is missing and keeps it, if it is the right one. */
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

/** The edition that the kept pages name: a release cannot hold its own hash. */
export async function editionKept(): Promise<string> {
  const page = await (await kept("404.html"))?.text();
  return page?.match(/data-release="?([\w-]+)/)?.[1] ?? "";
}

class Wrong extends Error {}

async function put(cache: Cache, file: File_, old?: Response): Promise<void> {
  await cache.put(file.href, old ?? (await fetched(file)));
}

/** Fetches a file past the browser's own cache and holds it against its hash. */
async function fetched(file: File_): Promise<Response> {
  const response = await fetch(file.href, { cache: "reload", credentials: "same-origin" });
  if (response.status !== 200 || response.type !== "basic") throw new Wrong(file.url + ": " + response.status);
  const bytes = await response.arrayBuffer();
  if ((await integrityOf(bytes)) !== file.integrity) throw new Wrong(file.url + ": not the file of this release");
  return plain(bytes, response);
}

/** Files that have not changed need no signal: an older release has them. */
async function fromOlder(older: string[], file: File_): Promise<Response | undefined> {
  for (const name of older) {
    const response = await (await caches.open(name)).match(file.href);
    if (!response) continue;
    const bytes = await response.arrayBuffer();
    if ((await integrityOf(bytes)) === file.integrity) return plain(bytes, response);
  }
  return undefined;
}

/** A response of our own: a redirected one would be refused for a page. */
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
