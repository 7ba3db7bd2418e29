// The search box: shows pages below it while the reader types. The index and the
// module are loaded when the box first gets the focus. Before anything is typed the
// box offers the searches of this device, the calculators and the urgent pages.
import { fetchPage } from "./fetched";
import { loadIndex, onRestart, request } from "./module";
import { all, byId, facts, language, make, uiText, Unavailable } from "./page";
import type { ProtocolRecord } from "./records";
import { load, save } from "./store";

const excerptDelay = 250; // ms between the list and better excerpts, so that typing is not delayed
const patience = 400; // ms until the box says that the search is not loaded yet
const recentKey = "searches"; // stored searches, a line each
const maxRecent = 5;

/** What the history keeps of the box: its text, and whether a page of its list was opened. */
interface Stored {
  q?: string;
  open?: boolean;
}

/** Starts the search box of the page. */
export function startSearch(): void {
  const box = document.getElementById("q") as HTMLInputElement;
  const hits = document.getElementById("hits")!;
  const count = make("p", "count");
  count.setAttribute("role", "status");
  const chips = make("p", "chips");
  const list = make("ol");
  hits.append(count, chips, list);
  let latest = 0;
  let notice = ""; // appended to the next count
  onRestart(() => (notice = " " + uiText("ui.restarted")));
  const close = () => {
    latest++; // an answer that is still awaited does not open the list again
    hits.hidden = true;
  };

  const show = (text: string, items: Node[]) => {
    count.textContent = text + notice;
    notice = "";
    list.replaceChildren(...items);
    hits.dataset.q = box.value.trim();
    hits.scrollTop = 0;
    hits.hidden = false;
  };

  // Shows what an answer found; the number of an earlier search is no longer the latest.
  const ask = async (command: string, records: ProtocolRecord[]): Promise<HTMLElement[]> => {
    const number = ++latest;
    const lang = language();
    const waiting = setTimeout(() => number === latest && show(uiText("ui.search.away"), [linkToAll()]), patience);
    try {
      await loadIndex(lang);
      const found = await request(command, lang, records);
      if (number !== latest) return [];
      const items = found.filter((r) => r[0] === "hit").map(hit);
      const n = found.find((r) => r[0] === "found")?.[1] ?? "";
      const q = box.value.trim();
      if (items.length === 0) show(uiText("ui.search.none", { q }), [linkToAll()]);
      else show(uiText("ui.search.many", { n }), items);
      return items;
    } catch (e) {
      if (number === latest) show(uiText(failureKey(e)), [linkToAll()]);
      return [];
    } finally {
      clearTimeout(waiting);
    }
  };

  const find = async () => {
    const q = box.value.trim();
    if (!q) return offer();
    chips.replaceChildren();
    const items = await ask("search", [["q", q]]);
    const number = latest;
    await new Promise((done) => setTimeout(done, excerptDelay));
    for (const item of items) if (number === latest) await improveExcerpt(item, q, () => number === latest);
  };

  // Offers what can be found without typing.
  const offer = () => {
    latest++;
    const again = recent().map((q) => chip(q, () => {
      box.value = q;
      void find();
      box.focus();
    }));
    const kinds = ["calculator", "urgent"].map((kind) => chip(uiText("ui.search." + kind), () => void ask("pages", [["kind", kind]]), kind));
    chips.replaceChildren(...kinds, ...again);
    show("", []);
  };

  const remember = (open: boolean) => {
    const q = box.value.trim();
    if (open && q) save(recentKey, [q, ...recent().filter((r) => r !== q)].slice(0, maxRecent).join("\n"));
    history.replaceState({ ...(history.state as object), q, open }, "");
  };

  // Fills the box again after Back, and shows the list from which a page was opened.
  const restore = () => {
    const { q, open } = (history.state ?? {}) as Stored;
    if (q === undefined) return;
    box.value = q;
    if (open && q) void find();
  };

  box.addEventListener("focus", () => {
    void loadIndex(language()).catch(() => {});
    if (!box.value.trim()) offer();
    else if (hits.dataset.q === box.value.trim()) hits.hidden = false;
    else void find();
  });
  box.addEventListener("input", () => void find());
  box.addEventListener("change", () => remember(false));
  for (const event of ["pageshow", "popstate"]) addEventListener(event, restore);
  const rail = box.closest<HTMLElement>(".rail")!;
  rail.addEventListener("keydown", (e) => moveFocus(e, box, hits, close));
  document.addEventListener("pointerdown", (e) => {
    if (!hits.contains(e.target as Node) && e.target !== box) close();
  });
  rail.addEventListener("focusout", (e) => {
    if (e.relatedTarget && !rail.contains(e.relatedTarget as Node)) close();
  });
  list.addEventListener("click", (e) => {
    if (!(e.target as Element).closest("a")) return;
    remember(true);
    close();
  });
}

/** The searches whose pages were opened on this device, the last one first. */
function recent(): string[] {
  return load(recentKey).split("\n").filter(Boolean);
}

function chip(text: string, act: () => void, kind = ""): HTMLElement {
  const button = make("button", kind && "kind " + kind, text);
  button.type = "button";
  button.addEventListener("click", act);
  return button;
}

/** Arrow keys move the focus between the box and what is below it; Escape returns it to the box. */
function moveFocus(e: KeyboardEvent, box: HTMLInputElement, hits: HTMLElement, close: () => void): void {
  const stops: HTMLElement[] = [box, ...all("a, button", hits)];
  const at = stops.indexOf(document.activeElement as HTMLElement);
  if (at < 0) return;
  if (e.key === "Escape") {
    e.preventDefault(); // a search field would be emptied
    box.focus();
    close();
  } else if (e.key === "ArrowDown" || e.key === "ArrowUp") {
    e.preventDefault();
    stops[at + (e.key === "ArrowDown" ? 1 : -1)]?.focus();
  } else if (e.key === "Enter" && at === 0) {
    e.preventDefault();
    hits.querySelector<HTMLElement>("li a")?.click();
  }
}

function hit([, url, title, section, excerpt, kind]: string[]): HTMLElement {
  const link = make("a", "", make("b", "", title));
  link.href = facts.pocket ? articleHash(url) : facts.root + url;
  if (kind === "calculator" || kind === "urgent") link.append(" ", make("span", "kind " + kind, uiText("ui.search." + kind)));
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
 * Replaces the first lines of a page by those of the section that contain the words. The text
 * is read from the page, but only where that needs no download: from this page, or
 * from the worker's cache.
 */
async function improveExcerpt(item: Element, q: string, isCurrent: () => boolean): Promise<void> {
  const link = item.querySelector("a")!;
  const excerpt = item.querySelector(".excerpt")!;
  if (!link.querySelector(".section") && excerpt.querySelector("mark")) return;
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
