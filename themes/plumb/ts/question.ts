// A question of a lesson. The page comes with its answer folded; this builds
// what a reader answers with, and opens the answer once one was given. Numbers
// are drawn and marked by the module.
import { record } from "./answers";
import { whenNear } from "./calculator";
import { onStyle, style, type Style } from "./choices";
import { startKeys } from "./keys";
import { ask, onRestart } from "./module";
import { all, make, say, Unavailable } from "./page";
import type { ProtocolRecord } from "./records";
import { step } from "./result";

/** What came of an answer: right, wrong, or why it could not be read. */
type Verdict = boolean | string;

/** A way to answer: what the reader touches, and what it comes to. */
interface Means {
  controls: HTMLElement;
  given(): boolean; // whether there is an answer at all
  verdict(): Promise<Verdict>;
  clear(): void; // for another try
}

export class Question {
  private form = make("form", "answering");
  private said = make("p", "verdict");
  private notice = ""; // comes before the verdict
  private check: HTMLElement;
  private after = make("p", "after");
  private reply: HTMLDetailsElement;
  private means: Means;
  private lang: string;

  /** onAnswered is called when an answer has been stored. */
  constructor(private item: HTMLElement, private next: string | undefined, private onAnswered: () => void) {
    this.lang = item.closest<HTMLElement>("[lang]")!.lang;
    this.reply = item.querySelector(":scope > .reply")!;
    const kind = item.dataset.kind;
    this.means = kind === "number" ? new NumberMeans(item, this.reply, this.lang, (why) => this.unable(why)) : kind === "order" ? orderMeans(item, this.reply) : choiceMeans(item);
    this.check = button(this.say("ui.train.check"));
    (this.check as HTMLButtonElement).type = "submit";
    this.said.setAttribute("role", "status");
    if (kind === "order") this.form.append(make("p", "hint", this.say("ui.train.tap")));
    this.form.append(this.means.controls, this.check, this.said);
    this.form.noValidate = true;
    this.form.addEventListener("submit", (e) => (e.preventDefault(), void this.judge()));
    this.reply.before(this.form);
    this.reply.after(this.after);
    this.ready();
    if (kind === "number") onRestart(() => (this.said.textContent = this.notice = this.say("ui.restarted") + " "));
  }

  private say(key: string, slots = {}): string {
    return say(key, slots, this.lang);
  }

  private ready(): void {
    delete this.item.dataset.verdict;
    this.reply.hidden = true;
    this.reply.open = false;
    this.after.hidden = true;
    this.check.hidden = false;
    this.said.textContent = this.notice = "";
  }

  private async judge(): Promise<void> {
    if (!this.means.given()) return void (this.said.textContent = this.say("ui.train.pick"));
    let verdict: Verdict;
    try {
      verdict = await this.means.verdict();
    } catch (e) {
      return this.unable(e);
    }
    if (typeof verdict === "string") return void (this.said.textContent = this.say("ui.train.unread", { why: verdict }));
    const n = record(this.item.dataset.question!, verdict);
    this.item.dataset.verdict = verdict ? "right" : "wrong";
    this.said.textContent = this.notice + this.say(verdict ? "ui.train.right" : "ui.train.not-right") + " " + this.say("ui.train.back", { n });
    this.reply.hidden = false;
    this.reply.open = true;
    this.check.hidden = true;
    this.follow();
    this.onAnswered();
  }

  /** What a reader may do after an answer. */
  private follow(): void {
    const again = button(this.say(this.item.dataset.kind === "number" ? "ui.train.again" : "ui.train.retry"));
    again.addEventListener("click", () => {
      this.ready();
      this.means.clear();
      this.form.querySelector<HTMLElement>("input, button")!.focus();
    });
    this.after.replaceChildren(again);
    if (this.next) {
      const link = make("a", "button", this.say("ui.train.next"));
      link.href = "#" + this.next;
      this.after.append(" ", link);
    }
    this.after.hidden = false;
    again.focus({ preventScroll: true });
  }

  /** Without the module the question is left as printed. */
  private unable(why: unknown): void {
    if (!(why instanceof Unavailable)) console.error(why);
    this.said.textContent = this.say(why instanceof Unavailable ? why.message : "ui.calc.no-module");
    this.check.hidden = true;
    this.reply.hidden = false;
  }
}

function button(text: string): HTMLButtonElement {
  const b = make("button", "", text);
  b.type = "button";
  return b;
}

