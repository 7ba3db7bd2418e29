// The reader's settings: language, units, decimal mark, role, site, light or dark.
// Each is optional and stored on the device.
import { writeMarks } from "./marks";
import { all, facts, make, root, uiText } from "./page";
import { load, save } from "./store";

/** The units and the decimal mark of inputs and results. */
export interface Style {
  system: string; // us or metric
  mark: string; // point or comma
}

type Listener = () => void;
const listeners: Listener[] = [];

/** Adds a listener for changes of units or decimal mark. */
export function onStyle(listener: Listener): void {
  listeners.push(listener);
}

/** The stored style; by default US units and a decimal point. */
export function style(): Style {
  return { system: load("units") || "us", mark: load("mark") || "point" };
}

/** Stores one setting and applies it to the whole page. */
export function choose(name: string, value: string): void {
  save(name, value);
  applyChoices();
  showChoices();
  if (name === "mark") writeMarks(value);
  if (name === "units" || name === "mark") for (const listener of listeners) listener();
}

/** Sets the data attributes of the root element that the style sheet selects by. */
export function applyChoices(): void {
  const html = document.documentElement;
  for (const name of ["units", "light", "size"]) {
    const value = load(name);
    if (value) html.dataset[name] = value;
    else delete html.dataset[name];
  }
}

/** Starts the settings panel and the other controls of settings. */
export function startChoices(): void {
  redirectToLanguage();
  for (const link of all<HTMLAnchorElement>(".language")) {
    link.addEventListener("click", () => save("language", link.lang));
  }
  document.addEventListener("change", (e) => {
    const input = e.target as HTMLInputElement;
    if (!input.closest(".panel, .iam")) return;
    choose(input.name === "iam" ? "role" : input.name, input.value);
  });
  for (const panel of all<HTMLFormElement>(".panel")) {
    panel.addEventListener("submit", (e) => (e.preventDefault(), leave()));
    panel.querySelector("[data-do=close]")!.addEventListener("click", leave);
  }
  // A page that the browser kept while the settings were open shows the old ones, and the
  // ticks of the site named before.
  const shown = stored();
  addEventListener("pageshow", (e) => e.persisted && stored() !== shown && location.reload());
  showChoices();
  writeMarks(style().mark);
}

/** Leaves the settings: back to the page before, or to the home page where this one was opened by itself. */
function leave(): void {
  if (history.length > 1) history.back();
  else location.href = document.querySelector<HTMLAnchorElement>(".homeward")!.href;
}

/** All stored settings, to be compared. */
function stored(): string {
  return ["units", "mark", "light", "size", "role", "job", "emergency", "where"].map(load).join("\n");
}

/** Redirects from the root page to the home page of the stored language. */
function redirectToLanguage(): void {
  const language = load("language");
  if (!language || language === facts.lang || facts.pocket) return;
  const here = location.pathname.replace(/index\.html$/, "");
  if (here !== root.pathname) return;
  const link = document.querySelector<HTMLAnchorElement>(`.language[lang="${CSS.escape(language)}"]`);
  if (link) location.replace(link.href);
}

/** The buttons that call for help: the reader's own number, and where he said he is. */
function showCall(): void {
  for (const button of all<HTMLAnchorElement>("[data-call]")) {
    button.dataset.number ??= button.getAttribute("href")!.slice("tel:".length);
    const number = load("emergency") || button.dataset.number;
    button.href = "tel:" + encodeURIComponent(number);
    button.textContent = button.dataset.call!.replace("{n}", number);
    const where = load("where");
    button.parentElement!.querySelector("[data-part=where]")!.textContent = where && uiText("ui.call.where", { where });
  }
}

/** Updates every control to the stored settings and marks the items of the reader's role. */
function showChoices(): void {
  const now: Record<string, string> = { units: load("units"), mark: load("mark") || "point", light: load("light"), size: load("size") };
  for (const input of all<HTMLInputElement>(".panel [type=radio]")) input.checked = now[input.name] === input.value;
  for (const control of all<HTMLInputElement>(".panel :is(select, [type=tel], [maxlength]), .iam select")) {
    control.value = load(control.name === "iam" ? "role" : control.name);
  }
  showCall();
  const role = load("role");
  for (const item of all("[data-roles]")) {
    const mine = role !== "" && item.dataset.roles!.split(" ").includes(role);
    item.querySelector(":scope > .mine")?.remove();
    if (mine) item.prepend(make("span", "mine", uiText("ui.mine")), " ");
    item.toggleAttribute("data-mine", mine);
  }
}
