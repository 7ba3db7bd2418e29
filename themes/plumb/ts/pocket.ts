// The one-file edition: shows one page at a time by the hash of the address,
// and carries ticks and numbers out and in where the device forgets them.
import { answersKey, handOut, merge } from "./answers";
import { all, byId, putAway, say } from "./page";
import { everything, kept, save } from "./store";

export function startPocket(): void {
  document.documentElement.classList.add("leafed");
  const [first, ...others] = all(".leaf");
  for (const leaf of others) putAway(leaf);
  onShow = home = first;
  addEventListener("hashchange", turn);
  turn();
  const line = document.getElementById("kept")!;
  line.closest("details")!.open = !kept;
  line.textContent = say(kept ? "ui.pocket.kept" : "ui.pocket.unkept");
  document.querySelector("[data-do=export]")!.addEventListener("click", carryOut);
  document.getElementById("import")!.addEventListener("change", async (e) => {
    const file = (e.target as HTMLInputElement).files?.[0];
    const taken = file && takeIn(await file.text());
    line.textContent = say(taken ? "ui.pocket.taken" : "ui.pocket.wrong");
    if (taken && kept) location.reload();
  });
}

let onShow: HTMLElement; // the leaf on show
let home: HTMLElement; // the first

/** Turns to the page that holds the element the address names. */
function turn(): void {
  const hash = location.hash || document.querySelector<HTMLAnchorElement>(".brand")!.hash;
  const target = byId(decodeURIComponent(hash.slice(1)));
  if (target && !target.closest(".leaf")) return;
  const leaf = target?.closest<HTMLElement>(".leaf") ?? home;
  if (leaf !== onShow) {
    onShow.replaceWith(leaf);
    putAway(onShow);
    onShow = leaf;
  }
  document.title = leaf.dataset.title!;
  if (!target || target === leaf) scrollTo({ top: 0, behavior: "instant" });
  else target.scrollIntoView();
}

function carryOut(): void {
  handOut("coursebook.json", { coursebook: 1, kept: everything() });
}

/** Keeps what a file holds; false where it is not one of ours. */
function takeIn(text: string): boolean {
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
