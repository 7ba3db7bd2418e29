// The buttons that print a page; opens folded parts before printing and folds them again
// afterwards.
import { all } from "./page";

/** Starts the handling of print events. */
export function startPrint(): void {
  document.addEventListener("click", (e) => (e.target as Element).closest("[data-do=print]") && print());
  let folded: HTMLDetailsElement[] = [];
  addEventListener("beforeprint", () => {
    folded = all<HTMLDetailsElement>("main details:not([open])");
    for (const d of folded) d.open = true;
  });
  addEventListener("afterprint", () => {
    for (const d of folded) d.open = false;
  });
}
