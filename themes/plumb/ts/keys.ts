// Buttons for the signs that a phone's number pad lacks, below the input that has
// the focus; in a row of inputs, below all of them. They remain when the focus moves
// to an element that needs none, so that the layout does not shift under a finger.
import { make, uiText } from "./page";

const names: { [sign: string]: string } = { "'": "ui.key.feet", '"': "ui.key.inches", "/": "ui.key.over", "-": "ui.key.minus" };

/** Adds the buttons to the inputs of a form; typed is called after a button has changed an input. */
export function startKeys(form: HTMLFormElement, typed: (input: HTMLInputElement) => void): void {
  const bar = make("div", "keys");
  let target: HTMLInputElement | undefined;
  form.addEventListener("focusin", (e) => {
    const input = e.target as HTMLInputElement;
    if (!input.dataset.keys || input === target) return;
    target = input;
    bar.replaceChildren(...input.dataset.keys.split(" ").map(key));
    const drop = input.closest("li")?.querySelector("[data-do=drop]");
    if (drop) drop.before(bar);
    else input.after(bar);
  });
  // A press of a button must not take the focus from the input.
  bar.addEventListener("pointerdown", (e) => e.preventDefault());
  bar.addEventListener("click", (e) => {
    const sign = (e.target as HTMLElement).closest("button")?.value;
    if (!sign || !target) return;
    target.focus();
    target.setRangeText(sign, target.selectionStart!, target.selectionEnd!, "end");
    typed(target);
  });
}

/** A button of a sign. It is no stop of the tab key: a keyboard has the sign. */
function key(sign: string): HTMLElement {
  const button = make("button", "", sign);
  const name = uiText(names[sign]);
  if (name !== names[sign]) button.ariaLabel = name;
  button.type = "button";
  button.value = sign;
  button.tabIndex = -1;
  button.classList.toggle("inch", sign !== "-");
  return button;
}
