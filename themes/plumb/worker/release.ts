// The release this worker caches: the list that the build puts in front.

declare const RELEASE: { id: string; bytes: number; files: [url: string, integrity: string, bytes: number][] };

export interface File_ {
  url: string; // relative to the worker
  href: string; // complete
  integrity: string;
}

const scope = new URL(".", location.href);

export const files: File_[] = RELEASE.files.map(([url, integrity]) => ({ url, integrity, href: new URL(url, scope).href }));

/** The prefix of our caches. Other caches of the origin are not touched. */
export const family = "coursebook-" + scope.pathname + "-";
export const cacheName = family + RELEASE.id;

const byHref = new Map(files.map((f) => [f.href, f]));

export function fileAt(url: string): File_ | undefined {
  return byHref.get(new URL(url, scope).href);
}

/**
 * The file behind an address, whatever way the server would have written it:
 * with or without a slash, index.html, .html, or a query.
 */
export function entryFor(url: URL): File_ | undefined {
  const plain = url.origin + url.pathname;
  const bare = plain.replace(/\/index\.html$/, "").replace(/\/+$/, "");
  const ways = [plain, plain + "index.html", bare, bare + "/index.html", bare + ".html"];
  return ways.map((w) => byHref.get(w)).find(Boolean);
}

/** Whether relative links of the file would be wrong at this address. */
export function astray(url: URL, file: File_): boolean {
  const folder = (href: string) => href.slice(0, href.lastIndexOf("/"));
  return folder(url.origin + url.pathname) !== folder(file.href);
}
