// Shows what the module answers to a run. Nothing of an earlier answer is
// left standing: where there is no result, the numbers go.
import { placeOf } from "./entries";
import { draw } from "./figure";
import { all, make, say } from "./page";
import type { Record_ } from "./records";

/** The part of a calculator that the templates marked with data-part. */
export function part(section: Element, name: string): HTMLElement {
  return section.querySelector<HTMLElement>(`[data-part=${name}]`)!;
}

export function showResult(section: HTMLElement, fields: Element, records: Record_[]): void {
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
  part(section, "notes").replaceChildren(...notes.filter((n) => n[1] !== "refusal").map((n) => note(n[1], n[3])));
  showMore(section, records);
  announce(section, none.textContent);
}

/** Shows what stands behind a result: drawing, unrounded values, arithmetic. */
export function showMore(section: HTMLElement, records: Record_[]): void {
  showDrawing(section, records);
  showExact(section, records.filter((r) => r[0] === "out"));
  showWork(section, records.filter((r) => r[0] === "step"));
}

function clearErrors(fields: Element): void {
  for (const error of all(".error", fields)) error.remove();
  for (const input of all("[aria-invalid]", fields)) {
    input.removeAttribute("aria-invalid");
    input.removeAttribute("aria-errormessage");
  }
}

let errors = 0;

/** Says at a field, row or cell what is wrong with it. */
function markError(place: HTMLElement, text: string): void {
  const error = make(place.matches("label") ? "span" : "p", "error", text);
  error.id = "error-" + ++errors;
  place.append(error);
  const input = place.matches(".rows, li") ? null : place.querySelector("input:not([type=radio], [type=checkbox]), select");
  input?.setAttribute("aria-invalid", "true");
  input?.setAttribute("aria-errormessage", error.id);
}

function showOutputs(section: Element, outs: Record_[]): void {
  for (const box of all("[data-out]", section)) {
    const out = outs.find((o) => o[1] === box.dataset.out);
    box.hidden = !out;
    box.querySelector("dd")!.textContent = out?.[3] ?? "";
  }
}

function showLists(section: Element, outs: Record_[]): void {
  for (const table of all("[data-list]", section)) {
    const cols = table.dataset.cols!.trim().split(" ");
    const rows: HTMLElement[][] = [];
    for (const [, path, , shown] of outs) {
      const [list, row, col] = path.split(".");
      if (list !== table.dataset.list || !row) continue;
      const cells = (rows[Number(row) - 1] ??= cols.map(() => make("td")));
      cells[cols.indexOf(col)]!.textContent = shown;
    }
    table.querySelector("tbody")!.replaceChildren(...rows.map((cells) => make("tr", "", ...cells)));
    table.parentElement!.hidden = !rows.length;
  }
}

function note(level: string, text: string): HTMLElement {
  if (level === "ask") return make("p", "ask", make("strong", "", say("ui.calc.ask")), " " + text);
  const box = make("aside", "caution " + level, make("p", "signal", say("ui.signal." + level)), make("p", "", text));
  box.setAttribute("role", "note");
  return box;
}

function showDrawing(section: Element, records: Record_[]): void {
  const svg = draw(records);
  const box = part(section, "drawing");
  box.hidden = !svg;
  box.replaceChildren(...(svg ? [svg] : []));
}

function showExact(section: Element, outs: Record_[]): void {
  const box = part(section, "exact");
  const single = outs.filter((o) => o[4] && !o[1].includes("."));
  box.hidden = !single.length;
  box.querySelector("dl")!.replaceChildren(...single.map((o) => make("div", "", make("dt", "", o[2]), make("dd", "", o[4]))));
}

function showWork(section: Element, steps: Record_[]): void {
  const box = part(section, "work");
  box.hidden = !steps.length;
  box.querySelector("ol")!.replaceChildren(...steps.map(([, title, of, plain, put, result, ...where]) => {
    const item = make("li", "", make("p", "step-title", of ? title + ": " + of : title),
      make("p", "", make("code", "", plain)), make("p", "", make("code", "", "= " + put)),
      make("p", "", make("code", "", "= ", make("b", "", result))));
    if (where.length) item.append(make("ul", "", ...where.map((w) => make("li", "", w))));
    return item;
  }));
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
