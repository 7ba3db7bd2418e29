// The home page shows the page that was read last; the page of a stage shows how many
// checks of each of its pages are ticked.
import { checkKey } from "./checks";
import { all, facts, language, root, uiText } from "./page";
import { load, save } from "./store";

/** Notes the shown page, or shows the last one on the home page. */
export function startToday(): void {
  if (!facts.pocket) notePage();
  document.addEventListener("change", (e) => (e.target as HTMLInputElement).name === "job" && showTicks());
}

/** Stores the address and title of the page if it holds work, and updates home and stages. */
export function notePage(): void {
  const main = document.getElementById("main")!;
  const title = main.querySelector("h1")?.textContent?.trim() ?? "";
  if (title && main.querySelector("ol.steps, .calc, .checks, .question")) {
    const place = facts.pocket ? location.hash : location.pathname.slice(root.pathname.length);
    save("last " + language(), place + "\n" + title);
  }
  for (const box of all("[data-part=again]", main)) {
    const [place, name] = load("last " + language()).split("\n");
    box.hidden = !name;
    const link = box.querySelector("a")!;
    link.href = facts.pocket ? place! : facts.root + place;
    link.textContent = name ?? "";
  }
  showTicks();
}

function showTicks(): void {
  for (const mark of all("[data-ticks]")) {
    const n = load(checkKey(mark.dataset.ticks!)).split(" ").filter(Boolean).length;
    mark.hidden = n === 0;
    mark.textContent = uiText("ui.checks.count", { n, all: mark.dataset.all! });
    mark.toggleAttribute("data-done", n >= Number(mark.dataset.all));
  }
}
