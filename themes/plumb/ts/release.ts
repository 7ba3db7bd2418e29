// The release: edition, fingerprint, and the paths of module, indexes and words.
// They are read from release.json, which also lists the id of every page. A page
// uses the release only if its id is listed.
import { textOf } from "./files";
import { facts, root, Unavailable } from "./page";

export interface Release {
  edition: string;
  fingerprint: string; // of the calculators with the amounts of the rules
  rules: { [id: string]: string }; // amounts of the house rules
  module: string; // paths from the root of the site
  index: { [language: string]: string };
  words: { [language: string]: string };
  pages: { [path: string]: string }; // the id of each page by its path
}

let reading: Promise<Release> | undefined;

/**
 * The release of this page. Rejects with Unavailable if release.json cannot be
 * read, which a later call tries again, or if it lists another version of this
 * page.
 */
export function release(): Promise<Release> {
  return (reading ??= read());
}

async function read(): Promise<Release> {
  const list = await load();
  // The one-file edition is a single page that contains its release.json.
  if (facts.pocket || isListed(list, facts.id)) return list;
  await reloadOnce(list);
  throw new Unavailable("ui.update.newer");
}

/** Whether a fetched page is listed in the release; only then its form matches the module. */
export async function isPart(page: Document): Promise<boolean> {
  const id = page.querySelector<HTMLElement>("script[data-id]")?.dataset.id;
  return !!id && release().then((list) => isListed(list, id), () => false);
}

/** Fetches release.json, from the service worker or the server, never from the HTTP cache. */
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
 * Reloads a page that is stale in the HTTP cache, if the server has the listed
 * version. A page that was loaded by a reload is not reloaded again.
 */
async function reloadOnce(list: Release): Promise<void> {
  const [navigation] = performance.getEntriesByType("navigation") as PerformanceNavigationTiming[];
  if (navigation?.type !== "navigate" && navigation?.type !== "back_forward") return;
  const response = await fetch(location.href, { cache: "reload" }).catch(() => undefined);
  const id = response?.ok && (await response.text()).match(/ data-id="?([0-9a-f]+)/)?.[1];
  if (!id || !isListed(list, id)) return;
  location.reload();
  await new Promise(() => {}); // until the reload replaces the page
}
