// Checklist ticks, stored on the device by page and by the site that the reader named.
import { all, facts, make, root, uiText } from "./page";
import { load, save } from "./store";

/** The path of the page that holds a checklist, relative to the root of the manual; in the one-file edition, the article's id. */
function pageOf(list: Element): string {
  const article = list.closest(".article");
  if (article) return article.id;
  return location.pathname.slice(root.pathname.length).replace(/\.html$/, "") || facts.lang;
}

/** The key of the ticks of a page, named as pageOf does. */
export function checkKey(page: string): string {
  return "ticks " + load("job") + " " + page;
}

function keyOf(list: Element): string {
  return checkKey(pageOf(list));
}

/** Starts all checklists of the page. */
export function startChecks(): void {
  for (const list of all("ul.checks")) {
    const foot = make("div", "check-foot live");
    const count = make("p", "check-count");
    const clear = make("button", "", uiText("ui.checks.clear"));
    clear.setAttribute("type", "button");
    foot.append(count, clear);
    list.after(foot);
    const refresh = () => show(list, count, clear);
    list.addEventListener("change", () => (saveTicks(list), refresh()));
    clear.addEventListener("click", () => confirmThenRun(clear, boxes(list).filter((b) => b.checked).length, () => {
      for (const box of boxes(list)) box.checked = false;
      saveTicks(list);
      refresh();
    }));
    clear.addEventListener("blur", () => resetLabel(clear));
    loadTicks(list);
    refresh();
  }
  const refill = () => {
    for (const list of all("ul.checks")) {
      loadTicks(list);
      list.dispatchEvent(new Event("refill"));
    }
  };
  document.addEventListener("change", (e) => (e.target as HTMLInputElement).name === "job" && refill());
  // On the way back a browser puts the ticks as they were, which may be those of another site.
  addEventListener("pageshow", refill);
}

function boxes(list: Element): HTMLInputElement[] {
  return all<HTMLInputElement>("[data-check]", list);
}

/** Saves the ticks of one list. All lists of a page share one entry: ticks of the others are left as they are. */
function saveTicks(list: Element): void {
  const ticked = new Set(load(keyOf(list)).split(" ").filter(Boolean));
  for (const box of boxes(list)) box.checked ? ticked.add(box.dataset.check!) : ticked.delete(box.dataset.check!);
  save(keyOf(list), [...ticked].join(" "));
}

function loadTicks(list: Element): void {
  const ticked = new Set(load(keyOf(list)).split(" "));
  for (const box of boxes(list)) box.checked = ticked.has(box.dataset.check!);
}

function show(list: Element, count: Element, clear: HTMLElement): void {
  const ticks = boxes(list);
  const n = ticks.filter((b) => b.checked).length;
  const job = load("job");
  count.textContent = uiText("ui.checks.count", { n, all: ticks.length }) + (job ? " · " + uiText("ui.checks.job", { job }) : "");
  clear.hidden = n === 0;
  resetLabel(clear);
  list.addEventListener("refill", () => show(list, count, clear), { once: true });
}

/** Asks for confirmation on the first click of a button and runs work on the second. */
function confirmThenRun(button: HTMLElement, n: number, work: () => void): void {
  if (button.dataset.sure) return work();
  button.dataset.sure = "1";
  button.textContent = uiText("ui.checks.sure", { n });
}

function resetLabel(button: HTMLElement): void {
  delete button.dataset.sure;
  button.textContent = uiText("ui.checks.clear");
}
