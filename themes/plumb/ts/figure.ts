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

function element(tag: string, text: string): SVGElement {
  const e = document.createElementNS(space, tag);
  e.textContent = text;
  return e;
}
