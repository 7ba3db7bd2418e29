// Reads the steps of a procedure aloud, one by one, with a voice that is on the device.
// After each step it waits for a touch on "Next" or "Again". The sentence that is spoken
// is marked, and the screen stays on.
import { style } from "./choices";
import { all, make, uiText } from "./page";

/** A sentence of a step and where it is on the page. */
interface Sentence {
  text: string;
  range: Range;
}

let stopReading: (() => void) | undefined;

/** Adds the button to every procedure of the page. */
export function startReader(): void {
  for (const steps of all("ol.steps")) {
    const sheet = steps.closest("article")!;
    if (sheet.querySelector(".read") || sheet.matches(".lesson, .course-page")) continue;
    const begin = make("button", "read", uiText("ui.read", {}, langOf(sheet)));
    begin.type = "button";
    const marks = sheet.querySelector(".marks");
    let before: Element = steps;
    while (before.previousElementSibling?.matches("h2, h3")) before = before.previousElementSibling;
    if (marks) marks.prepend(begin);
    else before.before(begin);
    begin.addEventListener("click", () => void start(sheet, begin));
  }
  addEventListener("pagehide", () => stopReading?.());
  // In the one-file edition another page may be open after the other listeners.
  addEventListener("hashchange", () => setTimeout(() => document.querySelector(".read[aria-pressed=true]") || stopReading?.()));
}

function langOf(place: Element): string {
  return place.closest<HTMLElement>("[lang]")!.lang;
}

async function start(sheet: Element, begin: HTMLElement): Promise<void> {
  stopReading?.();
  sheet.querySelector(".no-voice")?.remove();
  const lang = langOf(sheet);
  const voice = await voiceFor(lang);
  if (!voice) {
    // At the foot of the screen, as the buttons are while it reads: the steps stay where they are.
    const done = make("button", "", uiText("ui.close", {}, lang));
    const why = make("p", "", uiText("ui.read.none", {}, lang));
    why.setAttribute("role", "alert");
    const note = make("section", "no-voice", why, done);
    done.addEventListener("click", () => (note.remove(), begin.focus()));
    sheet.append(note);
    return;
  }
  new Reading(sheet, begin, voice, lang);
}

/** A voice of a language that needs no connection; undefined if the device has none. Some browsers load their voices after the first request. */
async function voiceFor(lang: string): Promise<SpeechSynthesisVoice | undefined> {
  if (!("speechSynthesis" in window)) return undefined;
  const find = () => {
    const voices = speechSynthesis.getVoices().filter((v) => v.localService && v.lang.toLowerCase().split(/[-_]/)[0] === lang);
    return voices.find((v) => v.default) ?? voices.find((v) => /[-_](US|MX)$/i.test(v.lang)) ?? voices[0];
  };
  const now = find();
  if (now || speechSynthesis.getVoices().length) return now;
  await new Promise<void>((done) => {
    speechSynthesis.addEventListener("voiceschanged", () => done(), { once: true });
    setTimeout(done, 2000);
  });
  return find();
}

class Reading {
  private parts: HTMLElement[]; // the cautions above the steps, and the steps
  private steps: HTMLElement[];
  private at = 0;
  private turn = 0; // rises with each part; the events of an earlier one are ignored
  spoken?: SpeechSynthesisUtterance; // a reference, because browsers drop an utterance that has none
  private lock?: WakeLockSentinel;
  private where = make("p", "reading-where");
  private next: HTMLButtonElement;
  private again: HTMLButtonElement;
  private bar: HTMLElement;
  private onKey = (e: KeyboardEvent) => e.key === "Escape" && this.stop();
  private onVisible = () => void this.stayAwake();

  constructor(sheet: Element, private begin: HTMLElement, private voice: SpeechSynthesisVoice, private lang: string) {
    this.steps = all("ol.steps > .step", sheet);
    this.parts = [...all(".caution", sheet).filter((c) => c.compareDocumentPosition(this.steps[0]) & Node.DOCUMENT_POSITION_FOLLOWING && !c.closest(".before")), ...this.steps];
    this.where.setAttribute("role", "status");
    const button = (key: string, work: () => void) => {
      const b = make("button", "", uiText(key, {}, lang));
      b.type = "button";
      b.addEventListener("click", work);
      return b;
    };
    this.again = button("ui.read.again", () => this.say());
    this.next = button("ui.read.next", () => this.onward());
    this.bar = make("section", "reading", this.where, this.again, this.next, button("ui.read.stop", () => this.stop()));
    this.bar.setAttribute("aria-label", begin.textContent!);
    document.body.append(this.bar);
    document.addEventListener("keydown", this.onKey);
    document.addEventListener("visibilitychange", this.onVisible);
    begin.setAttribute("aria-pressed", "true");
    stopReading = () => this.stop();
    void this.stayAwake();
    this.next.focus({ preventScroll: true });
    this.say();
  }

