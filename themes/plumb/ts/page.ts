// What the page says of itself, and the texts of the interface, which all
// stand in the page: the scripts hold none.

/** The data attributes of the page's script element. */
export const facts = (document.currentScript as HTMLScriptElement).dataset as {
  lang: string;
  kind: string;
  root: string; // relative way to the root of the site
  release: string;
  fingerprint: string;
  module: string;
  index: string;
  words: string;
  pocket?: string;
};

/** The address of the site's root; what is kept on the device carries its path. */
export const root = new URL(facts.root || ".", location.href);

/** The language the reader sees: of the page, or of the open leaf of the one-file edition. */
export function tongue(): string {
  return document.querySelector<HTMLElement>(".leaf")?.lang ?? facts.lang;
}

/** A text of the interface with its {slots} filled. */
export function say(key: string, slots: Record<string, string | number> = {}, lang = tongue()): string {
  for (const id of ["say-", "say-calc-", "say-train-"]) {
    const box = byId(id + lang) as HTMLTemplateElement | null;
    const text = box?.content.getElementById(key)?.textContent;
    if (text) return text.replace(/\{(\w+)\}/g, (all, name) => String(slots[name] ?? all));
  }
  return key;
}

/**
 * The leaves of the one-file edition that are not open. They are no part of the
 * document, which else would be slow at every key; all and byId know them.
 */
const away = document.createDocumentFragment();

/** All elements that match, as an array. */
export function all<E extends Element = HTMLElement>(selector: string, within?: ParentNode): E[] {
  if (within) return [...within.querySelectorAll<E>(selector)];
  return [...document.querySelectorAll<E>(selector), ...away.querySelectorAll<E>(selector)];
}

const inLeaves = new Map<string, HTMLElement>();

/** Takes a leaf out of the document. A fragment looks for an id through all it holds, so they are listed once. */
export function putAway(leaf: HTMLElement): void {
  if (!inLeaves.has(leaf.id)) for (const e of [leaf, ...all("[id]", leaf)]) inLeaves.set(e.id, e);
  away.append(leaf);
}

/** The element with an id, be its leaf open or not. */
export function byId(id: string): HTMLElement | null {
  return document.getElementById(id) ?? inLeaves.get(id) ?? null;
}

/** A new element with a class, text and children. */
export function make(tag: string, name = "", ...content: (string | Node)[]): HTMLElement {
  const e = document.createElement(tag);
  if (name) e.className = name;
  e.append(...content);
  return e;
}
