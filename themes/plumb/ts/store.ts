// What is kept on the device, under the path of this site, so that two
// manuals on one server stay apart. Where the browser refuses, it is kept for
// as long as the page is open.
import { facts, root } from "./page";

const prefix = "coursebook " + (facts.pocket ? location.pathname : root.pathname) + " ";
const spare = new Map<string, string>();

/** Whether the browser keeps what is written. */
export const kept = probe();

function probe(): boolean {
  try {
    localStorage.setItem(prefix + "probe", "1");
    const ok = localStorage.getItem(prefix + "probe") === "1";
    localStorage.removeItem(prefix + "probe");
    return ok;
  } catch {
    return false;
  }
}

export function load(key: string): string {
  try {
    return localStorage.getItem(prefix + key) ?? spare.get(key) ?? "";
  } catch {
    return spare.get(key) ?? "";
  }
}

/** Keeps a text; an empty one is forgotten. */
export function save(key: string, text: string): void {
  spare.set(key, text);
  try {
    if (text) localStorage.setItem(prefix + key, text);
    else localStorage.removeItem(prefix + key);
  } catch {
    // The copy in spare holds until the page is closed.
  }
}

/** Everything kept, for a file to carry to another device. */
export function everything(): Record<string, string> {
  const out: Record<string, string> = {};
  for (const [k, v] of spare) if (v) out[k] = v;
  if (!kept) return out;
  for (let i = 0; i < localStorage.length; i++) {
    const k = localStorage.key(i)!;
    if (k.startsWith(prefix)) out[k.slice(prefix.length)] = localStorage.getItem(k)!;
  }
  return out;
}
