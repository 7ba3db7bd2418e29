// The page's own data, the texts of the interface, which the templates put
// into the page, and helpers for its elements.

/** The data attributes of the page's script element. */
export const facts = (document.currentScript as HTMLScriptElement).dataset as {
  lang: string;
  root: string; // relative path to the root of the site
  id: string; // hash of the page without this id
  pocket?: string;
};

/** The URL of the site's root; storage keys carry its path. */
export const root = new URL(facts.root || ".", location.href);

/** Why a service of the script is closed. The message is the key of a text. */
export class Unavailable extends Error {}

/** The language on screen: of the page, or of the open article of the one-file edition. */
export function language(): string {
  return document.querySelector<HTMLElement>(".article")?.lang ?? facts.lang;
}

/** A text of the interface with its {slots} filled. */
export function say(key: string, slots: Record<string, string | number> = {}, lang = language()): string {
  for (const id of ["say-", "say-calc-", "say-train-"]) {
    const box = byId(id + lang) as HTMLTemplateElement | null;
    const text = box?.content.getElementById(key)?.textContent;
    if (text) return text.replace(/\{(\w+)\}/g, (all, name) => String(slots[name] ?? all));
  }
  return key;
}

/**
 * The closed articles of the one-file edition. They are outside the document,
 * where they would slow every key; all and byId still find their elements.
 */
const detached = document.createDocumentFragment();

/** All elements that match, as an array. */
export function all<E extends Element = HTMLElement>(selector: string, within?: ParentNode): E[] {
  if (within) return [...within.querySelectorAll<E>(selector)];
  return [...document.querySelectorAll<E>(selector), ...detached.querySelectorAll<E>(selector)];
}

const articleIds = new Map<string, HTMLElement>();

/** Takes an article out of the document. Its ids are indexed once: a fragment finds an id by a walk through all its nodes. */
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
