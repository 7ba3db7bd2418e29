// Builds the SVG of a drawing from the module's records, element by element. Only
// the listed tags and attributes are allowed; nothing is parsed as markup.
import type { ProtocolRecord } from "./records";

const namespace = "http://www.w3.org/2000/svg";
const tags = new Set("g line rect circle polyline polygon path text".split(" "));
const attributes = new Set("class x y x1 y1 x2 y2 cx cy r rx width height points d text-anchor transform".split(" "));

/** Builds the drawing of an answer. */
export function draw(records: ProtocolRecord[]): SVGElement {
  const svg = document.createElementNS(namespace, "svg");
  svg.setAttribute("class", "figure");
  svg.setAttribute("role", "img");
  redraw(svg, records);
  return svg;
}

/** The record an element was last built from. */
const drawn = new WeakMap<Element, ProtocolRecord>();

/** An element whose children are being built, and the next child to reuse. */
interface Cursor {
  within: Element;
  next: Element | null;
}

/**
 * Updates a drawing to the records. An element with the right tag is reused, and
 * only attributes and texts that differ are written: between two keystrokes few
 * do, which saves time on a phone.
 */
export function redraw(svg: Element, records: ProtocolRecord[]): void {
  const cursors: Cursor[] = [{ within: svg, next: svg.firstElementChild }];
  for (const record of records) {
    if (record[0] === "drawing") {
      const [, width, height, title, desc] = record;
      svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
      if (title) place(cursors[0], ["node", "0", "title", title]);
      if (desc) place(cursors[0], ["node", "0", "desc", desc]);
    } else if (record[0] === "node" && tags.has(record[2])) {
      const depth = Number(record[1]);
      while (cursors.length > depth + 1) removeRest(cursors.pop()!);
      const node = place(cursors[cursors.length - 1], record);
      cursors.push({ within: node, next: node.firstElementChild });
    }
  }
  for (const cursor of cursors) removeRest(cursor);
}

/** The next element: the present one if its tag is right, else a new one. */
function place(cursor: Cursor, record: ProtocolRecord): Element {
  const [, , tag, text] = record;
  let node = cursor.next;
  if (node?.tagName === tag) cursor.next = node.nextElementSibling;
  else cursor.within.insertBefore((node = document.createElementNS(namespace, tag)), cursor.next);
  const previous = drawn.get(node) ?? [];
  drawn.set(node, record);
  if (text !== (previous[3] ?? "")) node.textContent = text;
  for (let k = 4; k + 1 < previous.length; k += 2) {
    if (previous[k] !== record[k]) node.removeAttribute(previous[k]);
  }
  for (let k = 4; k + 1 < record.length; k += 2) {
    if ((previous[k] !== record[k] || previous[k + 1] !== record[k + 1]) && attributes.has(record[k])) node.setAttribute(record[k], record[k + 1]);
  }
  return node;
}

/** Removes the children that were not reused. */
function removeRest(cursor: Cursor): void {
  while (cursor.next) {
    const gone = cursor.next;
    cursor.next = gone.nextElementSibling;
    gone.remove();
  }
}
