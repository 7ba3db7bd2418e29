// The edition: its name in the foot of the page, and the box that offers a
// newer one.
import { all, byId, facts, say } from "./page";
import { release } from "./release";

/** Writes the edition where the page has its id: in the foot, on cards and posters. Or says that the page is of another edition. */
export function startEdition(): void {
  release().then(
    ({ edition }) => all("#page-id, [data-part=page-id]").forEach((e) => (e.textContent = say("ui.edition", { id: edition }))),
    (e) => e.message === "ui.update.newer" && offerReload(),
  );
}

/** Offers to reload the page, which is of another edition than the server's or the worker's. */
export function offerReload(): void {
  offer(say("ui.update.newer"), () => location.reload());
}

/** Opens the box. Without a text it keeps the template's, which offers the waiting edition. */
export function offer(text: string, accept: () => void): void {
  if (facts.pocket) return;
  const box = byId("edition")!;
  if (text) box.querySelector("p")!.textContent = text;
  box.querySelector("button")!.onclick = accept;
  box.hidden = false;
}
