// The search box: results below it while one types. The index is loaded when
// the box is first touched.
import { pageAt } from "./fetched";
import { ask, loadIndex, onRestart } from "./module";
import { all, byId, facts, language, make, say, Unavailable } from "./page";

const pause = 50; // ms from the last key to the search
const rest = 250; // ms from the first list to better excerpts: typing goes first

export function startSearch(): void {
  const box = document.getElementById("q") as HTMLInputElement;
  const hits = document.getElementById("hits")!;
  const count = make("p", "count");
  count.setAttribute("role", "status");
  const list = make("ol");
  hits.append(count, list);
  let timer = 0;
  let turn = 0;
  let notice = ""; // follows the next count
  onRestart(() => (notice = " " + say("ui.restarted")));
  const close = () => (hits.hidden = true);

  const find = async () => {
    const mine = ++turn;
    const q = box.value.trim();
    if (!q) return close();
    try {
      const lang = language();
      await loadIndex(lang);
      const found = await ask("search", lang, [["q", q]]);
      if (mine !== turn) return;
      const items = found.filter((r) => r[0] === "hit").map(hit);
      count.textContent = items.length === 0 ? say("ui.search.none", { q }) : items.length === 1 ? say("ui.search.one") : say("ui.search.many", { n: items.length });
      count.append(notice);
      notice = "";
      list.replaceChildren(...(items.length ? items : [linkToAll()]));
      hits.hidden = false;
      await new Promise((done) => setTimeout(done, rest));
      for (const item of items) if (mine === turn) await sharpen(item, q, () => mine === turn);
    } catch (e) {
      count.textContent = say(reason(e));
      list.replaceChildren(linkToAll());
      hits.hidden = false;
    }
  };

  box.addEventListener("focus", () => void loadIndex(language()).catch(() => {}), { once: true });
  box.addEventListener("input", () => {
    clearTimeout(timer);
    timer = window.setTimeout(find, pause);
  });
  const rail = box.closest<HTMLElement>(".rail")!;
  rail.addEventListener("keydown", (e) => move(e, box, list, close));
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

/** Arrow keys walk from the box through the results; Escape leads back. */
function move(e: KeyboardEvent, box: HTMLInputElement, list: Element, close: () => void): void {
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

/** The text that gives the reason of a failed search. */
function reason(e: unknown): string {
  if (e instanceof Unavailable && /^ui\.(update|stopped)/.test(e.message)) return e.message;
  console.error(e);
  return "ui.search.away";
}

/** A link to the list of all pages. */
function linkToAll(): HTMLElement {
  const source = document.querySelector<HTMLAnchorElement>(".foot-links a")!;
  return make("li", "", source.cloneNode(true));
}

// Stand around found words. They are spelled so because the characters
// themselves are not allowed in a page, and the one-file edition is one.
const [opens, closes] = decodeURIComponent("%01%02");

/** A text with its found words as mark elements. */
function marked(text: string): (string | Node)[] {
  const [before, ...rest] = text.split(opens);
  return [before, ...rest.flatMap((s) => {
    const [word, after = ""] = s.split(closes);
    return [make("mark", "", word), after];
  })];
}

/**
 * Replaces the opening of a section by the lines that contain the words. The
 * text comes from the page itself, but only where that costs no signal: from
 * this page, or from a worker that has it saved.
 */
async function sharpen(item: Element, q: string, wanted: () => boolean): Promise<void> {
  const link = item.querySelector("a")!;
  const excerpt = item.querySelector(".excerpt")!;
  if (excerpt.querySelector("mark")) return;
  const [address, id] = link.href.split("#");
  const here = address === location.href.split("#")[0];
  if (!here && !navigator.serviceWorker?.controller) return;
  const text = sectionText(here ? document : await pageAt(address), decodeURIComponent(id ?? ""));
  if (!text || !wanted()) return;
  const answer = await ask("mark", language(), [["q", q], ["text", text]]);
  if (wanted() && answer[0]?.[1]) excerpt.replaceChildren(...marked(answer[0][1]));
}

const blocks = "li, p, td, th, dt, dd, figcaption, pre";

/**
 * The text from a heading to the next; without an id, from the title on. Of
 * a quantity only the author's own figure is taken.
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
