// A calculator on a page: reads its inputs, asks the module, shows the
// answer. The page comes with the example worked out; until the reader
// changes something, the example is shown.
import { choose, onStyle, style, type Style } from "./choices";
import { addRow, fillEntries, readEntries, sameEntries, watchRows, type Entry } from "./entries";
import { startKeys } from "./keys";
import { ask, onRestart, startModule } from "./module";
import { all, say, Unavailable } from "./page";
import type { ProtocolRecord } from "./records";
import { clearResult, part, showMore, showResult } from "./result";
import { load, persistent, save } from "./store";

const rounds = 4; // an answer may ask for inputs that ask for further ones

/** What is stored of a reader's inputs. */
interface Kept {
  style: Style;
  entries: Entry[];
}

export function startCalculators(): void {
  for (const section of all("[data-calc]")) new Calculator(section);
}

/** Starts a calculator that was inserted in the page, with the inputs that its place presets. */
export function startCalculator(section: HTMLElement, preset: Entry[]): void {
  new Calculator(section, preset, true);
}

class Calculator {
  private form: HTMLFormElement;
  private fields: HTMLFieldSetElement;
  private key: string;
  private lang: string;
  private printed: Entry[]; // the example as the page came with it, US and point
  private example: Entry[]; // the example in the style of the inputs
  private at: Style = { system: "us", mark: "point" };
  private before?: { style: Style; entries: Entry[]; shown: Entry[] }; // the last change of units
  private keeping = 0;
  private due = false; // a run is queued that will read what is typed by then
  private lastRun = 0; // counts runs: only the last may show
  private queue: Promise<void> = Promise.resolve();

  constructor(private section: HTMLElement, private preset: Entry[] = [], now = false) {
    this.form = section.querySelector("form")!;
    this.fields = this.form.querySelector(".fields")!;
    this.lang = section.closest<HTMLElement>("[lang]")!.lang;
    this.key = "calc " + section.dataset.calc;
    // What a browser restores on going back is none of the example.
    this.form.reset();
    if (preset.length) this.fillPreset();
    this.printed = this.example = readEntries(this.fields);
    this.listen();
    this.showUnits();
    this.explain("ui.calc.loading");
    // A module that is saved on the device costs no signal: then nothing waits.
    if (now || load(this.key) || navigator.serviceWorker?.controller) this.start();
    else whenNear(section, () => this.start());
  }

  private listen(): void {
    this.form.addEventListener("submit", (e) => e.preventDefault());
    this.form.addEventListener("input", (e) => {
      const input = e.target as HTMLInputElement;
      if (input.closest(".tools")) choose("units", input.value);
      else this.changed();
    });
    this.form.addEventListener("click", (e) => this.click(e.target as HTMLElement));
    startKeys(this.form, () => this.changed());
    addEventListener("pagehide", () => this.keeping && this.keep());
    onStyle(() => this.later(async () => void (await this.restyle(style()))));
    onRestart(() => this.explain("ui.restarted"));
  }

  private click(target: HTMLElement): void {
    const what = target.closest("button")?.dataset.do;
    const place = target.closest<HTMLElement>("[data-rows]");
    if (what === "reset") this.later(() => this.reset());
    if (!place) return;
    if (what === "add") {
      addRow(place).querySelector<HTMLElement>("input, select")!.focus();
    } else if (what === "drop") {
      target.closest("li")!.remove();
      place.querySelector<HTMLElement>("[data-do=add]")!.focus();
    } else {
      return;
    }
    watchRows(place);
    this.changed();
  }

  /** Does one thing after the other; a fault of the module ends them all. */
  private later(work: () => Promise<void>): void {
    this.queue = this.queue.then(work).catch((e) => this.stop(e));
  }

  private start(): void {
    this.later(async () => {
      await startModule();
      this.fields.disabled = false;
      this.explain("");
      const yours = this.yours();
      for (const place of all("[data-rows]", this.fields)) watchRows(place);
      if (yours) {
        // The example is wanted in the reader's units too, for going back.
        await this.restyle(yours.style);
        fillEntries(this.fields, yours.entries, true);
        this.before = undefined;
        this.keep(); // marks them as the reader's own
      }
      if (await this.restyle(style())) return;
      if (yours || this.preset.length) await this.run();
      else showMore(this.section, await this.answer());
    });
  }

  /**
   * Fills the inputs that the page presets. The result that came with the form
   * is of other inputs: it goes until the module has answered.
   */
  private fillPreset(): void {
    const named = new Set(this.preset.map(([path]) => path.split(".")[0]));
    const others = readEntries(this.fields).filter(([path]) => !named.has(path.split(".")[0]));
    fillEntries(this.fields, [...others, ...this.preset], true);
    clearResult(this.section);
  }

  /** The inputs stored at an earlier visit, if they can be parsed. */
  private yours(): Kept | undefined {
    try {
      const k = JSON.parse(load(this.key)) as Kept;
      const texts = k.entries.every((e) => e.length === 2 && e.every((s) => typeof s === "string"));
      return texts && typeof k.style.system === "string" && typeof k.style.mark === "string" ? k : undefined;
    } catch {
      return undefined;
    }
  }

  private changed(): void {
    this.section.classList.add("typed"); // for the style sheet
    if (this.due) return;
    this.due = true;
    this.later(() => {
      this.due = false;
      return this.run();
    });
  }

