// A question of a lesson. The page contains its answer, folded. This script adds
// the controls for the reader's answer, marks it and opens the folded answer. A
// choice is answered by one touch; steps and numbers are checked with a button. It
// shuffles choices and steps each time it shows them. The module draws and marks
// numbers. quiz.ts shows the questions of a lesson one at a time.
import { record } from "./answers";
import { whenNear } from "./calculator";
import { onStyle, style, type Style } from "./choices";
import { startKeys } from "./keys";
import { onRestart, request } from "./module";
import { all, make, uiText, Unavailable } from "./page";
import type { ProtocolRecord } from "./records";
import { step } from "./result";

/** The mark of an answer: right, wrong, or the parse error of a number. */
type Verdict = boolean | string;

/** The controls of one kind of question. */
interface AnswerControl {
  controls: HTMLElement;
  isFilled(): boolean; // whether the reader has entered an answer
  verdict(): Promise<Verdict>;
  mark?(): void; // marks the answer in the controls, after the verdict
  clear(): void; // empties the controls for another try
}

export class Question {
  private form = make("form", "answering");
  private status = make("p", "verdict");
  private notice = ""; // shown before the verdict
  private check: HTMLElement;
  private followUp = make("p", "after");
  private reply: HTMLDetailsElement;
  private control: AnswerControl;
  private lang: string;

  /** onward returns the links that follow an answer. onAnswered is called when an answer has been stored. */
  constructor(private item: HTMLElement, private onward: () => HTMLElement[], private onAnswered: () => void) {
    this.lang = item.closest<HTMLElement>("[lang]")!.lang;
    this.reply = item.querySelector(":scope > .reply")!;
    const kind = item.dataset.kind;
    this.control = kind === "number" ? new NumberControl(item, this.reply, this.lang, (why) => this.showUnavailable(why)) : kind === "order" ? orderControl(item, this.reply) : choiceControl(item, this.lang, () => void this.judge());
    this.check = button(this.uiText("ui.train.check"));
    (this.check as HTMLButtonElement).type = "submit";
    this.status.setAttribute("role", "status");
    if (kind === "order") this.form.append(make("p", "hint", this.uiText("ui.train.tap")));
    this.form.append(this.control.controls);
    if (kind !== "choice") this.form.append(this.check);
    this.form.append(this.status);
    this.form.noValidate = true;
    this.form.addEventListener("submit", (e) => (e.preventDefault(), void this.judge()));
    this.reply.before(this.form);
    this.reply.after(this.followUp);
    this.reset();
    if (kind === "number") onRestart(() => (this.status.textContent = this.notice = this.uiText("ui.restarted") + " "));
  }

  private uiText(key: string, slots = {}): string {
    return uiText(key, slots, this.lang);
  }

  private reset(): void {
    delete this.item.dataset.verdict;
    this.reply.hidden = true;
    this.reply.open = false;
    this.followUp.hidden = true;
    this.check.hidden = false;
    this.status.textContent = this.notice = "";
  }

  private async judge(): Promise<void> {
    if (!this.control.isFilled()) return void (this.status.textContent = this.uiText("ui.train.pick"));
    let verdict: Verdict;
    try {
      verdict = await this.control.verdict();
    } catch (e) {
      return this.showUnavailable(e);
    }
    if (typeof verdict === "string") return void (this.status.textContent = this.uiText("ui.train.unread", { why: verdict }));
    const n = record(this.item.dataset.question!, verdict);
    this.item.dataset.verdict = verdict ? "right" : "wrong";
    this.status.textContent = this.notice + this.uiText(verdict ? "ui.train.right" : "ui.train.not-right") + " " + this.uiText("ui.train.back", { n });
    this.reply.hidden = false;
    this.reply.open = true;
    this.check.hidden = true;
    this.control.mark?.();
    this.onAnswered();
    this.showFollowUp();
  }

