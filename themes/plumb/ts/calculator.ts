// A calculator on a page: reads its inputs, sends them to the module and shows
// the answer. The page contains the computed example, which is shown until the
// reader changes an input.
import { choose, onStyle, style, type Style } from "./choices";
import { addRow, fillEntries, readEntries, sameEntries, watchRows, type Entry } from "./entries";
import { startKeys } from "./keys";
import { onRestart, request, startModule } from "./module";
import { all, uiText, Unavailable } from "./page";
import type { ProtocolRecord } from "./records";
import { clearResult, part, showMore, showResult } from "./result";
import { load, persistent, save } from "./store";

const rounds = 4; // runs after one change: an answer can show inputs whose values show further inputs

/** A reader's inputs as stored on the device, with the style they are written in. */
interface StoredInputs {
  style: Style;
  entries: Entry[];
}

/** Starts all calculators of the page. */
export function startCalculators(): void {
  for (const section of all("[data-calc]")) new Calculator(section);
}

/** Starts a calculator that was inserted in the page, with the inputs that the surrounding page presets. */
export function startCalculator(section: HTMLElement, preset: Entry[]): void {
  new Calculator(section, preset, true);
}

class Calculator {
  private form: HTMLFormElement;
  private fields: HTMLFieldSetElement;
  private key: string;
  private lang: string;
  private printed: Entry[]; // the example in the page's HTML: US units, decimal point
  private example: Entry[]; // the example in the style of the inputs
  private current: Style = { system: "us", mark: "point" };
  private lastSwitch?: { style: Style; entries: Entry[]; shown: Entry[] }; // the inputs before and after the last change of units
  private saveTimer = 0;
  private runQueued = false; // a queued run reads the inputs when it starts
  private lastRun = 0; // number of the latest run; results of earlier runs are dropped
  private queue: Promise<void> = Promise.resolve();

  constructor(private section: HTMLElement, private preset: Entry[] = [], now = false) {
    this.form = section.querySelector("form")!;
    this.fields = this.form.querySelector(".fields")!;
    this.lang = section.closest<HTMLElement>("[lang]")!.lang;
    this.key = "calc " + section.dataset.calc;
    // Undo the browser's own restoring of inputs: these are not the example.
    this.form.reset();
    if (preset.length) this.fillPreset();
    this.printed = this.example = readEntries(this.fields);
    this.listen();
    this.showUnits();
    this.showReason("ui.calc.loading");
    // Where the module is saved on the device no download is needed: start at once.
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
    addEventListener("pagehide", () => this.saveTimer && this.storeInputs());
    onStyle(() => this.enqueue(async () => void (await this.restyle(style()))));
    onRestart(() => this.showReason("ui.restarted"));
  }

  private click(target: HTMLElement): void {
    const action = target.closest("button")?.dataset.do;
    const place = target.closest<HTMLElement>("[data-rows]");
    if (action === "reset") this.enqueue(() => this.reset());
    if (!place) return;
    if (action === "add") {
      addRow(place).querySelector<HTMLElement>("input, select")!.focus();
    } else if (action === "drop") {
      target.closest("li")!.remove();
      place.querySelector<HTMLElement>("[data-do=add]")!.focus();
    } else {
      return;
    }
    watchRows(place);
    this.changed();
  }

  /** Queues work after the work before it. An error of the module stops the calculator. */
  private enqueue(work: () => Promise<void>): void {
    this.queue = this.queue.then(work).catch((e) => this.stop(e));
  }

  private start(): void {
    this.enqueue(async () => {
      await startModule();
      this.fields.disabled = false;
      this.showReason("");
      const stored = this.storedInputs();
      for (const place of all("[data-rows]", this.fields)) watchRows(place);
      if (stored) {
        // Convert the example to the reader's units too, for a later reset.
        await this.restyle(stored.style);
        fillEntries(this.fields, stored.entries, true);
        this.lastSwitch = undefined;
        this.storeInputs(); // shows that they are the reader's
      }
      if (await this.restyle(style())) return;
      if (stored || this.preset.length) await this.run();
      else showMore(this.section, await this.requestRun());
    });
  }

  /**
   * Fills the inputs that the page presets. The result in the HTML is of other
   * inputs: it is removed until the module has answered.
   */
  private fillPreset(): void {
    const named = new Set(this.preset.map(([path]) => path.split(".")[0]));
    const others = readEntries(this.fields).filter(([path]) => !named.has(path.split(".")[0]));
    fillEntries(this.fields, [...others, ...this.preset], true);
    clearResult(this.section);
  }

  /** The inputs stored at an earlier visit, if they can be parsed. */
  private storedInputs(): StoredInputs | undefined {
    try {
      const k = JSON.parse(load(this.key)) as StoredInputs;
      const texts = k.entries.every((e) => e.length === 2 && e.every((s) => typeof s === "string"));
      return texts && typeof k.style.system === "string" && typeof k.style.mark === "string" ? k : undefined;
    } catch {
      return undefined;
    }
  }

