// The decimal mark in the text of a page, as the reader's setting says: a page that says
// 1.308 beside a calculator that says 1,308 would mean two numbers.
import { all } from "./page";

/** A decimal number that is no part of a section number, a date or a word. */
const decimal = /(?<![\p{L}\d.,:/-])(\d+)\.(\d+)(?![\d.]*[.\d])/gu;
/** What comes before a number that is an address in a document, not an amount. */
const cited = /(?:CFR|sec\.|eq\.|ec\.|[Tt]abl[ea]|[Ff]igs?\.|[Pp]art|NIST|ACI|ASTM|ANSI|IRC|EN|DIN)\s+$/u;
/** The parts of a page that are amounts typed or cited, or written by the module. */
const apart = ".sources, pre, code, form, svg, math, [data-calculator], [data-part]";

/** The text of each node as the page had it. */
const original = new Map<Text, string>();

/** Writes the decimal marks of the page's text with a comma, or as the page had them. */
export function writeMarks(mark: string): void {
  if (mark !== "comma") {
    for (const [node, text] of original) node.data = text;
    original.clear();
    return;
  }
  for (const part of all("main")) {
    const walk = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const node = walk.currentNode as Text;
      if (original.has(node) || node.parentElement!.closest(apart)) continue;
      const text = node.data;
      const written = text.replace(decimal, (whole, before: string, after: string, at: number) =>
        cited.test(text.slice(0, at)) ? whole : `${before},${after}`);
      if (written === text) continue;
      original.set(node, text);
      node.data = written;
    }
  }
}
