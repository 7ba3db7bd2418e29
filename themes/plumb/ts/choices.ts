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
  for (const name of ["units", "light"]) {
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
  const panel = document.querySelector<HTMLDetailsElement>(".settings");
  const close = () => panel?.removeAttribute("open");
  panel?.querySelector("[data-do=close]")?.addEventListener("click", close);
  panel?.querySelector("form")?.addEventListener("submit", (e) => (e.preventDefault(), close()));
  document.addEventListener("keydown", (e) => {
    if (e.key !== "Escape" || !panel?.open) return;
    close();
    panel.querySelector("summary")!.focus();
  });
  document.addEventListener("click", (e) => {
    if (panel?.open && !panel.contains(e.target as Node)) close();
  });
  showChoices();
  writeMarks(style().mark);
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

/** Updates every control to the stored settings and marks the items of the reader's role. */
function showChoices(): void {
  const now: Record<string, string> = { units: load("units"), mark: load("mark") || "point", light: load("light"), iam: load("role") };
  for (const input of all<HTMLInputElement>(".panel [type=radio], .iam [type=radio]")) input.checked = now[input.name] === input.value;
  for (const name of ["role", "job"]) {
    const control = document.querySelector<HTMLInputElement>(`.panel [name=${name}]`);
    if (control) control.value = load(name);
  }
  const role = load("role");
  for (const item of all("[data-roles]")) {
    const mine = role !== "" && item.dataset.roles!.split(" ").includes(role);
    item.querySelector(":scope > .mine")?.remove();
    if (mine) item.prepend(make("span", "mine", uiText("ui.mine")), " ");
    item.toggleAttribute("data-mine", mine);
  }
}
