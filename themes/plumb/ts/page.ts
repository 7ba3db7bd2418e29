// The page's data, the texts of the interface, which the templates write into the
// page, and helpers for elements.

/** The data attributes of the page's script element. */
export const facts = (document.currentScript as HTMLScriptElement).dataset as {
  lang: string;
  root: string; // relative path to the root of the site
  id: string; // hash of the page without this id
  pocket?: string;
  astray?: string; // the page for missing addresses, sent for an address in a folder below the root
};

/** The URL of the site's root; storage keys carry its path. */
export const root = new URL(facts.root || ".", location.href);

/** The error of a function that cannot be used here. Its message is the key of a text that gives the reason. */
export class Unavailable extends Error {}

/** The language of the page, or of the open article of the one-file edition. */
export function language(): string {
  return document.querySelector<HTMLElement>(".article")?.lang ?? facts.lang;
}

/** A text of the interface with its {slots} filled; the key itself if the page lacks the text. */
export function uiText(key: string, slots: Record<string, string | number> = {}, lang = language()): string {
  for (const id of ["say-", "say-calc-", "say-train-"]) {
    const template = byId(id + lang) as HTMLTemplateElement | null;
    const text = template?.content.getElementById(key)?.textContent;
    if (text) return text.replace(/\{(\w+)\}/g, (all, name) => String(slots[name] ?? all));
  }
  return key;
}

/**
 * The closed articles of the one-file edition. They are detached because in the
 * document they would slow every keystroke; all and byId still find their elements.
 */
const detached = document.createDocumentFragment();

/** All elements that match, as an array; without a second argument also those of closed articles. */
export function all<E extends Element = HTMLElement>(selector: string, within?: ParentNode): E[] {
  if (within) return [...within.querySelectorAll<E>(selector)];
  return [...document.querySelectorAll<E>(selector), ...detached.querySelectorAll<E>(selector)];
}

const articleIds = new Map<string, HTMLElement>();

/** Takes an article out of the document. Its ids are indexed once, because a search by id in a fragment walks through all its nodes. */
export function detach(article: HTMLElement): void {
  if (!articleIds.has(article.id)) for (const e of [article, ...all("[id]", article)]) articleIds.set(e.id, e);
  detached.append(article);
}

/** The element with an id, in an open or a closed article. */
export function byId(id: string): HTMLElement | null {
  return document.getElementById(id) ?? articleIds.get(id) ?? null;
}

/** A new element with a class, text and children. */
export function make<T extends keyof HTMLElementTagNameMap>(tag: T, name = "", ...content: (string | Node)[]): HTMLElementTagNameMap[T] {
  const e = document.createElement(tag);
  if (name) e.className = name;
  e.append(...content);
  return e;
}