  /** Shows what follows an answer, try again and the links onward, and scrolls them into view. */
  private showFollowUp(): void {
    const again = button(this.uiText(this.item.dataset.kind === "number" ? "ui.train.again" : "ui.train.retry"));
    again.addEventListener("click", () => {
      this.reset();
      this.control.clear();
      this.form.querySelector<HTMLElement>("input, button")!.focus();
    });
    const links = this.onward();
    this.followUp.replaceChildren(...links.flatMap((link) => [link, " "]), again);
    this.followUp.hidden = false;
    (links[0] ?? again).focus({ preventScroll: true });
    this.followUp.scrollIntoView({ block: "nearest", behavior: "instant" });
    const marked = this.item.dataset.kind === "choice" ? this.control.controls : this.status;
    marked.scrollIntoView({ block: "nearest", behavior: "instant" });
  }

  /** Shows why the module cannot be used, and the folded answer of the page. */
  private showUnavailable(why: unknown): void {
    if (!(why instanceof Unavailable)) console.error(why);
    this.status.textContent = this.uiText(why instanceof Unavailable ? why.message : "ui.calc.no-module");
    this.check.hidden = true;
    this.reply.hidden = false;
  }
}

/** A button with a text. */
export function button(text: string): HTMLButtonElement {
  const b = make("button", "", text);
  b.type = "button";
  return b;
}

/** Choices as buttons: a touch is the answer. After it only the right choice and the reader's are shown, each with its sign and word. */
function choiceControl(item: HTMLElement, lang: string, answered: () => void): AnswerControl {
  const list = item.querySelector(".choices")!;
  const box = make("fieldset", "field options", make("legend", "unseen", item.querySelector("p")!.textContent!));
  let chosen: HTMLButtonElement | undefined;
  const buttons = all("li", list).map((li, i) => {
    const b = button("");
    b.append(make("span", "", li.textContent!));
    b.value = String(i + 1); // its place on the printed page, by which the right one is known
    b.addEventListener("click", () => {
      chosen = b;
      answered();
    });
    return b;
  });
  const mix = () => box.append(...(list.matches("[data-ordered]") ? buttons : shuffled(buttons)));
  mix();
  list.replaceWith(box);
  return {
    controls: box,
    isFilled: () => !!chosen,
    verdict: async () => chosen!.value === item.dataset.right,
    mark: () => {
      for (const b of buttons) {
        const right = b.value === item.dataset.right;
        b.disabled = true;
        b.hidden = !right && b !== chosen;
        if (b.hidden) continue;
        b.dataset.mark = right ? "right" : "wrong";
        b.append(make("small", "", uiText(right ? "ui.train.the-right" : "ui.train.yours-was", {}, lang)));
      }
    },
    clear: () => {
      chosen = undefined;
      for (const b of buttons) {
        b.disabled = b.hidden = false;
        delete b.dataset.mark;
        b.querySelector("small")?.remove();
      }
      mix();
    },
  };
}

/** Steps to be touched in order; each touched step shows its number. */
function orderControl(item: HTMLElement, reply: Element): AnswerControl {
  const list = item.querySelector(".choices")!;
  const right = all("ol > li", reply).map((li) => li.textContent!);
  const box = make("div", "ordering");
  let chosen: HTMLElement[] = [];
  const buttons = right.map((text) => {
    const b = button("");
    b.append(make("b", "place"), " ", make("span", "", text));
    b.addEventListener("click", () => {
      chosen = chosen.includes(b) ? chosen.filter((t) => t !== b) : [...chosen, b];
      show();
    });
    return b;
  });
  const show = () => {
    for (const b of buttons) {
      const at = chosen.indexOf(b) + 1;
      b.firstElementChild!.textContent = at ? String(at) : "";
      b.setAttribute("aria-pressed", String(at > 0));
    }
  };
  const clear = () => {
    chosen = [];
    for (const b of buttons) {
      b.disabled = false;
      delete b.dataset.mark;
    }
    box.replaceChildren(...disordered(buttons));
    show();
  };
  list.replaceWith(box);
  clear();
  return {
    controls: box,
    isFilled: () => chosen.length === buttons.length,
    verdict: async () => chosen.every((b, i) => b === buttons[i]),
    mark: () => {
      for (const [i, b] of buttons.entries()) {
        b.disabled = true;
        b.dataset.mark = chosen[i] === b ? "right" : "wrong";
      }
      box.replaceChildren(...chosen);
    },
    clear,
  };
}

