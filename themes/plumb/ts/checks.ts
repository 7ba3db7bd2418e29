// Ticks: stored on the device for each page and each site the reader names.
import { all, facts, make, root, say } from "./page";
import { load, save } from "./store";

/** The page a list of checks belongs to: the address without its site. */
function pageOf(list: Element): string {
  const article = list.closest(".article");
  if (article) return article.id;
  return location.pathname.slice(root.pathname.length).replace(/\.html$/, "") || facts.lang;
}

function keyOf(list: Element): string {
  return "ticks " + load("job") + " " + pageOf(list);
}

export function startChecks(): void {
  for (const list of all("ul.checks")) {
    const foot = make("div", "check-foot live");
    const count = make("p", "check-count");
    const clear = make("button", "", say("ui.checks.clear"));
    clear.setAttribute("type", "button");
    foot.append(count, clear);
    list.after(foot);
    const again = () => show(list, count, clear);
    list.addEventListener("change", () => (keep(list), again()));
    clear.addEventListener("click", () => askedTwice(clear, boxes(list).filter((b) => b.checked).length, () => {
      for (const box of boxes(list)) box.checked = false;
      keep(list);
      again();
    }));
    clear.addEventListener("blur", () => calm(clear));
    fill(list);
    again();
  }
  document.addEventListener("change", (e) => {
    if ((e.target as HTMLElement).id !== "job") return;
    for (const list of all("ul.checks")) {
      fill(list);
      list.dispatchEvent(new Event("refill"));
    }
  });
}

function boxes(list: Element): HTMLInputElement[] {
  return all<HTMLInputElement>("[data-check]", list);
}

/** The lists of one page share its ticks, so only this list's are changed. */
function keep(list: Element): void {
  const ticked = new Set(load(keyOf(list)).split(" ").filter(Boolean));
  for (const box of boxes(list)) box.checked ? ticked.add(box.dataset.check!) : ticked.delete(box.dataset.check!);
  save(keyOf(list), [...ticked].join(" "));
}

function fill(list: Element): void {
  const ticked = new Set(load(keyOf(list)).split(" "));
  for (const box of boxes(list)) box.checked = ticked.has(box.dataset.check!);
}

function show(list: Element, count: Element, clear: HTMLElement): void {
  const ticks = boxes(list);
  const n = ticks.filter((b) => b.checked).length;
  const job = load("job");
  count.textContent = say("ui.checks.count", { n, all: ticks.length }) + (job ? " · " + say("ui.checks.job", { job }) : "");
  clear.hidden = n === 0;
  calm(clear);
  list.addEventListener("refill", () => show(list, count, clear), { once: true });
}

/** A button that asks for a second touch before it does its work. */
function askedTwice(button: HTMLElement, n: number, work: () => void): void {
  if (button.dataset.sure) return work();
  button.dataset.sure = "1";
  button.textContent = say("ui.checks.sure", { n });
}

function calm(button: HTMLElement): void {
  delete button.dataset.sure;
  button.textContent = say("ui.checks.clear");
}
