// Which inputs are the reader's own. An input of the reader has data-own. One whose
// value is invented has data-example; a result that rests on such a value is an
// example, however many others are the reader's.
import { addRow, controls, forgetTyped, placeOf, places, rowsOf, textOf, watchRows } from "./entries";
import { all } from "./page";

/** Marks the input of an element as the reader's own. Returns whether it was not before. */
export function markOwn(element: Element): boolean {
  const place = element.closest<HTMLElement>("[data-col]") ?? element.closest<HTMLElement>(places);
  if (!place || place.dataset.rows) return true;
  const before = isOwn(place);
  place.dataset.own = "";
  forgetTyped(place);
  return !before;
}

/** The paths of the reader's own inputs. */
export function ownPaths(fields: Element): string[] {
  const list: string[] = [];
  for (const place of all(places, fields)) {
    const rows = place.dataset.rows;
    if (!rows && isOwn(place)) list.push(place.dataset.field!);
    if (rows) rowsOf(place).forEach((row, i) => {
      for (const cell of all("[data-col]", row)) if (isOwn(cell)) list.push(`${rows}.${i + 1}.${cell.dataset.col}`);
    });
  }
  return list;
}

/** Marks the inputs of these paths, and no others, as the reader's own. */
export function setOwn(fields: Element, paths: string[]): void {
  for (const e of all("[data-own]", fields)) delete e.dataset.own;
  for (const path of paths) {
    const place = placeOf(fields, path);
    if (place) place.dataset.own = "";
  }
}

/** Whether an input, or a cell or its whole row, is the reader's own. */
function isOwn(place: Element): boolean {
  return place.matches("[data-own], [data-own] > [data-col]");
}

/** The visible inputs with invented values, and how many of them are not the reader's. */
export function examples(fields: Element): { left: number; of: number } {
  let left = 0, of = 0;
  const count = (place: Element) => {
    of++;
    if (!isOwn(place) && textOf(place)) left++;
  };
  for (const place of all("[data-example]", fields)) {
    if (place.hidden) continue;
    if (place.dataset.field) count(place);
    else for (const row of rowsOf(place)) all("[data-col]", row).forEach(count);
  }
  return { left, of };
}

/**
 * Empties every invented value and every input that decides. What else the reader has
 * typed stays: the places of the braces and the thread of the crew. Returns the first
 * input to type in.
 */
export function empty(fields: Element): HTMLElement | null {
  for (const place of all("[data-example], [data-decides]", fields)) {
    if (place.matches("[data-col]")) continue;
    const clear = (e: HTMLElement, decides: boolean) => {
      if (!decides && isOwn(e)) return;
      for (const c of controls(e)) {
        if (c.type === "radio") c.checked &&= !optional(place);
        else if (c.type !== "checkbox" && !c.matches("select")) c.value = "";
      }
      forgetTyped(e);
      e.dataset.own = "";
    };
    const decides = place.dataset.decides !== undefined;
    if (place.dataset.field) clear(place, decides);
    else {
      const some = !!place.querySelector("[data-col][data-decides]");
      for (const row of rowsOf(place)) {
        const kept = some && all("[data-col]", row).some(isOwn);
        for (const cell of all("[data-col]", row)) clear(cell, some ? cell.dataset.decides !== undefined : decides);
        if (!kept && all("[data-col]", row).every((c) => controls(c)[0].matches("select, [type=checkbox]") || !textOf(c))) row.remove();
      }
      const least = Math.max(Number(place.dataset.min ?? 0), place === all("[data-decides]", fields)[0] ? 1 : 0);
      while (rowsOf(place).length < least) addRow(place);
      watchRows(place);
    }
  }
  const text = "input:not([type=radio], [type=checkbox])";
  const first = fields.querySelector<HTMLElement>("[data-decides]");
  return first?.querySelector<HTMLElement>("[data-col][data-decides] " + text) ?? fields.querySelector<HTMLElement>(`[data-decides] ${text}, [data-field]:not([hidden]) input`);
}

/** Whether a group of radio buttons may be without an answer. */
function optional(place: HTMLElement): boolean {
  return place.dataset.optional !== undefined;
}
