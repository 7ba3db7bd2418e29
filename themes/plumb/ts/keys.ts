// Buttons for the signs that a phone's number pad lacks, below the input that has
// the focus. They remain when the focus moves to an element that needs none, so
// that the layout does not shift under a finger.
import { make } from "./page";

/** Adds the buttons to the inputs of a form; typed is called after a button has changed an input. */
export function startKeys(form: HTMLFormElement, typed: (input: HTMLInputElement) => void): void {
  const bar = make("div", "keys");
  let target: HTMLInputElement | undefined;
  form.addEventListener("focusin", (e) => {
    const input = e.target as HTMLInputElement;
    if (!input.dataset.keys || input === target) return;
    target = input;
    bar.replaceChildren(...input.dataset.keys.split(" ").map(key));
    input.after(bar);
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

function key(sign: string): HTMLElement {
  const button = make("button", "", sign);
  button.type = "button";
  button.value = sign;
  return button;
}