  private changed(): void {
    this.section.classList.add("typed"); // for the style sheet
    if (this.runQueued) return;
    this.runQueued = true;
    this.enqueue(() => {
      this.runQueued = false;
      return this.run();
    });
  }

  private async run(): Promise<void> {
    const runNumber = ++this.lastRun;
    let answer: ProtocolRecord[] = [];
    for (let i = 0; i < rounds; i++) {
      answer = await this.requestRun();
      if (runNumber !== this.lastRun) return;
      if (!this.showAsked(answer)) break;
    }
    showResult(this.section, this.fields, answer);
    // Inputs are stored after the result has been painted.
    clearTimeout(this.saveTimer);
    this.saveTimer = window.setTimeout(() => this.storeInputs(), 100);
  }

  private requestRun(): Promise<ProtocolRecord[]> {
    return request("run", this.lang, [...this.header(this.current), ...setRecords(readEntries(this.fields, true))]);
  }

  private header(s: Style): ProtocolRecord[] {
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
   * Converts the inputs to other units or another decimal mark. Returns whether it
   * ran the calculator. Switching back without an edit restores the typed texts.
   */
  private async restyle(to: Style): Promise<boolean> {
    if (this.fields.disabled || (to.system === this.current.system && to.mark === this.current.mark)) return false;
    const now = readEntries(this.fields);
    const untouched = sameEntries(now, this.example);
    const old = this.lastSwitch;
    if (old && old.style.system === to.system && old.style.mark === to.mark && sameEntries(now, old.shown)) {
      fillEntries(this.fields, old.entries, true);
    } else {
      fillEntries(this.fields, await this.converted(now, this.current, to), false);
    }
    this.example = untouched ? readEntries(this.fields) : await this.converted(this.printed, { system: "us", mark: "point" }, to);
    this.lastSwitch = { style: this.current, entries: now, shown: readEntries(this.fields) };
    this.current = to;
    this.showUnits();
    await this.run();
    return true;
  }

  private async converted(entries: Entry[], from: Style, to: Style): Promise<Entry[]> {
    const answer = await request("convert", this.lang, [...this.header(from), ["to", to.system, to.mark], ...setRecords(entries)]);
    const texts = new Map(answer.filter((r) => r[0] === "set").map((r) => [r[1], r[2] ?? ""]));
    return entries.map(([path, text]) => [path, texts.get(path) ?? text]);
  }

  private async reset(): Promise<void> {
    fillEntries(this.fields, this.example, true);
    this.lastSwitch = undefined;
    this.storeInputs(); // also after the module failed: the next visit begins with the example
    await this.run();
  }

  /** Stores the reader's inputs and shows whether they are the example or the reader's. */
  private storeInputs(): void {
    clearTimeout(this.saveTimer);
    this.saveTimer = 0;
    const now = readEntries(this.fields);
    const changed = !sameEntries(now, this.example);
    save(this.key, changed ? JSON.stringify({ style: this.current, entries: now } satisfies StoredInputs) : "");
    this.section.toggleAttribute("data-own", changed);
    part(this.section, "tag").textContent = uiText(!changed ? "ui.calc.example" : persistent ? "ui.calc.yours" : "ui.unkept");
    this.form.querySelector<HTMLElement>("[data-do=reset]")!.hidden = !changed;
  }

  private showUnits(): void {
    for (const radio of all<HTMLInputElement>(".tools [type=radio]", this.form)) radio.checked = radio.value === this.current.system;
    this.section.dataset.system = this.current.system;
  }

  /** Shows why the inputs are disabled; an empty key hides the reason. */
  private showReason(key: string): void {
    const why = part(this.section, "why");
    why.hidden = !key;
    why.textContent = key && uiText(key);
  }

  /** Disables the inputs after the module failed, and replaces a result of the reader's inputs by the reason. */
  private stop(e: unknown): void {
    if (!this.fields.disabled) this.storeInputs(); // marks the inputs as the reader's: the shown result is of earlier inputs
    this.fields.disabled = true;
    const key = e instanceof Unavailable ? e.message : "ui.calc.no-module";
    if (!(e instanceof Unavailable)) console.error(e);
    this.showReason(key);
    if (!this.section.hasAttribute("data-own")) return;
    showResult(this.section, this.fields, [["state", "refused"], ["note", "refusal", "", uiText(key)]]);
  }
}

function setRecords(entries: Entry[]): ProtocolRecord[] {
  return entries.map(([path, text]) => ["set", path, text]);
}

const longestWait = 1000; // ms; a busy page may never become idle

/** Calls work once, when the element is within 800 px of the screen and the page is idle, or after longestWait. */
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
