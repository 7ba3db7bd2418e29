// The reader's answers to questions and the day on which each is asked again:
// after 2, 7 and 30 days. They are stored on the device and can be exported to a
// file and imported on another device.
import { make } from "./page";
import { load, save } from "./store";

/** The last answer to one question. */
interface Answer {
  box: number; // stage of repetition, 1 to 3; a right answer moves to the next
  due: number; // the day it is asked again, in days since 1970-01-01
  at: number; // time of the answer, in milliseconds since 1970-01-01
  ok: boolean; // whether any answer was right
}

type Answers = Record<string, Answer>;

/** The key under which the answers are stored. */
export const answersKey = "answers";

const waits = [0, 2, 7, 30]; // days, by box
const day = 86_400_000;

/** Today in days since 1970-01-01, by local time. */
export function today(): number {
  return Math.floor((Date.now() - new Date().getTimezoneOffset() * 60_000) / day);
}

/** The stored answers by question id. */
export function answers(): Answers {
  return parse(load(answersKey)) ?? {};
}

/**
 * Stores an answer and returns the days until the question is asked again. A right
 * answer advances the question only when it is new or due; a wrong one resets it
 * to the first stage.
 */
export function record(id: string, right: boolean): number {
  const list = answers();
  const previous = list[id];
  const now = today();
  let { box, due } = previous ?? { box: 0, due: now };
  if (!right || due <= now) {
    box = right ? Math.min(box + 1, 3) : 1;
    due = now + waits[box];
  }
  list[id] = { box, due, at: Date.now(), ok: right || !!previous?.ok };
  save(answersKey, JSON.stringify(list));
  return due - now;
}

/** The ids of the questions that are due today. */
export function dueToday(): string[] {
  const now = today();
  return Object.entries(answers()).filter(([, a]) => a.due <= now).map(([id]) => id);
}

/** Imports stored answers; of two answers to one question the later is used. Returns their number, or -1 for a text of another format. */
export function merge(text: string): number {
  const imported = parse(text);
  if (!imported) return -1;
  const list = answers();
  for (const [id, a] of Object.entries(imported)) {
    const local = list[id];
    list[id] = { ...(local && local.at > a.at ? local : a), ok: a.ok || !!local?.ok };
  }
  save(answersKey, JSON.stringify(list));
  return Object.keys(imported).length;
}

/** Parses stored answers; undefined for any other text. */
function parse(text: string): Answers | undefined {
  try {
    const list = JSON.parse(text) as Answers;
    const inRange = (n: unknown, most: number) => Number.isInteger(n) && (n as number) >= 0 && (n as number) <= most;
    const valid = Object.entries(list).every(([id, a]) => /^[a-z0-9-]+\.\d+\.[a-z0-9]+$/.test(id) &&
      inRange(a.box, 3) && inRange(a.due, 1e6) && inRange(a.at, 1e6 * day) && typeof a.ok === "boolean");
    return valid && !Array.isArray(list) ? list : undefined;
  } catch {
    return undefined;
  }
}

/** Downloads the answers as a file named by course and day. */
export function exportAnswers(course: string): void {
  const date = new Date(today() * day).toISOString().slice(0, 10);
  download(`training-${course || "all"}-${date}.json`, { training: 1, answers: answers() });
}

/** Imports the text of an exported file; returns as merge does. */
export function importAnswers(text: string): number {
  try {
    const file = JSON.parse(text);
    return file.training === 1 ? merge(JSON.stringify(file.answers)) : -1;
  } catch {
    return -1;
  }
}

/** Downloads content as a JSON file. */
export function download(name: string, content: unknown): void {
  const link = make("a");
  link.href = URL.createObjectURL(new Blob([JSON.stringify(content, null, 1)], { type: "application/json" }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
