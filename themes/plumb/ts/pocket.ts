// The one-file edition: shows one article at a time by the hash of the address,
// and exports and imports stored ticks and numbers.
import { answersKey, download, merge } from "./answers";
import { all, byId, detach, uiText } from "./page";
import { allStored, persistent, save } from "./store";
import { notePage } from "./today";

/** Starts the one-file edition. */
export function startPocket(): void {
  document.documentElement.classList.add("paged");
  const [first, ...others] = all(".article");
  for (const article of others) detach(article);
  shown = home = first;
  for (const line of all(".saved")) line.textContent = uiText("ui.saved.file");
  addEventListener("hashchange", navigate);
  navigate();
  const status = document.getElementById("kept")!;
  status.closest("details")!.open = !persistent;
  status.textContent = uiText(persistent ? "ui.pocket.kept" : "ui.pocket.unkept");
  document.querySelector("[data-do=export]")!.addEventListener("click", exportStored);
  document.getElementById("import")!.addEventListener("change", async (e) => {
    const file = (e.target as HTMLInputElement).files?.[0];
    const imported = file && importStored(await file.text());
    status.textContent = uiText(imported ? "ui.pocket.taken" : "ui.pocket.wrong");
    if (imported && persistent) location.reload();
  });
}

let shown: HTMLElement; // the article in the document
let home: HTMLElement; // the first

/** Shows the article that holds the element named by the hash of the address. */
function navigate(): void {
  const hash = location.hash || document.querySelector<HTMLAnchorElement>(".brand")!.hash;
  const target = byId(decodeURIComponent(hash.slice(1)));
  if (target && !target.closest(".article")) return;
  const article = target?.closest<HTMLElement>(".article") ?? home;
  if (article !== shown) {
    shown.replaceWith(article);
    detach(shown);
    shown = article;
  }
  document.title = article.dataset.title!;
  notePage();
  if (!target || target === article) scrollTo({ top: 0, behavior: "instant" });
  else target.scrollIntoView();
}

function exportStored(): void {
  download("coursebook.json", { coursebook: 1, kept: allStored() });
}

/** Stores the entries of an exported file; returns false for any other text. */
function importStored(text: string): boolean {
  try {
    const { coursebook, kept: entries } = JSON.parse(text);
    if (coursebook !== 1) return false;
    const list = Object.entries(entries as Record<string, unknown>);
    if (!list.every(([, v]) => typeof v === "string")) return false;
    for (const [k, v] of list) k === answersKey ? merge(v as string) : save(k, v as string);
    return true;
  } catch {
    return false;
  }
}
