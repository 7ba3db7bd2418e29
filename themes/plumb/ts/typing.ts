// Typing with a thumb: a tap on an input or its label selects the text, so that the
// first key replaces it; Enter, which a phone's keyboard shows as "next", goes to
// the next input, and leaves the last one.
import { openInput } from "./entries";
import { all } from "./page";

/** Starts the behavior for a form. asked returns the path of the input that the answer asks for, if any. */
export function startTyping(form: HTMLFormElement, fields: HTMLElement, asked: () => string | undefined): void {
  let entered: EventTarget | null = null; // an input that has just received the focus
  form.addEventListener("focusin", (e) => {
    entered = e.target;
    if (isText(e.target as HTMLElement)) (e.target as HTMLInputElement).enterKeyHint = "next";
  });
  // A tap on a label also clicks its input.
  form.addEventListener("click", (e) => {
    const input = e.target as HTMLInputElement;
    if (input === entered && isText(input) && input.type !== "date") input.select();
    if (isText(input)) entered = null;
  });
  form.addEventListener("keydown", (e) => {
    const input = e.target as HTMLElement;
    if (e.key !== "Enter" || e.isComposing || !input.matches("input")) return;
    e.preventDefault();
    // Among the folded inputs the one that the answer asks for is next.
    const question = () => askedInput(fields, input, asked());
    const next = (input.closest(".rest") && question()) || nextInput(fields, input) || question();
    if (!next) return input.blur();
    next.focus();
    if (isText(next) && next.getAttribute("type") !== "date") (next as HTMLInputElement).select();
    if (isText(next)) next.scrollIntoView({ block: "nearest" });
    else next.closest("[data-field]")?.scrollIntoView({ block: "center" }); // all answers of a choice
  });
}

/** The input after another: in a column that decides, the one in the next row; else the next on the page that is not folded. */
function nextInput(fields: HTMLElement, from: HTMLElement): HTMLElement | undefined {
  const down = from.closest("[data-col][data-decides]");
  const list = all("input, select", fields).filter((e) => (e === from || e.checkVisibility()) && (!down || !down.parentElement!.parentElement!.contains(e) || e.closest("[data-col][data-decides]")));
  return list.slice(list.indexOf(from) + 1).find((e) => !sameGroup(e, from));
}

function sameGroup(a: Element, b: Element): boolean {
  return a.matches("[type=radio]") && a.closest("[data-field]") === b.closest("[data-field]");
}

/** The input that the answer asks for, if it is another one; its folded part is opened. */
function askedInput(fields: HTMLElement, from: HTMLElement, path?: string): HTMLElement | undefined {
  const input = path ? openInput(fields, path) : undefined;
  return input === from ? undefined : input;
}

function isText(e: HTMLElement): boolean {
  return e.matches("input:not([type=radio], [type=checkbox])");
}
