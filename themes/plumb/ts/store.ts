// What is stored on the device, under the path of this site, so that two
// manuals on one server do not share it. Where the browser refuses, it is held
// in memory until the page is closed.
import { facts, root } from "./page";

const prefix = "coursebook " + (facts.pocket ? location.pathname : root.pathname) + " ";
const memory = new Map<string, string>();

/** Whether the browser stores what is written. */
export const persistent = probe();

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
    return localStorage.getItem(prefix + key) ?? memory.get(key) ?? "";
  } catch {
    return memory.get(key) ?? "";
  }
}

/** Keeps a text; an empty one is forgotten. */
export function save(key: string, text: string): void {
  memory.set(key, text);
  try {
    if (text) localStorage.setItem(prefix + key, text);
    else localStorage.removeItem(prefix + key);
  } catch {
    // The copy in memory is valid until the page is closed.
  }
}

/** Everything stored, for a file to carry to another device. */
export function everything(): Record<string, string> {
  const out: Record<string, string> = {};
  for (const [k, v] of memory) if (v) out[k] = v;
  if (!persistent) return out;
  for (let i = 0; i < localStorage.length; i++) {
    const k = localStorage.key(i)!;
    if (k.startsWith(prefix)) out[k.slice(prefix.length)] = localStorage.getItem(k)!;
  }
  return out;
}
