// What a reader has answered, and when each question comes back: after 2, 7
// and 30 days. It stays on the device; a file carries it to another.
import { make } from "./page";
import { load, save } from "./store";

/** The last answer to one question. */
interface Answer {
  box: number; // how far it has come: 1 to 3
  due: number; // the day it comes back, in days since 1970-01-01
  at: number; // when it was answered, in milliseconds since then
  ok: boolean; // whether it was ever right
}

type Answers = Record<string, Answer>;

/** The key under which the answers are stored. */
export const answersKey = "answers";

const waits = [0, 2, 7, 30]; // days, by box
const day = 86_400_000;

/** Today in days since 1970-01-01, by the clock on the wall. */
export function today(): number {
  return Math.floor((Date.now() - new Date().getTimezoneOffset() * 60_000) / day);
}

export function answers(): Answers {
  return read(load(answersKey)) ?? {};
}

/**
 * Stores an answer and returns in how many days the question comes back. A right
 * answer moves it on only when it is new or due; a wrong one brings it back.
 */
export function record(id: string, right: boolean): number {
  const list = answers();
  const was = list[id];
  const now = today();
  let { box, due } = was ?? { box: 0, due: now };
  if (!right || due <= now) {
    box = right ? Math.min(box + 1, 3) : 1;
    due = now + waits[box];
  }
  list[id] = { box, due, at: Date.now(), ok: right || !!was?.ok };
  save(answersKey, JSON.stringify(list));
  return due - now;
}

/** What is due today. */
export function dueToday(): string[] {
  const now = today();
  return Object.entries(answers()).filter(([, a]) => a.due <= now).map(([id]) => id);
}

/** Imports stored answers; of two answers to one question the later counts. Returns their number, or -1 for a text of another format. */
export function merge(text: string): number {
  const theirs = read(text);
  if (!theirs) return -1;
  const list = answers();
  for (const [id, a] of Object.entries(theirs)) {
    const own = list[id];
    list[id] = { ...(own && own.at > a.at ? own : a), ok: a.ok || !!own?.ok };
  }
  save(answersKey, JSON.stringify(list));
  return Object.keys(theirs).length;
}

/** Parses stored answers; undefined for any other text. */
function read(text: string): Answers | undefined {
  try {
    const list = JSON.parse(text) as Answers;
    const whole = (n: unknown, most: number) => Number.isInteger(n) && (n as number) >= 0 && (n as number) <= most;
    const ours = Object.entries(list).every(([id, a]) => /^[a-z0-9-]+\.\d+\.[a-z0-9]+$/.test(id) &&
      whole(a.box, 3) && whole(a.due, 1e6) && whole(a.at, 1e6 * day) && typeof a.ok === "boolean");
    return ours && !Array.isArray(list) ? list : undefined;
  } catch {
    return undefined;
  }
}

/** The file of the answers: of a course, on a day. */
export function exportAnswers(course: string): void {
  const date = new Date(today() * day).toISOString().slice(0, 10);
  handOut(`training-${course || "all"}-${date}.json`, { training: 1, answers: answers() });
}

/** Reads such a file, as merge does. */
export function importAnswers(text: string): number {
  try {
    const file = JSON.parse(text);
    return file.training === 1 ? merge(JSON.stringify(file.answers)) : -1;
  } catch {
    return -1;
  }
}

/** Gives the reader a file to save. */
export function handOut(name: string, content: unknown): void {
  const link = make("a");
  link.href = URL.createObjectURL(new Blob([JSON.stringify(content, null, 1)], { type: "application/json" }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
