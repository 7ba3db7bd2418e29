// Sections that are folded under their heading, before the steps of a procedure. A link to
// such a heading, from the jump marks, the search or another page, opens its section.
import { byId } from "./page";

/** Opens the section of the page's fragment, now and whenever the fragment changes. */
export function startFolds(): void {
  openTarget();
  addEventListener("hashchange", openTarget);
}

function openTarget(): void {
  const fold = targetOf(location.hash)?.closest("summary")?.parentElement;
  fold?.setAttribute("open", "");
}

/** The element that a fragment names; null if there is none, also for a fragment that no page writes. */
function targetOf(hash: string): HTMLElement | null {
  try {
    return byId(decodeURIComponent(hash.slice(1)));
  } catch {
    return null;
  }
}
