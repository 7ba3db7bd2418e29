// What several calculators ask for: a number that the reader has typed for a measure in
// one calculator is offered in the others, by a button under the input. It is never
// filled in unasked.
import type { Style } from "./choices";
import { textOf } from "./entries";
import { all, make, uiText } from "./page";
import type { ProtocolRecord } from "./records";
import { load, save } from "./store";

/** A number that was typed for a measure. */
export interface Measured {
  text: string; // with its unit
  style: Style;
  id: string; // of the calculator
  title: string;
}

const key = (name: string) => "measure " + name;

/** Stores what the reader has typed for measures; answer has the number of each with its unit. */
export function storeMeasures(section: HTMLElement, own: string[], answer: ProtocolRecord[], style: Style): void {
  for (const [record, path, name, text] of answer) {
    if (record !== "measure" || !own.includes(path)) continue;
    const measured: Measured = { text, style, id: section.dataset.calc!, title: section.ariaLabel! };
    save(key(name), JSON.stringify(measured));
  }
}

/** Offers the numbers of other calculators under the inputs that are not the reader's yet. */
export function showOffers(section: HTMLElement, fields: HTMLElement, take: (path: string, measured: Measured) => void): void {
  for (const place of all("[data-measure]", fields)) {
    place.querySelector(".offer")?.remove();
    const measured = parse(load(key(place.dataset.measure!)));
    if (!measured || measured.id === section.dataset.calc || place.dataset.own !== undefined || textOf(place) === measured.text) continue;
    const button = make("button", "offer", uiText("ui.calc.offer", { value: measured.text, title: measured.title }));
    button.type = "button";
    button.addEventListener("click", () => {
      button.remove();
      take(place.dataset.field!, measured);
    });
    place.append(button);
  }
}

function parse(text: string): Measured | undefined {
  try {
    const m = JSON.parse(text) as Measured;
    return [m.text, m.title, m.id, m.style.system, m.style.mark].every((s) => typeof s === "string") ? m : undefined;
  } catch {
    return undefined;
  }
}
