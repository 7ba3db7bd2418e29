// A calculator on a page: reads its inputs, sends them to the module and shows
// the answer. The page contains the computed example, which is shown until the
// reader changes an input.
import { followKeyboard, togglePanel } from "./bar";
import { choose, onStyle, style, type Style } from "./choices";
import { addRow, fillEntries, controls, placeOf, labelOf, places, readEntries, sameEntries, showConverted, valueOf, watchRows, type Entry } from "./entries";
import { startKeys } from "./keys";
import { onRestart, request, startModule } from "./module";
import { empty, examples, markOwn, ownPaths, setOwn } from "./own";
import { all, uiText, Unavailable } from "./page";
import type { ProtocolRecord } from "./records";
import { showOffers, storeMeasures, type Measured } from "./measures";
import { clearResult, part, showMore, showResult } from "./result";
import { asText, copy, linked, linkOf } from "./message";
import { load, persistent, save } from "./store";
import { startTyping } from "./typing";

const printedStyle: Style = { system: "us", mark: "point" }; // of the example in the HTML
const rounds = 4; // runs after one change: an answer can show inputs whose values show further inputs

/** A reader's inputs as stored on the device, with the style they are written in. */
interface StoredInputs {
  style: Style;
  entries: Entry[];
  own?: string[]; // paths of the reader's own inputs; all that differ from the example if it is missing
}