  private onward(): void {
    if (this.at + 1 === this.parts.length) return this.stop();
    this.at++;
    this.say();
  }

  /** Speaks the present part from its first sentence. */
  private say(): void {
    const part = this.parts[this.at];
    const n = this.steps.indexOf(part) + 1;
    this.where.textContent = n ? uiText("ui.read.step", { n, all: this.steps.length }, this.lang) : part.querySelector(".signal")!.textContent;
    part.querySelector("details")?.setAttribute("open", "");
    part.scrollIntoView({ block: "nearest", behavior: "instant" });
    speechSynthesis.cancel();
    this.speak(sentencesOf(part, this.lang), 0, ++this.turn);
  }

  private speak(sentences: Sentence[], i: number, turn: number): void {
    if (turn !== this.turn) return;
    mark(sentences[i]?.range);
    if (i === sentences.length) return;
    const u = new SpeechSynthesisUtterance(sentences[i].text);
    u.voice = this.voice;
    u.lang = this.voice.lang;
    u.onend = () => this.speak(sentences, i + 1, turn);
    u.onerror = (e) => {
      if (turn === this.turn && e.error !== "interrupted" && e.error !== "canceled") this.where.textContent = uiText("ui.read.failed", {}, this.lang);
    };
    this.spoken = u;
    speechSynthesis.speak(u);
  }

  /** Keeps the screen on. Browsers release the lock of a page that is hidden; without one the page is read all the same. */
  private async stayAwake(): Promise<void> {
    if (document.visibilityState !== "visible") return;
    const lock = await navigator.wakeLock?.request("screen").catch(() => undefined);
    if (stopReading) this.lock = lock;
    else void lock?.release();
  }

  private stop(): void {
    this.turn++;
    this.spoken = stopReading = undefined;
    speechSynthesis.cancel();
    mark(undefined);
    void this.lock?.release();
    const inside = this.bar.contains(document.activeElement);
    this.bar.remove();
    document.removeEventListener("keydown", this.onKey);
    document.removeEventListener("visibilitychange", this.onVisible);
    this.begin.setAttribute("aria-pressed", "false");
    if (inside) this.begin.focus({ preventScroll: true });
  }
}

/** Marks a sentence; none without an argument. A browser without highlights marks nothing. */
function mark(range: Range | undefined): void {
  if (!("highlights" in CSS)) return;
  CSS.highlights.delete("spoken");
  if (range) CSS.highlights.set("spoken", new Highlight(range));
}

/** The sentences of a part: its own text without drawings, calculators and the system of units that the reader has not chosen. */
function sentencesOf(part: Element, lang: string): Sentence[] {
  const other = style().system === "metric" ? ".us" : ".si";
  const walk = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
  const nodes: { node: Text; from: number }[] = [];
  let text = "";
  while (walk.nextNode()) {
    const node = walk.currentNode as Text;
    if (node.parentElement!.closest(`${other}, figure, svg, table, .closed, .meaning, button`)) continue;
    // The end of a block and of a bold lead ends a sentence.
    const block = node.parentElement!.closest("p, li, summary, strong, .signal")!;
    nodes.push({ node, from: text.length });
    text += node.data;
    if (block.lastChild === node && !/[.!?:]\s*$/.test(node.data)) text += ". ";
  }
  const place = (offset: number): [Node, number] => {
    const { node, from } = nodes.findLast((n) => n.from <= offset) ?? nodes[0];
    return [node, Math.min(offset - from, node.length)];
  };
  const list: Sentence[] = [];
  for (const { segment, index } of new Intl.Segmenter(lang, { granularity: "sentence" }).segment(text)) {
    if (!/[\p{L}\d]/u.test(segment)) continue;
    const range = document.createRange();
    range.setStart(...place(index));
    range.setEnd(...place(index + segment.trimEnd().length));
    list.push({ text: segment.trim(), range });
  }
  return list;
}
