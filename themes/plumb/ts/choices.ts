// What a reader chooses: language, units, decimal mark, role, site, light.
// Each is remembered on the device and none is needed.
import { all, facts, make, root, say } from "./page";
import { load, save } from "./store";

/** How inputs are read and results written. */
export interface Style {
  system: string; // us or metric
  mark: string; // point or comma
}

type Listener = () => void;
const listeners: Listener[] = [];

/** Calls back whenever units or decimal mark change. */
export function onStyle(listener: Listener): void {
  listeners.push(listener);
}

export function style(): Style {
  return { system: load("units") || "us", mark: load("mark") || "point" };
}

/** Changes one choice, everywhere on the page. */
export function choose(name: string, value: string): void {
  save(name, value);
  applyChoices();
  show();
  if (name === "units" || name === "mark") for (const tell of listeners) tell();
}

/** Sets the choices on the root element, where the style sheet looks. */
export function applyChoices(): void {
  const html = document.documentElement;
  for (const name of ["units", "light"]) {
    const value = load(name);
    if (value) html.dataset[name] = value;
    else delete html.dataset[name];
  }
}

export function startChoices(): void {
  goHome();
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
  show();
}

/** A remembered language leads from the first page to its own home. */
function goHome(): void {
  const language = load("language");
  if (!language || language === facts.lang || facts.pocket) return;
  const here = location.pathname.replace(/index\.html$/, "");
  if (here !== root.pathname) return;
  const link = document.querySelector<HTMLAnchorElement>(`.language[lang="${CSS.escape(language)}"]`);
  if (link) location.replace(link.href);
}

/** Shows in every control what is chosen. */
function show(): void {
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
    if (mine) item.prepend(make("span", "mine", say("ui.mine")), " ");
    item.toggleAttribute("data-mine", mine);
  }
}
