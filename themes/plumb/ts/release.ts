// The release: edition, fingerprint, and the names of module, indexes and
// words. No page holds these values; release.json does, beside the id of every
// page. A page uses the release only if its own id is listed there.
import { textOf } from "./files";
import { facts, root, Unavailable } from "./page";

export interface Release {
  edition: string;
  fingerprint: string; // of the calculators' declarations
  module: string; // paths from the root of the site
  index: { [language: string]: string };
  words: { [language: string]: string };
  pages: { [path: string]: string }; // the id of each page
}

let reading: Promise<Release> | undefined;

/**
 * The release this page is part of. It rejects with Unavailable where the list
 * cannot be read, which a later call tries again, or where it lists another
 * version of this page.
 */
export function release(): Promise<Release> {
  return (reading ??= read());
}

async function read(): Promise<Release> {
  const list = await load();
  // The one-file edition is a single page, with its list inside.
  if (facts.pocket || isListed(list, facts.id)) return list;
  await reloadOnce(list);
  throw new Unavailable("ui.update.newer");
}

/** Whether a fetched page is part of the release, so that its form fits the module. */
export async function isPart(page: Document): Promise<boolean> {
  const id = page.querySelector<HTMLElement>("script[data-id]")?.dataset.id;
  return !!id && release().then((list) => isListed(list, id), () => false);
}

/** A service worker answers from the release it serves; no other cache may. */
async function load(): Promise<Release> {
  try {
    return JSON.parse(await textOf("release", new URL("release.json", root).href, { cache: "no-store" }));
  } catch (e) {
    reading = undefined;
    console.error(e);
    throw new Unavailable("ui.calc.no-list");
  }
}

function isListed(list: Release, id: string): boolean {
  return Object.values(list.pages).includes(id);
}

/**
 * Reloads a page that came from a stale cache, if the server has the listed
 * version. A page that was itself loaded by a reload is never reloaded.
 */
async function reloadOnce(list: Release): Promise<void> {
  const [navigation] = performance.getEntriesByType("navigation") as PerformanceNavigationTiming[];
  if (navigation?.type !== "navigate" && navigation?.type !== "back_forward") return;
  const response = await fetch(location.href, { cache: "reload" }).catch(() => undefined);
  const id = response?.ok && (await response.text()).match(/ data-id="?([0-9a-f]+)/)?.[1];
  if (!id || !isListed(list, id)) return;
  location.reload();
  await new Promise(() => {}); // the page ends here
}
