// Draws what the module answers, element by element. Only the tags and
// attributes of the drawing vocabulary pass; nothing is ever parsed as markup.
import type { ProtocolRecord } from "./records";

const space = "http://www.w3.org/2000/svg";
const tags = new Set("g line rect circle polyline polygon path text".split(" "));
const attributes = new Set("class x y x1 y1 x2 y2 cx cy r rx width height points d text-anchor transform".split(" "));

/** Builds the drawing of an answer. */
export function draw(records: ProtocolRecord[]): SVGElement {
  const svg = document.createElementNS(space, "svg");
  svg.setAttribute("class", "figure");
  svg.setAttribute("role", "img");
  redraw(svg, records);
  return svg;
}

/** What an element was last drawn from. */
const drawn = new WeakMap<Element, ProtocolRecord>();

/** An element whose children are being drawn, and the child that comes next. */
interface Pen {
  within: Element;
  next: Element | null;
}

/**
 * Changes a drawing into what the records say. An element that is where
 * one with its tag is wanted is reused, and only what differs is touched: from
 * key to key that is little, and a phone feels the difference.
 */
export function redraw(svg: Element, records: ProtocolRecord[]): void {
  const pens: Pen[] = [{ within: svg, next: svg.firstElementChild }];
  for (const record of records) {
    if (record[0] === "drawing") {
      const [, width, height, title, desc] = record;
      svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
      if (title) put(pens[0], ["node", "0", "title", title]);
      if (desc) put(pens[0], ["node", "0", "desc", desc]);
    } else if (record[0] === "node" && tags.has(record[2])) {
      const depth = Number(record[1]);
      while (pens.length > depth + 1) wipe(pens.pop()!);
      const node = put(pens[pens.length - 1], record);
      pens.push({ within: node, next: node.firstElementChild });
    }
  }
  for (const pen of pens) wipe(pen);
}

/** The next element: the present one if its tag is right, else a new one. */
function put(pen: Pen, record: ProtocolRecord): Element {
  const [, , tag, text] = record;
  let node = pen.next;
  if (node?.tagName === tag) pen.next = node.nextElementSibling;
  else pen.within.insertBefore((node = document.createElementNS(space, tag)), pen.next);
  const was = drawn.get(node) ?? [];
  drawn.set(node, record);
  if (text !== (was[3] ?? "")) node.textContent = text;
  for (let k = 4; k + 1 < was.length; k += 2) {
    if (was[k] !== record[k]) node.removeAttribute(was[k]);
  }
  for (let k = 4; k + 1 < record.length; k += 2) {
    if ((was[k] !== record[k] || was[k + 1] !== record[k + 1]) && attributes.has(record[k])) node.setAttribute(record[k], record[k + 1]);
  }
  return node;
}

/** Removes what is wanted no more. */
function wipe(pen: Pen): void {
  while (pen.next) {
    const gone = pen.next;
    pen.next = gone.nextElementSibling;
    gone.remove();
  }
}
