// The release that this worker caches: the build writes the list RELEASE before
// this script.

declare const RELEASE: { id: string; bytes: number; files: [url: string, integrity: string, bytes: number][] };

/** A file of the release. */
export interface ReleaseFile {
  url: string; // relative to the worker's script
  href: string; // absolute
  integrity: string;
}

const scope = new URL(".", location.href);

/** The files of the release. */
export const files: ReleaseFile[] = RELEASE.files.map(([url, integrity]) => ({ url, integrity, href: new URL(url, scope).href }));

/** The prefix of the names of this site's caches. Other caches of the origin are left alone. */
export const cachePrefix = "coursebook-" + scope.pathname + "-";
/** The name of the cache of this release. */
export const cacheName = cachePrefix + RELEASE.id;

const byHref = new Map(files.map((f) => [f.href, f]));

/** The file with exactly this address, relative or absolute. */
export function fileAt(url: string): ReleaseFile | undefined {
  return byHref.get(new URL(url, scope).href);
}

/**
 * The file that a server would serve for an address. A final slash, index.html or
 * .html may be missing; a query is ignored.
 */
export function entryFor(url: URL): ReleaseFile | undefined {
  const address = url.origin + url.pathname;
  const trimmed = address.replace(/\/index\.html$/, "").replace(/\/+$/, "");
  const candidates = [address, address + "index.html", trimmed, trimmed + "/index.html", trimmed + ".html"];
  return candidates.map((c) => byHref.get(c)).find(Boolean);
}

/** Whether relative links of the file would be wrong if it is served at this address. */
export function breaksLinks(url: URL, file: ReleaseFile): boolean {
  const folder = (href: string) => href.slice(0, href.lastIndexOf("/"));
  return folder(url.origin + url.pathname) !== folder(file.href);
}
