// Shows what the module answers to a run. Nothing of an earlier answer is
// left standing: where there is no result, the numbers go.
import { placeOf } from "./entries";
import { draw, redraw } from "./figure";
import { all, make, say } from "./page";
import type { ProtocolRecord } from "./records";

/** The part of a calculator that the templates marked with data-part. */
export function part(section: Element, name: string): HTMLElement {
  return section.querySelector<HTMLElement>(`[data-part=${name}]`)!;
}

export function showResult(section: HTMLElement, fields: Element, records: ProtocolRecord[]): void {
  const state = records.find((r) => r[0] === "state")?.[1];
  const notes = records.filter((r) => r[0] === "note");
  const outs = records.filter((r) => r[0] === "out");
  clearErrors(fields);
  const ok = state === "ok";
  const refusals = notes.filter((n) => n[1] === "refusal");
  for (const [, , path, text] of refusals) {
    const place = path && placeOf(fields, path);
    if (place) markError(place, text);
  }
  const none = part(section, "none");
  none.hidden = ok;
  none.textContent = ok ? "" : state === "bad" ? say("ui.calc.see-input") : say("ui.calc.refused") + " " + refusals.map((n) => n[3]).join(" ");
  for (const given of all("[data-part=given]", section)) given.hidden = !ok;
  showOutputs(section, ok ? outs : []);
  showLists(section, ok ? outs : []);
  const cautions = notes.filter((n) => n[1] !== "refusal");
  renew(part(section, "notes"), cautions, (box) => box.replaceChildren(...cautions.map((n) => note(n[1], n[3]))));
  showMore(section, records);
  announce(section, none.textContent);
}

/** Takes away the result that came with the form. */
export function clearResult(section: HTMLElement): void {
  for (const box of all("[data-part=given], [data-part=work]", section)) box.hidden = true;
  part(section, "notes").replaceChildren();
}

/** Shows the details of a result: drawing, unrounded values, arithmetic. */
export function showMore(section: HTMLElement, records: ProtocolRecord[]): void {
  const outs = records.filter((r) => r[0] === "out");
  const steps = records.filter((r) => r[0] === "step");
  showDrawing(section, records);
  unfolded(part(section, "exact"), !outs.length, () => showExact(section, outs));
  unfolded(part(section, "work"), !steps.length, () => showWork(section, steps));
}

const folded = new WeakMap<Element, number>();

/** Fills open and empty parts at once, and folded parts after the result has been painted. */
function unfolded(box: HTMLElement, none: boolean, fill: () => void): void {
  clearTimeout(folded.get(box));
  if (none || (box as HTMLDetailsElement).open) fill();
  else folded.set(box, window.setTimeout(fill, 100));
}

function clearErrors(fields: Element): void {
  for (const error of all(".error", fields)) error.remove();
  for (const input of all("[aria-invalid]", fields)) {
    input.removeAttribute("aria-invalid");
    input.removeAttribute("aria-errormessage");
    describe(input, (id) => !id.startsWith(errorId));
  }
}

const errorId = "error-";
let errors = 0;

/** Drops what describes an input no more, and puts something new in front. */
function describe(input: Element, stays: (id: string) => boolean, first = ""): void {
  const ids = (input.getAttribute("aria-describedby") ?? "").split(" ").filter((id) => id && stays(id));
  if (first) ids.unshift(first);
  if (ids.length) input.setAttribute("aria-describedby", ids.join(" "));
  else input.removeAttribute("aria-describedby");
}

/** Says at a field, row or cell what is wrong with it. */
function markError(place: HTMLElement, text: string): void {
  const error = make(place.matches("label") ? "span" : "p", "error", text);
  error.id = errorId + ++errors;
  const input = place.matches(".rows, li") ? null : place.querySelector("input:not([type=radio], [type=checkbox]), select");
  // under what was typed, above keys and hints: the result may cover those
  if (input?.parentElement === place) input.after(error);
  else place.append(error);
  if (!input) return;
  input.setAttribute("aria-invalid", "true");
  input.setAttribute("aria-errormessage", error.id);
  describe(input, () => true, error.id);
}

const standing = new WeakMap<Element, string>();