  private async run(): Promise<void> {
    const nr = ++this.lastRun;
    let answer: ProtocolRecord[] = [];
    for (let i = 0; i < rounds; i++) {
      answer = await this.answer();
      if (nr !== this.lastRun) return;
      if (!this.showAsked(answer)) break;
    }
    showResult(this.section, this.fields, answer);
    // Inputs are stored once the result has been painted: the reader waits
    // for that.
    clearTimeout(this.keeping);
    this.keeping = window.setTimeout(() => this.keep(), 100);
  }

  private answer(): Promise<ProtocolRecord[]> {
    return ask("run", this.lang, [...this.head(this.at), ...sets(readEntries(this.fields, true))]);
  }

  private head(s: Style): ProtocolRecord[] {
    return [["calc", this.section.dataset.calc!], ["style", s.system, s.mark]];
  }

  /** Shows the inputs that are asked for now and hides the others; returns whether that changed. */
  private showAsked(answer: ProtocolRecord[]): boolean {
    let changed = false;
    for (const [name, path, yes] of answer) {
      const place = name === "asked" && this.fields.querySelector<HTMLElement>(`:scope > [data-field="${path}"], :scope > [data-rows="${path}"]`);
      if (!place || place.hidden === (yes !== "1")) continue;
      place.hidden = yes !== "1";
      changed = true;
    }
    return changed;
  }

  /**
   * Writes the inputs anew in other units or with another decimal mark. Going
   * back without an edit in between gives back the very texts that were typed.
   */
  private async restyle(to: Style): Promise<boolean> {
    if (this.fields.disabled || (to.system === this.at.system && to.mark === this.at.mark)) return false;
    const now = readEntries(this.fields);
    const untouched = sameEntries(now, this.example);
    const old = this.before;
    if (old && old.style.system === to.system && old.style.mark === to.mark && sameEntries(now, old.shown)) {
      fillEntries(this.fields, old.entries, true);
    } else {
      fillEntries(this.fields, await this.converted(now, this.at, to), false);
    }
    this.example = untouched ? readEntries(this.fields) : await this.converted(this.printed, { system: "us", mark: "point" }, to);
    this.before = { style: this.at, entries: now, shown: readEntries(this.fields) };
    this.at = to;
    this.showUnits();
    await this.run();
    return true;
  }

  private async converted(entries: Entry[], from: Style, to: Style): Promise<Entry[]> {
    const answer = await ask("convert", this.lang, [...this.head(from), ["to", to.system, to.mark], ...sets(entries)]);
    const texts = new Map(answer.filter((r) => r[0] === "set").map((r) => [r[1], r[2] ?? ""]));
    return entries.map(([path, text]) => [path, texts.get(path) ?? text]);
  }

  private async reset(): Promise<void> {
    fillEntries(this.fields, this.example, true);
    this.before = undefined;
    this.keep(); // also after a stop: the next visit then begins with the example
    await this.run();
  }

  /** Keeps the reader's inputs, and says whose numbers these are. */
  private keep(): void {
    clearTimeout(this.keeping);
    this.keeping = 0;
    const now = readEntries(this.fields);
    const own = !sameEntries(now, this.example);
    save(this.key, own ? JSON.stringify({ style: this.at, entries: now } satisfies Kept) : "");
    this.section.toggleAttribute("data-own", own);
    part(this.section, "tag").textContent = say(!own ? "ui.calc.example" : persistent ? "ui.calc.yours" : "ui.unkept");
    this.form.querySelector<HTMLElement>("[data-do=reset]")!.hidden = !own;
  }

  private showUnits(): void {
    for (const radio of all<HTMLInputElement>(".tools [type=radio]", this.form)) radio.checked = radio.value === this.at.system;
    this.section.dataset.system = this.at.system;
  }

  /** Says why nothing can be typed; no key, no reason. */
  private explain(key: string): void {
    const why = part(this.section, "why");
    why.hidden = !key;
    why.textContent = key && say(key);
  }

  /** Without a module nothing can be computed: the inputs close, and so do results of the reader's own. */
  private stop(e: unknown): void {
    if (!this.fields.disabled) this.keep(); // the result on screen is not of these inputs
    this.fields.disabled = true;
    const key = e instanceof Unavailable ? e.message : "ui.calc.no-module";
    if (!(e instanceof Unavailable)) console.error(e);
    this.explain(key);
    if (!this.section.hasAttribute("data-own")) return;
    showResult(this.section, this.fields, [["state", "refused"], ["note", "refusal", "", say(key)]]);
  }
}

function sets(entries: Entry[]): ProtocolRecord[] {
  return entries.map(([path, text]) => ["set", path, text]);
}

const longestWait = 1000; // ms; a busy page may never be idle

/** Calls once, when an element comes near the screen and the page is idle, or after the longest wait. */
export function whenNear(element: Element, work: () => void): void {
  const whenIdle = window.requestIdleCallback
    ? () => window.requestIdleCallback(work, { timeout: longestWait })
    : () => setTimeout(work, 200);
  new IntersectionObserver((seen, observer) => {
    if (!seen.some((s) => s.isIntersecting)) return;
    observer.disconnect();
    whenIdle();
  }, { rootMargin: "800px" }).observe(element);
}
