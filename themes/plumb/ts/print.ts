// Paper has no folds: what is folded opens before printing and folds again.
import { all } from "./page";

export function startPrint(): void {
  let folded: HTMLDetailsElement[] = [];
  addEventListener("beforeprint", () => {
    folded = all<HTMLDetailsElement>("main details:not([open])");
    for (const d of folded) d.open = true;
  });
  addEventListener("afterprint", () => {
    for (const d of folded) d.open = false;
  });
}
