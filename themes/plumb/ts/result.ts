// Shows the module's answer to a run. It replaces an earlier answer as a whole: if
// there is no result, no number is shown.
import { showBar } from "./bar";
import { controls, labelOf, placeOf, rowsOf, textOf } from "./entries";
import { draw, redraw } from "./figure";
import { all, make, uiText } from "./page";
import type { ProtocolRecord } from "./records";

/** The element of a section that the templates mark with a data-part. */
export function part(section: Element, name: string): HTMLElement {
  return section.querySelector<HTMLElement>(`[data-part=${name}]`)!;
}

/** Shows an answer: errors at the inputs, results, notes and details. */
export function showResult(section: HTMLElement, fields: HTMLElement, records: ProtocolRecord[]): void {
  const state = records.find((r) => r[0] === "state")?.[1];
  const notes = records.filter((r) => r[0] === "note");
  const outs = records.filter((r) => r[0] === "out");
  clearErrors(fields);
  const ok = state === "ok";
  const refusals = notes.filter((n) => n[1] === "refusal");
  let missing: HTMLElement | undefined; // an input that is empty is asked for, not called wrong
  let wrong = false;
  for (const [, , path, text] of refusals) {
    const place = path && placeOf(fields, path);
    if (!place) continue;
    if (isEmpty(place)) missing ??= place;
    else {
      markError(place, text);
      wrong = true;
    }
  }
  const none = part(section, "none");
  none.hidden = ok;
  none.textContent = ok ? "" : state !== "bad" ? uiText("ui.calc.refused") + " " + refusals.map((n) => n[3]).join(" ")
    : wrong || !missing ? uiText("ui.calc.see-input") : uiText("ui.calc.missing", { label: labelOf(missing) });
  for (const given of all("[data-part=given]", section)) given.hidden = !ok;
  showHeadline(section, records);
  showOutputs(section, ok ? outs : [], records);
  showLists(section, ok ? outs : []);
  // A refused input gets its reason alone: no caution stands between the reader and it.
  const cautions = ok ? notes.filter((n) => n[1] !== "refusal") : [];
  update(part(section, "notes"), cautions, (box) => box.replaceChildren(...cautions.map((n) => note(n[1], n[3]))));
  showMore(section, fields, records);
  announce(section, none.textContent);
}

/** Whether an input or a row has no text, or all rows of a list. */
function isEmpty(place: HTMLElement): boolean {
  const texts = place.matches("[data-rows]") ? rowsOf(place).flatMap((row) => all("[data-col]", row)) : place.matches("li") ? all("[data-col]", place) : [place];
  return texts.every((t) => controls(t)[0].matches("select, [type=checkbox]") || !textOf(t).trim());
}

function showHeadline(section: Element, records: ProtocolRecord[]): void {
  const box = part(section, "headline");
  const text = records.find((r) => r[0] === "headline")?.[1] ?? "";
  box.hidden = !text;
  setText(box, text);
}

/** Removes the result that the HTML contains. */
export function clearResult(section: HTMLElement): void {
  for (const box of all("[data-part=given], [data-part=work]", section)) box.hidden = true;
  part(section, "notes").replaceChildren();
}

/** Shows the answer in the bar, and the details of a result: drawing, unrounded values, arithmetic. */
export function showMore(section: HTMLElement, fields: HTMLElement, records: ProtocolRecord[]): void {
  showBar(section, fields, records);
  const outs = records.filter((r) => r[0] === "out");
  const steps = records.filter((r) => r[0] === "step");
  showDrawing(section, records);
  fillWhenSeen(part(section, "exact"), !outs.length, () => showExact(section, outs));
  fillWhenSeen(part(section, "work"), !steps.length, () => showWork(section, steps));
}

const fillTimers = new WeakMap<Element, number>();

