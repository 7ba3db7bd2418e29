// Question and answer as text, for a message or the clipboard, and as a link that holds
// the reader's inputs behind #in=. What comes with a link is text in inputs, and nothing
// else; a name or a value that the form does not have is refused by its name.
import type { Style } from "./choices";
import { controls, labelOf, placeOf, places, readEntries, rowsOf, valueOf, type Entry } from "./entries";
import { ownPaths } from "./own";
import { all, facts, make, uiText } from "./page";
import type { ProtocolRecord } from "./records";

const mark = "#in=";
const longest = 6000; // characters of a link's inputs
const longestName = 40; // characters of a refused name that are shown

/** Question and answer as lines of text. */
export function asText(section: HTMLElement, fields: HTMLElement, records: ProtocolRecord[], link: string): string {
  const lines = [section.ariaLabel!];
  if (section.dataset.example !== undefined) lines.push(uiText("ui.calc.badge"));
  for (const place of all(places, fields)) {
    if (place.hidden) continue;
    if (place.dataset.field && valueOf(place)) lines.push(labelOf(place) + ": " + valueOf(place));
    if (place.dataset.rows) rowsOf(place).forEach((row, i) =>
      lines.push(labelOf(place) + " " + (i + 1) + ": " + all("[data-col]", row).filter(valueOf).map((c) => labelOf(c) + " " + valueOf(c)).join(", ")));
  }
  lines.push("", uiText("ui.calc.result"));
  const headline = records.find((r) => r[0] === "headline");
  if (headline) lines.push(headline[1]);
  for (const [, path, label, text] of records.filter((r) => r[0] === "out")) {
    if (section.querySelector(`.lead[data-out="${path}"]`)) lines.push(label + ": " + text);
  }
  for (const [, level, , text] of records.filter((r) => r[0] === "note" && r[1] !== "notice")) {
    lines.push((level === "ask" ? uiText("ui.calc.ask") : level === "refusal" ? uiText("ui.calc.refused") : uiText("ui.signal." + level) + ":") + " " + text);
  }
  for (const caution of all(".result > .caution:not(.notice)", section)) lines.push(caution.querySelector(".signal")!.textContent + ": " + caution.lastElementChild!.textContent);
  if (link) lines.push("", link);
  return lines.join("\n");
}

/** The address of a calculator with the reader's inputs; empty in the one-file edition, whose fragment names its article. */
export function linkOf(section: HTMLElement, fields: HTMLElement, now: Style): string {
  if (facts.pocket) return "";
  const own = new Set(ownPaths(fields).map((path) => path.split(".")[0]));
  const changed = new Set(all("[data-rows]", fields).filter((p) => !rowsOf(p).length).map((p) => p.dataset.rows!));
  const query = new URLSearchParams();
  for (const [path, text, system, mark] of readEntries(fields)) {
    const name = path.split(".")[0];
    if (own.has(name) || changed.has(name)) query.append(system ? path + "@" + system + "." + mark : path, text);
  }
  return (section.dataset.page ?? location.href).replace(/#.*/, "") + mark + now.system + "." + now.mark + "&" + query;
}

/** What came with the address: inputs of this form, and the names of what is refused. */
export function linked(fields: HTMLElement): { entries: Entry[]; refused: string[] } | undefined {
  if (!location.hash.startsWith(mark) || facts.pocket) return undefined;
  const [style, ...rest] = location.hash.slice(mark.length).split("&");
  const now = styleOf(style);
  const entries: Entry[] = [];
  const refused: string[] = [];
  const names = new Set<string>();
  if (!now || location.hash.length > longest) return { entries, refused: [mark] };
  for (const [name, text] of new URLSearchParams(rest.join("&"))) {
    const [path, other] = name.split("@");
    const typed = other === undefined ? now : styleOf(other);
    if (!typed || names.has(path) || !fits(fields, path, text)) refused.push(name.slice(0, longestName));
    else entries.push([path, text, typed.system, typed.mark]);
    names.add(path);
  }
  return { entries, refused };
}

function styleOf(text: string): Style | undefined {
  const [, system, mark] = /^(us|metric)\.(point|comma)$/.exec(text) ?? [];
  return system ? { system, mark } : undefined;
}

/** Whether the form has an input of this path, and among its options this text. */
function fits(fields: HTMLElement, path: string, text: string): boolean {
  const [name, row, col, more] = path.split(".");
  const place = placeOf(fields, name);
  if (!place || more !== undefined) return false;
  const rows = place.dataset.rows !== undefined;
  if (row === undefined) return rows ? text === "" : hasOption(place, text);
  if (!rows || !/^[1-9]\d?$/.test(row) || Number(row) > Number(place.dataset.max)) return false;
  const cell = all("[data-col]", place.querySelector("template")!.content).find((c) => c.dataset.col === col);
  return !!cell && hasOption(cell, text);
}

function hasOption(place: HTMLElement, text: string): boolean {
  const list = controls(place);
  if (list[0].type === "radio") return text === "" || list.some((r) => r.value === text);
  if (list[0].type === "checkbox") return text === "yes" || text === "no";
  return list[0].matches("select") ? [...(list[0] as unknown as HTMLSelectElement).options].some((o) => o.value === text) : text.length <= 200;
}

/** Puts a text on the clipboard; returns whether it is there. Pages without https have only the old way. */
export async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    const box = make("textarea", "unseen");
    box.value = text;
    document.body.append(box);
    box.select();
    const done = document.execCommand("copy");
    box.remove();
    return done;
  }
}