function choiceMeans(item: HTMLElement): Means {
  const list = item.querySelector(".choices")!;
  const name = "a-" + item.id;
  const box = make("fieldset", "field", make("legend", "unseen", item.querySelector("p")!.textContent!));
  all("li", list).forEach((li, i) => {
    const radio = make("input");
    radio.type = "radio";
    radio.name = name;
    radio.value = String(i + 1);
    box.append(make("label", "tick", radio, make("span", "", li.textContent!)));
  });
  list.replaceWith(box);
  const chosen = () => box.querySelector<HTMLInputElement>(":checked");
  return {
    controls: box,
    given: () => !!chosen(),
    verdict: async () => chosen()!.value === item.dataset.right,
    clear: () => chosen() && (chosen()!.checked = false),
  };
}

/** Steps that are touched in their order; what was touched bears its number. */
function orderMeans(item: HTMLElement, reply: Element): Means {
  const list = item.querySelector(".choices")!;
  const right = all("ol > li", reply).map((li) => li.textContent!);
  const box = make("div", "ordering");
  let taken: HTMLElement[] = [];
  const buttons = right.map((text) => {
    const b = button("");
    b.append(make("b", "place"), " ", make("span", "", text));
    b.addEventListener("click", () => {
      taken = taken.includes(b) ? taken.filter((t) => t !== b) : [...taken, b];
      show();
    });
    return b;
  });
  const show = () => {
    for (const b of buttons) {
      const at = taken.indexOf(b) + 1;
      b.firstElementChild!.textContent = at ? String(at) : "";
      b.setAttribute("aria-pressed", String(at > 0));
    }
  };
  const clear = () => {
    taken = [];
    box.replaceChildren(...shuffled(buttons));
    show();
  };
  list.replaceWith(box);
  clear();
  return {
    controls: box,
    given: () => taken.length === buttons.length,
    verdict: async () => taken.every((b, i) => b === buttons[i]),
    clear,
  };
}

/** Another order of a list of two or more. */
function shuffled<T>(list: T[]): T[] {
  const mixed = [...list];
  do {
    for (let i = mixed.length - 1; i > 0; i--) {
      const k = Math.floor(Math.random() * (i + 1));
      [mixed[i], mixed[k]] = [mixed[k], mixed[i]];
    }
  } while (mixed.every((t, i) => t === list[i]));
  return mixed;
}

/** A number: its inputs are drawn when the question comes near, and again each time. */
class NumberMeans implements Means {
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
    this.label.append(say("ui.train.typed", {}, lang));
    this.controls.append(this.label, this.input, this.hint);
    this.controls.disabled = true;
    whenNear(item, () => {
      startKeys(item.querySelector("form")!, () => {});
      void this.draw();
    });
    onStyle(() => this.drawn && !this.answered && void this.draw());
  }

  given = () => !this.controls.disabled && this.input.value.trim() !== "";

  clear(): void {
    this.answered = false;
    this.input.value = "";
    this.controls.disabled = false;
    void this.draw();
  }

  private head(s: Style): ProtocolRecord[] {
    const d = this.item.dataset;
    return [["calc", d.calculator!], ["style", s.system, s.mark], ["answer", d.answer!], ["tolerance", d.tolerance!]];
  }

  private async draw(): Promise<void> {
    const now = style();
    const { vary, set } = this.item.dataset;
    const fixed = (JSON.parse(set!) as string[][]).map((pair) => ["set", ...pair]);
    const seed = crypto.getRandomValues(new Uint32Array(1))[0];
    try {
      const answer = await ask("practice", this.lang, [...this.head(now), ...fixed, ...vary!.split(" ").map((v) => ["vary", v]), ["seed", String(seed)]]);
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
      const mine = list.parentElement!.matches(".usual") ? "1" : "0";
      list.replaceChildren(...given.filter((r) => r[5] === mine).map(([, , label, text, fresh]) =>
        make("div", fresh === "1" ? "fresh" : "", make("dt", "", label), make("dd", "", text))));
    }
    const unit = answer.find((r) => r[0] === "asked")?.[2];
    this.hint.textContent = unit ? say("ui.train.unit", { unit }, this.lang) : "";
  }

  async verdict(): Promise<Verdict> {
    const { style, sets } = this.drawn!;
    const answer = await ask("judge", this.lang, [...this.head(style), ...sets, ["typed", this.input.value]]);
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
