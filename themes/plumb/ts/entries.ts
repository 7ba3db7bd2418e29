// Reads the inputs of a calculator from the page and fills them: paths and texts
// in the module's form (height; readings.3.gap, rows counted from 1).
import { all } from "./page";

export type Entry = [path: string, text: string];

const places = ":scope > [data-field], :scope > [data-rows]";

/** The paths and texts of all inputs, or only of the visible ones. */
export function readEntries(fields: Element, asked = false): Entry[] {
  const list: Entry[] = [];
  for (const place of all(places, fields)) {
    if (asked && place.hidden) continue;
    const rows = place.dataset.rows;
    if (!rows) {
      list.push([place.dataset.field!, textOf(place)]);
      continue;
    }
    const items = rowsOf(place);
    if (!items.length) list.push([rows, ""]);
    items.forEach((item, i) => {
      for (const cell of all("[data-col]", item)) list.push([`${rows}.${i + 1}.${cell.dataset.col}`, textOf(cell)]);
    });
  }
  return list;
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
  for (const [path, text] of entries) {
    const place = placeOf(fields, path);
    if (place && !place.dataset.rows) setText(place, text);
  }
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

/** Adds an empty row and returns it. */
export function addRow(place: Element): HTMLElement {
  const row = place.querySelector("template")!.content.firstElementChild!.cloneNode(true) as HTMLElement;
  place.querySelector(".rowlist")!.append(row);
  return row;
}

/** Disables the buttons that add and remove rows at the limits of their number. */
export function watchRows(place: HTMLElement): void {
  const items = rowsOf(place);
  const [least, most] = [Number(place.dataset.min ?? 0), Number(place.dataset.max)];
  place.querySelector<HTMLButtonElement>("[data-do=add]")!.disabled = most > 0 && items.length >= most;
  for (const button of all<HTMLButtonElement>("[data-do=drop]", place)) button.disabled = items.length <= least;
}

export function sameEntries(a: Entry[], b: Entry[]): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function rowsOf(place: Element): HTMLElement[] {
  return all(":scope > .rowlist > li", place);
}

function controls(place: Element): HTMLInputElement[] {
  return all<HTMLInputElement>("input, select", place);
}

function textOf(place: Element): string {
  const list = controls(place);
  if (list[0].type === "radio") return list.find((r) => r.checked)?.value ?? "";
  if (list[0].type === "checkbox") return list[0].checked ? "yes" : "no";
  return list[0].value;
}

function setText(place: Element, text: string): void {
  for (const input of controls(place)) {
    if (input.type === "radio") input.checked = input.value === text;
    else if (input.type === "checkbox") input.checked = text === "yes";
    else input.value = text;
  }
}
