// The edition: its name in the footer, and the box that offers a newer one.
import { all, byId, facts, uiText } from "./page";
import { release } from "./release";

/** Writes the edition in place of the page id: in the footer, on cards and posters. Offers a reload where the page is of another edition. */
export function startEdition(): void {
  release().then(
    ({ edition }) => all("#page-id, [data-part=page-id]").forEach((e) => (e.textContent = uiText("ui.edition", { id: edition }))),
    (e) => e.message === "ui.update.newer" && offerReload(),
  );
}

/** Offers to reload a page whose edition differs from the server's or the worker's. */
export function offerReload(): void {
  offer(uiText("ui.update.newer"), () => location.reload());
}

/** Opens the update box; accept is called on its button. An empty text leaves the template's text, which offers the waiting edition. */
export function offer(text: string, accept: () => void): void {
  if (facts.pocket) return;
  const box = byId("edition")!;
  if (text) box.querySelector("p")!.textContent = text;
  box.querySelector("button")!.onclick = accept;
  box.hidden = false;
}
