// The search box: shows results below it during typing. The index is loaded when
// the box first gets the focus.
import { fetchPage } from "./fetched";
import { loadIndex, onRestart, request } from "./module";
import { all, byId, facts, language, make, uiText, Unavailable } from "./page";

const searchDelay = 50; // ms between the last keystroke and the search
const excerptDelay = 250; // ms between the list and better excerpts, so that typing is not delayed

/** Starts the search box of the page. */
export function startSearch(): void {
  const box = document.getElementById("q") as HTMLInputElement;
  const hits = document.getElementById("hits")!;
  const count = make("p", "count");
  count.setAttribute("role", "status");
  const list = make("ol");
  hits.append(count, list);
  let timer = 0;
  let latest = 0;
  let notice = ""; // appended to the next count
  onRestart(() => (notice = " " + uiText("ui.restarted")));
  const close = () => (hits.hidden = true);

  const find = async () => {
    const number = ++latest;
    const q = box.value.trim();
    if (!q) return close();
    try {
      const lang = language();
      await loadIndex(lang);
      const found = await request("search", lang, [["q", q]]);
      if (number !== latest) return;
      const items = found.filter((r) => r[0] === "hit").map(hit);
      count.textContent = items.length === 0 ? uiText("ui.search.none", { q }) : items.length === 1 ? uiText("ui.search.one") : uiText("ui.search.many", { n: items.length });
      count.append(notice);
      notice = "";
      list.replaceChildren(...(items.length ? items : [linkToAll()]));
      hits.hidden = false;
      await new Promise((done) => setTimeout(done, excerptDelay));
      for (const item of items) if (number === latest) await improveExcerpt(item, q, () => number === latest);
    } catch (e) {
      count.textContent = uiText(failureKey(e));
      list.replaceChildren(linkToAll());
      hits.hidden = false;
    }
  };

  box.addEventListener("focus", () => void loadIndex(language()).catch(() => {}), { once: true });
  box.addEventListener("input", () => {
    clearTimeout(timer);
    timer = window.setTimeout(find, searchDelay);
  });
  const rail = box.closest<HTMLElement>(".rail")!;
  rail.addEventListener("keydown", (e) => moveFocus(e, box, list, close));
  box.addEventListener("focus", () => box.value.trim() && list.children.length && (hits.hidden = false));
  document.addEventListener("pointerdown", (e) => {
    if (!hits.contains(e.target as Node) && e.target !== box) close();
  });
  rail.addEventListener("focusout", (e) => {
    if (e.relatedTarget && !rail.contains(e.relatedTarget as Node)) close();
  });
  list.addEventListener("click", (e) => {
    if ((e.target as Element).closest("a")) close();
  });
}

/** Arrow keys move the focus between the box and the results; Escape returns it to the box. */
function moveFocus(e: KeyboardEvent, box: HTMLInputElement, list: Element, close: () => void): void {
  const stops: HTMLElement[] = [box, ...all("a", list)];
  const at = stops.indexOf(document.activeElement as HTMLElement);
  if (at < 0) return;
  if (e.key === "Escape") {
    close();
    box.focus();
  } else if (e.key === "ArrowDown" || e.key === "ArrowUp") {
    e.preventDefault();
    stops[at + (e.key === "ArrowDown" ? 1 : -1)]?.focus();
  } else if (e.key === "Enter" && at === 0) {
    e.preventDefault();
    stops[1]?.click();
  }
}

function hit([, url, title, section, excerpt]: string[]): HTMLElement {
  const link = make("a", "", make("b", "", title));
  link.href = facts.pocket ? articleHash(url) : facts.root + url;
  if (section) link.append(make("span", "section", section));
  link.append(make("span", "excerpt", ...marked(excerpt)));
  return make("li", "", link);
}

/** The hash of a page inside the one-file edition. */
function articleHash(url: string): string {
  if (url === "index.html") return document.querySelector<HTMLAnchorElement>(".brand")!.hash;
  return "#" + url.replace(".html", "").replaceAll(/[/#]/g, ".");
}

/** The key of the text that gives why a search failed. */
function failureKey(e: unknown): string {
  if (e instanceof Unavailable && /^ui\.(update|stopped)/.test(e.message)) return e.message;
  console.error(e);
  return "ui.search.away";
}

/** A link to the list of all pages. */
function linkToAll(): HTMLElement {
  const source = document.querySelector<HTMLAnchorElement>(".foot-links a")!;
  return make("li", "", source.cloneNode(true));
}

// The characters around found words. They are written encoded because HTML, and
// so the one-file edition, does not allow the characters themselves.
const [markStart, markEnd] = decodeURIComponent("%01%02");

/** A text with the found words in mark elements. */
function marked(text: string): (string | Node)[] {
  const [before, ...rest] = text.split(markStart);
  return [before, ...rest.flatMap((s) => {
    const [word, after = ""] = s.split(markEnd);
    return [make("mark", "", word), after];
  })];
}

/**
 * Replaces the first lines of a section by those that contain the words. The text
 * is read from the page, but only where that needs no download: from this page, or
 * from the worker's cache.
 */
async function improveExcerpt(item: Element, q: string, isCurrent: () => boolean): Promise<void> {
  const link = item.querySelector("a")!;
  const excerpt = item.querySelector(".excerpt")!;
  if (excerpt.querySelector("mark")) return;
  const [address, id] = link.href.split("#");
  const here = address === location.href.split("#")[0];
  if (!here && !navigator.serviceWorker?.controller) return;
  const text = sectionText(here ? document : await fetchPage(address), decodeURIComponent(id ?? ""));
  if (!text || !isCurrent()) return;
  const answer = await request("mark", language(), [["q", q], ["text", text]]);
  if (isCurrent() && answer[0]?.[1]) excerpt.replaceChildren(...marked(answer[0][1]));
}

const blocks = "li, p, td, th, dt, dd, figcaption, pre";

/**
 * The text from a heading to the next; without an id, from the title on. Of a
 * quantity in both systems only the author's figure is included.
 */
function sectionText(page: Document | null, id: string): string {
  const named = !id ? page?.querySelector("main") : page === document ? byId(id) : page?.getElementById(id);
  const head = named?.matches("main, .article") ? named.querySelector("h1") : named;
  let text = "";
  let block: Element | null = null;
  for (let e = head?.nextElementSibling; e && !/^H[1-6]$/.test(e.tagName); e = e.nextElementSibling) {
    if (e.matches("[data-calc], [data-card], .who")) continue;
    const walker = page!.createTreeWalker(e, NodeFilter.SHOW_TEXT);
    for (let n = walker.nextNode(); n; n = walker.nextNode()) {
      const parent = n.parentElement!;
      const within = parent.closest(blocks);
      if (within !== block) text += " ";
      block = within;
      const converted = parent.matches(".q > :not(.own)") && parent.parentElement!.querySelector(":scope > .own");
      if (!converted) text += n.textContent;
    }
  }
  return text.replace(/\s+/g, " ").trim();
}
