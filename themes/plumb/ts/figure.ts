// Draws what the module answers, element by element. Only the tags and
// attributes of the drawing vocabulary pass; nothing is ever parsed as markup.
import type { Record_ } from "./records";

const space = "http://www.w3.org/2000/svg";
const tags = new Set("g line rect circle polyline polygon path text".split(" "));
const attributes = new Set("class x y x1 y1 x2 y2 cx cy r rx width height points d text-anchor transform".split(" "));

/** Builds the drawing of an answer; undefined where there is none. */
export function draw(records: Record_[]): SVGElement | undefined {
  const head = records.find((r) => r[0] === "drawing");
  if (!head) return undefined;
  const [, width, height, title, desc] = head;
  const svg = document.createElementNS(space, "svg");
  svg.setAttribute("class", "figure");
  svg.setAttribute("role", "img");
  svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
  for (const [tag, text] of [["title", title], ["desc", desc]]) {
    if (text) svg.append(element(tag, text));
  }
  const open: SVGElement[] = [svg];
  for (const [name, depth, tag, text, ...pairs] of records) {
    if (name !== "node" || !tags.has(tag)) continue;
    const node = element(tag, text);
    for (let i = 0; i + 1 < pairs.length; i += 2) {
      if (attributes.has(pairs[i])) node.setAttribute(pairs[i], pairs[i + 1]);
    }
    open.length = Number(depth) + 1;
    (open[open.length - 1] ?? svg).append(node);
    open.push(node);
  }
  return svg;
}

/**
 * Changes a standing drawing into another of the same shape, touching only
 * what differs: that is most keys, and a phone feels the difference. Tells
 * whether the shapes were the same.
 */
export function redraw(svg: Element, was: Record_[], now: Record_[]): boolean {
  if (was.length !== now.length || !now.every((r, i) => sameShape(was[i], r))) return false;
  const nodes = svg.querySelectorAll([...tags].join());
  let nr = 0;
  now.forEach((r, i) => {
    const old = was[i];
    if (r[0] === "drawing") {
      svg.setAttribute("viewBox", `0 0 ${r[1]} ${r[2]}`);
      for (const [tag, at] of [["title", 3], ["desc", 4]] as const) {
        if (r[at] !== old[at]) svg.querySelector(tag)!.textContent = r[at];
      }
      return;
    }
    if (!tags.has(r[2])) return;
    const node = nodes[nr++];
    if (r[3] !== old[3]) node.textContent = r[3];
    for (let k = 4; k + 1 < r.length; k += 2) {
      if (r[k + 1] !== old[k + 1] && attributes.has(r[k])) node.setAttribute(r[k], r[k + 1]);
    }
  });
  return true;
}

function sameShape(a: Record_, b: Record_): boolean {
  if (a[0] !== b[0] || a.length !== b.length) return false;
  if (a[0] === "drawing") return !a[3] === !b[3] && !a[4] === !b[4];
  if (a[1] !== b[1] || a[2] !== b[2] || !a[3] !== !b[3]) return false;
  for (let k = 4; k < a.length; k += 2) if (a[k] !== b[k]) return false;
  return true;
}

function element(tag: string, text: string): SVGElement {
  const e = document.createElementNS(space, tag);
  e.textContent = text;
  return e;
}
