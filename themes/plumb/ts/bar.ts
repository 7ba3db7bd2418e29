// The bar that holds the answer: one line at the foot of the screen, above the
// keyboard. It says the deed with its sign, whether the numbers are an example, and
// which question or input is open; a touch on that goes to the input. A touch on the
// line opens a panel with the main results and the gravest notes.
import { labelOf, openInput, placeOf } from "./entries";
import { all, make, uiText } from "./page";
import type { ProtocolRecord } from "./records";
import { note, part } from "./result";

const longLine = 34; // letters; a longer deed is set smaller
const grave = ["danger", "warning"];

/** Shows an answer in the bar of a calculator. */
export function showBar(section: HTMLElement, fields: HTMLElement, records: ProtocolRecord[]): void {
  const bar = part(section, "bar");
  const open = !!bar.querySelector("[aria-expanded=true]");
  const notes = records.filter((r) => r[0] === "note");
  const ok = records.some((r) => r[0] === "state" && r[1] === "ok");
  bar.hidden = false;
  if (ok) {
    const leads = records.filter((r) => r[0] === "out" && section.querySelector(`.lead[data-out="${r[1]}"]`));
    const worst = notes.find((n) => grave.includes(n[1]));
    const asked = notes.find((n) => n[1] === "ask" && n[2] && placeOf(fields, n[2]));
    const advice = records.find((r) => r[0] === "advice")?.[2];
    const over = make("span", "over", make("span", "badge", uiText("ui.calc.badge")));
    if (worst && !advice) over.append(make("span", "signal " + worst[1], uiText("ui.signal." + worst[1])));
    const said = deed(records, leads);
    const line = make("button", "line", ...(advice ? [make("span", "sign " + advice)] : []), make("span", said.length > longLine ? "deed long" : "deed", over, said));
    line.ariaExpanded = String(open);
    line.dataset.do = "panel";
    bar.replaceChildren(panel(leads, notes, open), row(line, asked && question(fields, asked[2], said.length > longLine)));
  } else {
    const at = notes.find((n) => n[2] && placeOf(fields, n[2]));
    const text = part(section, "none").textContent!;
    bar.replaceChildren(row(at ? jump(fields, at[2], text, "line") : make("p", "line", text)));
  }
  for (const button of all<HTMLButtonElement>("button", bar)) button.type = "button";
}

function row(...items: (HTMLElement | undefined)[]): HTMLElement {
  return make("div", "answer-row", ...items.filter((i) => i !== undefined));
}

/** The deed in one line: the headline, else the first main result, a number with its label. */
function deed(records: ProtocolRecord[], leads: ProtocolRecord[]): string {
  const headline = records.find((r) => r[0] === "headline")?.[1];
  const [, path, label, text] = leads[0];
  const isChoice = records.some((r) => r[0] === "advice" && r[1] === path);
  return headline ?? (isChoice ? text : label + ": " + text);
}

/** A button that asks the question at an input; beside a long deed it is only a sign, with the question as its name. */
function question(fields: HTMLElement, path: string, short: boolean): HTMLElement {
  const label = labelOf(placeOf(fields, path)!);
  const button = jump(fields, path, short ? "?" : "? " + label);
  if (short) button.ariaLabel = "? " + label;
  return button;
}

/** A button that goes to the input of a path. */
function jump(fields: HTMLElement, path: string, text: string, name = "asked"): HTMLElement {
  const button = make("button", name, text);
  button.addEventListener("click", () => goTo(fields, path));
  return button;
}

/** Moves the focus to the input of a path. */
export function goTo(fields: HTMLElement, path: string): void {
  const input = openInput(fields, path);
  input?.focus();
  input?.scrollIntoView({ block: "center" });
}

function panel(leads: ProtocolRecord[], notes: ProtocolRecord[], open: boolean): HTMLElement {
  const list = make("dl", "outs", ...leads.map(([, , label, text]) => make("div", "", make("dt", "", label), make("dd", "", text))));
  const whole = make("button", "", uiText("ui.calc.all"));
  whole.dataset.do = "whole";
  const box = make("div", "answer-panel", list, ...notes.filter((n) => n[1] !== "refusal").slice(0, 3).map((n) => note(n[1], n[3])), whole);
  box.hidden = !open;
  return box;
}

/** Opens or closes the panel. */
export function togglePanel(section: Element, open?: boolean): void {
  const line = section.querySelector<HTMLElement>("[data-do=panel]");
  if (!line) return;
  const now = open ?? line.ariaExpanded !== "true";
  line.ariaExpanded = String(now);
  section.querySelector<HTMLElement>(".answer-panel")!.hidden = !now;
}

/**
 * Keeps the bar above the keyboard in browsers that lay the keyboard over the page:
 * --keyboard is the height that the visual viewport lacks at the foot of the page.
 */
export function followKeyboard(): void {
  const view = window.visualViewport;
  if (!view) return;
  const root = document.documentElement;
  const follow = () => {
    const covered = view.scale > 1.01 ? 0 : Math.max(0, innerHeight - view.height - view.offsetTop);
    root.style.setProperty("--keyboard", Math.round(covered) + "px");
  };
  view.addEventListener("resize", follow);
  view.addEventListener("scroll", follow);
  follow();
}