/** Calls fill: at once for an open part or for nothing to show, for a folded part after the result has been painted. */
function fillWhenSeen(box: HTMLElement, none: boolean, fill: () => void): void {
  clearTimeout(fillTimers.get(box));
  if (none || (box as HTMLDetailsElement).open) fill();
  else fillTimers.set(box, window.setTimeout(fill, 100));
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

/** Updates aria-describedby of an input: keeps the ids for which keepId returns true, and adds an id in front. */
function describe(input: Element, keepId: (id: string) => boolean, first = ""): void {
  const ids = (input.getAttribute("aria-describedby") ?? "").split(" ").filter((id) => id && keepId(id));
  if (first) ids.unshift(first);
  if (ids.length) input.setAttribute("aria-describedby", ids.join(" "));
  else input.removeAttribute("aria-describedby");
}

/** Shows an error at a field, row or cell. */
function markError(place: HTMLElement, text: string): void {
  const error = make(place.matches("label") ? "span" : "p", "error", text);
  error.id = errorId + ++errors;
  const input = place.matches(".rows, li") ? null : place.querySelector("input:not([type=radio], [type=checkbox]), select");
  // between the input and its keys and hints, which the sticky result may cover
  if (input?.parentElement === place) input.after(error);
  else place.append(error);
  if (!input) return;
  input.setAttribute("aria-invalid", "true");
  input.setAttribute("aria-errormessage", error.id);
  describe(input, () => true, error.id);
}

const shownRecords = new WeakMap<Element, string>();

/** Rebuilds a part if its records differ from the shown ones. */
function update<E extends Element>(box: E, records: ProtocolRecord[], build: (box: E) => void): void {
  const now = JSON.stringify(records);
  if (shownRecords.get(box) === now) return;
  shownRecords.set(box, now);
  build(box);
}

/** Sets the text of an element if it differs; an element with children shows both systems of units. */
function setText(box: Element, text: string): void {
  if (box.childElementCount || box.textContent !== text) box.textContent = text;
}

function showOutputs(section: Element, outs: ProtocolRecord[], records: ProtocolRecord[]): void {
  const shown = new Map(outs.map((o) => [o[1], o[3]]));
  const advice = new Map(records.filter((r) => r[0] === "advice").map((r) => [r[1], r[2]]));
  for (const box of all("[data-out]", section)) {
    const text = shown.get(box.dataset.out!);
    box.hidden = text === undefined;
    box.dataset.advice = advice.get(box.dataset.out!) ?? "";
    setText(box.lastElementChild!, text ?? "");
  }
}

function showLists(section: Element, outs: ProtocolRecord[]): void {
  for (const table of all<HTMLTableElement>("[data-list]", section)) {
    const cols = table.dataset.cols!.trim().split(" ");
    const listed = outs.filter(([, path]) => path.startsWith(table.dataset.list + "."));
    table.parentElement!.hidden = !listed.length;
    fillTable(table.tBodies[0], cols, listed);
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
  const heads = all("thead th", body.parentElement!);
  rows.forEach((texts, i) => {
    const row = body.rows[i] ?? body.insertRow();
    texts.forEach((text, k) => setText(row.cells[k] ?? cell(row, heads[k], cols.length > 4), text));
  });
}

/** A new cell below a head. In a wide table it carries the head's text, for where it is a line of a card. */
function cell(row: HTMLTableRowElement, head: HTMLElement, wide: boolean): HTMLTableCellElement {
  const td = row.insertCell();
  td.className = head.className;
  if (wide) td.dataset.head = head.textContent!;
  return td;
}

/** A note of a level. */
export function note(level: string, text: string): HTMLElement {
  if (level === "ask") return make("p", "ask", make("strong", "", uiText("ui.calc.ask")), " " + text);
  const box = make("aside", "caution " + level, make("p", "signal", uiText("ui.signal." + level)), make("p", "", text));
  box.setAttribute("role", "note");
  return box;
}

function showDrawing(section: Element, records: ProtocolRecord[]): void {
  const box = part(section, "drawing");
  const lines = records.filter((r) => r[0] === "drawing" || r[0] === "node");
  box.hidden = !lines.length;
  const svg = box.querySelector("svg");
  if (!lines.length) svg?.remove();
  else if (svg) redraw(svg, lines);
  else box.append(draw(lines));
}

function showExact(section: Element, outs: ProtocolRecord[]): void {
  const single = outs.filter((o) => o[4] && !o[1].includes("."));
  update(part(section, "exact"), single, (box) => {
    box.hidden = !single.length;
    box.querySelector("dl")!.replaceChildren(...single.map((o) => make("div", "", make("dt", "", o[2]), make("dd", "", o[4]))));
  });
}

function showWork(section: Element, steps: ProtocolRecord[]): void {
  update(part(section, "work"), steps, (box) => {
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

const announceTimers = new WeakMap<Element, number>();

/** Announces the main results to screen readers, or why there are none, when typing has paused. */
function announce(section: Element, none: string): void {
  clearTimeout(announceTimers.get(section));
  announceTimers.set(section, window.setTimeout(() => {
    const lead = all(".lead:not([hidden])", section).map((d) => d.querySelector("dt")!.textContent + " " + d.querySelector("dd")!.textContent);
    part(section, "said").textContent = none || uiText("ui.calc.said", { text: lead.join("; ") });
  }, 800));
}
