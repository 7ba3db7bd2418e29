// Reads the inputs of a calculator from the page and fills them: paths and texts
// in the module's form (height; readings.3.gap, rows counted from 1). A text that was
// typed in other units than the form shows is kept as it was typed, so that a change
// of units never changes a value.
import type { Style } from "./choices";
import { all, uiText } from "./page";

/** An input: its path, its text as typed and, where these are not the form's, units and decimal mark of the text. */
export type Entry = [path: string, text: string, system?: string, mark?: string];

export const places = "[data-field], [data-rows]";

/** The inputs as they were typed: all, or only those that apply. */
export function readEntries(fields: Element, asked = false): Entry[] {
  const list: Entry[] = [];
  for (const place of all(places, fields)) {
    if (asked && place.hidden) continue;
    const rows = place.dataset.rows;
    if (!rows) {
      list.push(entryOf(place.dataset.field!, place));
      continue;
    }
    const items = rowsOf(place);
    if (!items.length) list.push([rows, ""]);
    items.forEach((item, i) => {
      for (const cell of all("[data-col]", item)) list.push(entryOf(`${rows}.${i + 1}.${cell.dataset.col}`, cell));
    });
  }
  return list;
}

function entryOf(path: string, place: Element): Entry {
  const { typed, system, mark } = controls(place)[0].dataset;
  return typed === undefined ? [path, textOf(place)] : [path, typed, system, mark];
}

/**
 * Fills inputs. Missing rows are added; further rows are removed only if the
 * entries are of the whole form.
 */
export function fillEntries(fields: Element, entries: Entry[], whole: boolean): void {
  for (const place of all("[data-rows]", fields)) {
    const name = place.dataset.rows! + ".";
    const rows = entries.filter(([path]) => path.startsWith(name)).map(([path]) => Number(path.split(".")[1]));
    const n = Math.max(0, ...rows);
    while (rowsOf(place).length < n) addRow(place);
    if (whole) for (const item of rowsOf(place).slice(n)) item.remove();
    watchRows(place);
  }
  for (const [path, text, system, mark] of entries) {
    const place = placeOf(fields, path);
    if (!place || place.dataset.rows) continue;
    setText(place, text);
    setTyped(place, system ? { text, system, mark: mark! } : undefined);
  }
}

/** Shows a text that was converted to the form's style in an input, and keeps the text as it was typed. */
export function showConverted(fields: Element, path: string, shown: string, typed: string, from: Style): void {
  const place = placeOf(fields, path)!;
  if (place.dataset.rows) return; // a list without rows
  setText(place, shown);
  setTyped(place, shown === typed ? undefined : { text: typed, ...from });
}

/** Keeps the text of an input as it was typed in another style, or forgets it. */
function setTyped(place: Element, typed?: { text: string } & Style): void {
  const data = controls(place)[0].dataset;
  delete data.typed;
  if (typed) [data.typed, data.system, data.mark] = [typed.text, typed.system, typed.mark];
}

/** Forgets the text that an input was converted from: the reader has changed the shown one. */
export function forgetTyped(place: Element): void {
  setTyped(place);
}

/** The element of a path: a field, a row or a cell. */
export function placeOf(fields: Element, path: string): HTMLElement | undefined {
  const [field, row, col] = path.split(".");
  const place = all(places, fields).find((p) => (p.dataset.field ?? p.dataset.rows) === field);
  if (!place || !row) return place;
  const item = rowsOf(place)[Number(row) - 1];
  if (!item || !col) return item ?? place;
  return all("[data-col]", item).find((c) => c.dataset.col === col) ?? item;
}

/** The input of a path that can have the focus, after its folded part was opened. */
export function openInput(fields: Element, path: string): HTMLElement | undefined {
  const place = placeOf(fields, path);
  place?.closest("details")?.setAttribute("open", "");
  return place && (place.querySelector<HTMLElement>(":checked") ?? place.querySelector<HTMLElement>("input, select, button") ?? undefined);
}

/** Adds an empty row and returns it. */
export function addRow(place: Element): HTMLElement {
  const row = place.querySelector("template")!.content.firstElementChild!.cloneNode(true) as HTMLElement;
  row.dataset.own = "";
  place.querySelector(".rowlist")!.append(row);
  return row;
}

/** Numbers the rows, and disables the buttons that add and remove rows at the limits of their number. */
export function watchRows(place: HTMLElement): void {
  const items = rowsOf(place);
  const [least, most] = [Number(place.dataset.min ?? 0), Number(place.dataset.max)];
  place.querySelector<HTMLButtonElement>("[data-do=add]")!.disabled = most > 0 && items.length >= most;
  items.forEach((item, i) => {
    for (const input of controls(item)) input.ariaLabel = input.closest("label")!.firstChild!.textContent!.trim() + " " + (i + 1);
    const drop = item.querySelector<HTMLButtonElement>("[data-do=drop]")!;
    drop.disabled = items.length <= least;
    drop.textContent = uiText("ui.calc.drop") + " " + (i + 1);
  });
}

export function sameEntries(a: Entry[], b: Entry[]): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

export function rowsOf(place: Element): HTMLElement[] {
  return all(":scope > .rowlist > li", place);
}

export function controls(place: Element): HTMLInputElement[] {
  return all<HTMLInputElement>("input, select", place);
}

/** The text of an input as the form shows it. */
export function textOf(place: Element): string {
  const list = controls(place);
  if (list[0].type === "radio") return list.find((r) => r.checked)?.value ?? "";
  if (list[0].type === "checkbox") return list[0].checked ? "yes" : "no";
  return list[0].value;
}

/** The label of an input or of a cell. */
export function labelOf(place: Element): string {
  const label = place.matches("label") ? place : place.querySelector(":scope > label, :scope > legend")!;
  return label.firstChild?.textContent?.trim() || label.textContent!.trim();
}

/** The value of an input as a sentence states it: the label of an option. */
export function valueOf(place: Element): string {
  const control = controls(place).find((c) => c.type !== "radio" || c.checked);
  if (!control || (control.type === "checkbox" && !control.checked)) return "";
  const option = (control as unknown as HTMLSelectElement).selectedOptions?.[0];
  return option ? option.text : control.matches("[type=radio], [type=checkbox]") ? control.nextElementSibling!.textContent! : control.value;
}

function setText(place: Element, text: string): void {
  for (const input of controls(place)) {
    if (input.type === "radio") input.checked = input.value === text;
    else if (input.type === "checkbox") input.checked = text === "yes";
    else input.value = text;
  }
}