/** Builds a part anew, but only where it would differ from the present one. */
function renew<E extends Element>(box: E, records: ProtocolRecord[], build: (box: E) => void): void {
  const now = JSON.stringify(records);
  if (standing.get(box) === now) return;
  standing.set(box, now);
  build(box);
}

/** Writes a text where it would differ from the present one, which may be both systems of units side by side. */
function write(box: Element, text: string): void {
  if (box.childElementCount || box.textContent !== text) box.textContent = text;
}

function showOutputs(section: Element, outs: ProtocolRecord[]): void {
  const shown = new Map(outs.map((o) => [o[1], o[3]]));
  for (const box of all("[data-out]", section)) {
    const text = shown.get(box.dataset.out!);
    box.hidden = text === undefined;
    write(box.lastElementChild!, text ?? "");
  }
}

function showLists(section: Element, outs: ProtocolRecord[]): void {
  for (const table of all<HTMLTableElement>("[data-list]", section)) {
    const cols = table.dataset.cols!.trim().split(" ");
    const mine = outs.filter(([, path]) => path.startsWith(table.dataset.list + "."));
    table.parentElement!.hidden = !mine.length;
    fillTable(table.tBodies[0], cols, mine);
  }
}

/** Fills a table with the outputs of its columns, reusing the present rows. */
function fillTable(body: HTMLTableSectionElement, cols: string[], outs: ProtocolRecord[]): void {
  const rows: string[][] = [];
  for (const [, path, , shown] of outs) {
    const [, row, col] = path.split(".");
    (rows[Number(row) - 1] ??= cols.map(() => ""))[cols.indexOf(col)] = shown;
  }
  while (body.rows.length > rows.length) body.deleteRow(-1);
  rows.forEach((texts, i) => {
    const row = body.rows[i] ?? body.insertRow();
    texts.forEach((text, k) => write(row.cells[k] ?? row.insertCell(), text));
  });
}

function note(level: string, text: string): HTMLElement {
  if (level === "ask") return make("p", "ask", make("strong", "", say("ui.calc.ask")), " " + text);
  const box = make("aside", "caution " + level, make("p", "signal", say("ui.signal." + level)), make("p", "", text));
  box.setAttribute("role", "note");
  return box;
}

function showDrawing(section: Element, records: ProtocolRecord[]): void {
  const box = part(section, "drawing");
  const lines = records.filter((r) => r[0] === "drawing" || r[0] === "node");
  box.hidden = !lines.length;
  const standing = box.querySelector("svg");
  if (!lines.length) standing?.remove();
  else if (standing) redraw(standing, lines);
  else box.append(draw(lines));
}

function showExact(section: Element, outs: ProtocolRecord[]): void {
  const single = outs.filter((o) => o[4] && !o[1].includes("."));
  renew(part(section, "exact"), single, (box) => {
    box.hidden = !single.length;
    box.querySelector("dl")!.replaceChildren(...single.map((o) => make("div", "", make("dt", "", o[2]), make("dd", "", o[4]))));
  });
}

function showWork(section: Element, steps: ProtocolRecord[]): void {
  renew(part(section, "work"), steps, (box) => {
    box.hidden = !steps.length;
    box.querySelector("ol")!.replaceChildren(...steps.map(step));
  });
}

/** One step of the arithmetic. */
export function step([, title, of, plain, put, result, ...where]: ProtocolRecord): HTMLElement {
  const item = make("li", "", make("p", "step-title", of ? title + ": " + of : title),
    make("p", "", make("code", "", plain)), make("p", "", make("code", "", "= " + put)),
    make("p", "", make("code", "", "= ", make("b", "", result))));
  if (where.length) item.append(make("ul", "", ...where.map((w) => make("li", "", w))));
  return item;
}

const speaking = new WeakMap<Element, number>();

/** Says the leading results, or why there are none, once typing has paused. */
function announce(section: Element, none: string): void {
  clearTimeout(speaking.get(section));
  speaking.set(section, window.setTimeout(() => {
    const lead = all(".lead:not([hidden])", section).map((d) => d.querySelector("dt")!.textContent + " " + d.querySelector("dd")!.textContent);
    part(section, "said").textContent = none || say("ui.calc.said", { text: lead.join("; ") });
  }, 800));
}