/** Starts all calculators of the page. */
export function startCalculators(): void {
  followKeyboard();
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
  private current: Style = printedStyle;
  private answer: ProtocolRecord[] = []; // the last answer
  private fromLink = false; // the inputs came with the address, and the reader has changed none
  private stored = true; // whether the browser has stored the inputs
  private asked?: string; // path of the input that the last answer asks for
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
    this.printed = readEntries(this.fields).map(([path, text]) => [path, text, printedStyle.system, printedStyle.mark]);
    this.listen();
    this.section.querySelector<HTMLElement>("[data-do=send]")!.hidden = !navigator.share;
    this.showUnits();
    // In the place of the line that says whose numbers these are: a line more would push the inputs down.
    part(section, "tag").textContent = uiText("ui.calc.loading");
    // Where the module is saved on the device no download is needed: start at once.
    if (now || load(this.key) || navigator.serviceWorker?.controller) this.start();
    else whenNear(section, () => this.start());
  }

  private listen(): void {
    this.form.addEventListener("submit", (e) => e.preventDefault());
    this.form.addEventListener("input", (e) => {
      const input = e.target as HTMLInputElement;
      if (input.closest(".tools")) choose("units", input.value);
      else this.changed(input);
    });
    this.section.addEventListener("click", (e) => this.click(e.target as HTMLElement));
    this.section.addEventListener("keydown", (e) => e.key === "Escape" && togglePanel(this.section, false));
    startKeys(this.form, (input) => this.changed(input));
    startTyping(this.form, this.fields, () => this.asked);
    addEventListener("pagehide", () => this.saveTimer && this.storeInputs());
    onStyle(() => this.enqueue(async () => void (await this.restyle(style()))));
    onRestart(() => this.showReason("ui.restarted"));
  }

  private click(target: HTMLElement): void {
    const action = target.closest("button")?.dataset.do;
    const place = target.closest<HTMLElement>("[data-rows]");
    if (action === "reset") this.enqueue(() => this.reset());
    if (action === "empty") this.empty();
    if (action === "panel") togglePanel(this.section);
    if (action === "copy" || action === "send") void this.share(action);
    if (action === "whole") this.section.querySelector(".glance")!.scrollIntoView();
    if (action === "whole") togglePanel(this.section, false);
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
    this.changed(place);
  }

  /** Copies or sends question and answer. */
  private async share(action: string): Promise<void> {
    const text = asText(this.section, this.fields, this.answer, linkOf(this.section, this.fields, this.current));
    const said = part(this.section, "shared");
    if (action === "send") return navigator.share({ text }).catch(() => {}); // also where the reader cancels
    said.textContent = uiText((await copy(text)) ? "ui.calc.copied" : "ui.calc.not-copied");
  }

  /** Fills in a number of another calculator. */
  private take(path: string, measured: Measured): void {
    const place = placeOf(this.fields, path)!;
    const { system, mark } = measured.style;
    fillEntries(this.fields, [[path, measured.text, system, mark]], false);
    place.dataset.own = "";
    this.fromLink = false;
    this.enqueue(async () => {
      if (!(await this.restyle(this.current))) await this.run();
    });
    this.showOwn();
    controls(place)[0].focus();
  }

  /** Empties what is invented and what decides, and puts the reader at the first input. */
  private empty(): void {
    const first = empty(this.fields);
    this.changed();
    first?.focus();
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
        this.fill(inStyle(stored.entries, stored.style));
        const printed = new Map(this.printed.map(([path, text]) => [path, text]));
        setOwn(this.fields, stored.own ?? stored.entries.filter(([path, text]) => printed.get(path) !== text).map(([path]) => path));
      }
      this.fillLinked();
      addEventListener("hashchange", () => this.fillLinked() && this.enqueue(async () => void ((await this.restyle(this.current)) || (await this.run()))));
      const restyled = await this.restyle(style());
      this.showOwn();
      showOffers(this.section, this.fields, (path, measured) => this.take(path, measured));
      if (restyled) return;
      if (stored || this.fromLink || this.preset.length) await this.run();
      else this.showAnswer(await this.requestRun(), true);
    });
  }

  /** Fills the inputs that came with the address, on the calculator's own page. Returns whether there were any. */
  private fillLinked(): boolean {
    const link = this.section.closest("[data-card]") ? undefined : linked(this.fields);
    if (!link) return false;
    const named = new Set(link.entries.map(([path]) => path.split(".")[0]));
    const others = this.printed.filter(([path]) => !named.has(path.split(".")[0]));
    this.fill([...others, ...link.entries.filter(([path, text]) => text !== "" || path.split(".").length !== 1 || !placeOf(this.fields, path)?.dataset.rows)]);
    setOwn(this.fields, link.entries.map(([path]) => path));
    this.fromLink = link.entries.length > 0;
    this.showReason("ui.calc.linked");
    if (link.refused.length) part(this.section, "why").append(" " + uiText("ui.calc.link-refused", { names: link.refused.slice(0, 5).join(", ") }));
    return true;
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
      const texts = [...k.entries, k.own ?? []].every((e) => Array.isArray(e) && e.every((s) => typeof s === "string"));
      return texts && typeof k.style.system === "string" && typeof k.style.mark === "string" ? k : undefined;
    } catch {
      return undefined;
    }
  }

  /** Runs the calculator after a change of an input. */
  private changed(input?: HTMLElement): void {
    this.section.classList.add("typed"); // for the style sheet
    this.fromLink = false;
    if (!input || markOwn(input)) this.showOwn();
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
    this.showAnswer(answer);
    // Inputs are stored after the result has been painted.
    clearTimeout(this.saveTimer);
    this.saveTimer = window.setTimeout(() => this.storeInputs(), 100);
  }

  private requestRun(): Promise<ProtocolRecord[]> {
    return request("run", this.lang, [...this.header(this.current), ...setRecords(readEntries(this.fields, true))]);
  }

  /** Shows an answer; printed: the page contains its results already. */
  private showAnswer(answer: ProtocolRecord[], printed = false): void {
    this.answer = answer;
    this.asked = answer.find((r) => r[0] === "note" && r[1] === "ask" && r[2])?.[2];
    if (printed) showMore(this.section, this.fields, answer);
    else showResult(this.section, this.fields, answer);
  }

  private header(s: Style): ProtocolRecord[] {
    return [["calc", this.section.dataset.calc!], ["style", s.system, s.mark]];
  }

  /** Shows the inputs that are asked for now and hides the others; returns whether that changed. */
  private showAsked(answer: ProtocolRecord[]): boolean {
    let changed = false;
    for (const [name, path, yes] of answer) {
      const place = name === "asked" && this.fields.querySelector<HTMLElement>(`[data-field="${path}"], [data-rows="${path}"]`);
      if (!place || place.hidden === (yes !== "1")) continue;
      place.hidden = yes !== "1";
      changed = true;
    }
    return changed;
  }

  /**
   * Shows the inputs in other units or with another decimal mark; their values stay as
   * they were typed. Returns whether it ran the calculator.
   */
  private async restyle(to: Style): Promise<boolean> {
    const other = to.system !== this.current.system || to.mark !== this.current.mark;
    const entries = inStyle(readEntries(this.fields), this.current);
    this.current = to;
    this.showUnits();
    if (this.fields.disabled || (!other && !entries.some(([, , system, mark]) => system !== to.system || mark !== to.mark))) return false;
    const answer = await request("convert", this.lang, [...this.header(to), ["to", to.system, to.mark], ...setRecords(entries)]);
    const shown = new Map(answer.filter((r) => r[0] === "set").map((r) => [r[1], r[2] ?? ""]));
    for (const [path, text, system, mark] of entries) {
      const same = system === to.system && mark === to.mark;
      showConverted(this.fields, path, same ? text : shown.get(path) ?? text, text, { system: system!, mark: mark! });
    }
    await this.run();
    return true;
  }

  /** Fills all inputs; restyle then converts those that were typed in another style. */
  private fill(entries: Entry[]): void {
    const { system, mark } = this.current;
    fillEntries(this.fields, entries.map((e): Entry => (e[2] === system && e[3] === mark ? [e[0], e[1]] : e)), true);
  }

  private async reset(): Promise<void> {
    this.fromLink = false;
    this.fill(this.printed);
    setOwn(this.fields, []);
    this.storeInputs(); // also after the module failed: the next visit begins with the example
    if (!(await this.restyle(this.current))) await this.run();
    this.showOwn();
  }

  /** Stores the reader's inputs. */
  private storeInputs(): void {
    clearTimeout(this.saveTimer);
    this.saveTimer = 0;
    if (this.fromLink) return; // the reader's own stay stored
    const entries = readEntries(this.fields);
    const own = ownPaths(this.fields);
    storeMeasures(this.section, own, this.answer, this.current);
    const stored: StoredInputs = { style: this.current, entries, own };
    this.stored = save(this.key, this.isChanged(own) ? JSON.stringify(stored) : "");
    this.showOwn();
  }

  /** Whether the reader has changed the example: by an input, or by adding or removing rows. */
  private isChanged(own: string[]): boolean {
    const paths = (entries: Entry[]) => entries.map(([path]): Entry => [path, ""]);
    return own.length > 0 || !sameEntries(paths(readEntries(this.fields)), paths(this.printed));
  }

  /** Shows whether the numbers are the example or the reader's, and what is assumed. */
  private showOwn(): void {
    const own = ownPaths(this.fields);
    const changed = this.isChanged(own);
    const { left, of } = examples(this.fields);
    this.section.toggleAttribute("data-own", changed);
    this.section.toggleAttribute("data-example", left > 0);
    part(this.section, "tag").textContent = !changed ? uiText("ui.calc.example") : left ? uiText("ui.calc.partly", { n: left, m: of }) : uiText(this.fromLink ? "ui.calc.from-link" : !persistent ? "ui.unkept" : this.stored ? "ui.calc.yours" : "ui.calc.full");
    this.form.querySelector<HTMLButtonElement>("[data-do=reset]")!.disabled = !changed;
    const rest = this.fields.querySelector(".rest");
    if (!rest || !changed) return;
    const assumed = all(places, rest).filter((p) => p.dataset.field && !p.hidden && p.dataset.own === undefined && valueOf(p));
    part(rest, "assumed").textContent = assumed.map((p) => labelOf(p) + " " + valueOf(p)).join("; ");
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
    this.showOwn(); // it no longer gets ready
    if (!this.section.hasAttribute("data-own")) return;
    showResult(this.section, this.fields, [["state", "refused"], ["note", "refusal", "", uiText(key)]]);
  }
}

function setRecords(entries: Entry[]): ProtocolRecord[] {
  return entries.map((entry) => ["set", ...entry] as ProtocolRecord);
}

/** Entries that each have a style: their own, or this one. */
function inStyle(entries: Entry[], s: Style): Entry[] {
  return entries.map(([path, text, system, mark]) => [path, text, system ?? s.system, mark ?? s.mark]);
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
