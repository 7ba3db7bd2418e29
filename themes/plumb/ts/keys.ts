// The signs that a phone's number pad lacks, below the input that has the
// focus. They stay when the focus moves on to something that needs none, so
// that nothing moves away under a finger.
import { make } from "./page";

/** Watches a form; typed is called after a key has changed an input. */
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
  // Touching a key must not take the focus from the input.
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