/** A random order of a list. Each order is as likely as any other. */
function shuffled<T>(list: T[]): T[] {
  const mixed = [...list];
  for (let i = mixed.length - 1; i > 0; i--) {
    const k = Math.floor(Math.random() * (i + 1));
    [mixed[i], mixed[k]] = [mixed[k], mixed[i]];
  }
  return mixed;
}

/** A random order of a list of two or more that differs from the order of the list. */
function disordered<T>(list: T[]): T[] {
  let mixed = shuffled(list);
  while (mixed.every((t, i) => t === list[i])) mixed = shuffled(list);
  return mixed;
}

/** A number: its inputs are drawn at random when the question is near the screen, and again for each try. */
class NumberControl implements AnswerControl {
  controls: HTMLFieldSetElement = make("fieldset", "field number");
  private input = make("input");
  private label = make("label");
  private hint = make("p", "hint");
  private drawn?: { style: Style; sets: ProtocolRecord[] };
  private answered = false;

  constructor(private item: HTMLElement, private reply: Element, private lang: string, private failed: (why: unknown) => void) {
    const id = "n-" + item.id;
    this.input.id = this.label.htmlFor = id;
    this.hint.id = id + "-h";
    this.input.inputMode = "decimal";
    this.input.autocomplete = "off";
    if (item.dataset.signs) this.input.dataset.keys = item.dataset.signs;
    this.input.setAttribute("aria-describedby", this.hint.id);
    this.label.append(uiText("ui.train.typed", {}, lang));
    this.controls.append(this.label, this.input, this.hint);
    this.controls.disabled = true;
    whenNear(item, () => {
      startKeys(item.querySelector("form")!, () => {});
      void this.draw();
    });
    onStyle(() => this.drawn && !this.answered && void this.draw());
  }

  isFilled = () => !this.controls.disabled && this.input.value.trim() !== "";

  clear(): void {
    this.answered = false;
    this.input.value = "";
    this.controls.disabled = false;
    void this.draw();
  }

  private header(s: Style): ProtocolRecord[] {
    const d = this.item.dataset;
    return [["calc", d.calculator!], ["style", s.system, s.mark], ["answer", d.answer!], ["tolerance", d.tolerance!]];
  }

  private async draw(): Promise<void> {
    const now = style();
    const { vary, set } = this.item.dataset;
    const fixed = (JSON.parse(set!) as string[][]).map((pair) => ["set", ...pair]);
    const seed = crypto.getRandomValues(new Uint32Array(1))[0];
    try {
      const answer = await request("practice", this.lang, [...this.header(now), ...fixed, ...vary!.split(" ").map((v) => ["vary", v]), ["seed", String(seed)]]);
      this.drawn = { style: now, sets: answer.filter((r) => r[0] === "set") };
      this.show(answer);
      this.controls.disabled = false;
    } catch (e) {
      this.failed(e);
    }
  }

  private show(answer: ProtocolRecord[]): void {
    const given = answer.filter((r) => r[0] === "given");
    for (const list of all(".given", this.item)) {
      const usual = list.parentElement!.matches(".usual") ? "1" : "0";
      list.replaceChildren(...given.filter((r) => r[5] === usual).map(([, , label, text, fresh]) =>
        make("div", fresh === "1" ? "fresh" : "", make("dt", "", label), make("dd", "", text))));
    }
    const unit = answer.find((r) => r[0] === "asked")?.[2];
    this.hint.textContent = unit ? uiText("ui.train.unit", { unit }, this.lang) : "";
  }

  async verdict(): Promise<Verdict> {
    const { style, sets } = this.drawn!;
    const answer = await request("judge", this.lang, [...this.header(style), ...sets, ["typed", this.input.value]]);
    const [, verdict, why] = answer.find((r) => r[0] === "verdict")!;
    if (verdict === "unread") this.input.setAttribute("aria-invalid", "true");
    else this.input.removeAttribute("aria-invalid");
    if (verdict === "unread") return why;
    this.answered = this.controls.disabled = true;
    const [, , label, shown] = answer.find((r) => r[0] === "out")!;
    this.reply.querySelector("strong")!.textContent = label + ": " + shown;
    this.reply.querySelector(".worked")?.replaceChildren(...answer.filter((r) => r[0] === "step").map(step));
    return verdict === "right";
  }
}
