// Texts stored on the device. Keys carry the path of this site, so that two manuals
// on one server do not share them. If the browser does not store them, they are
// held in memory until the page is closed.
import { facts, root } from "./page";

const prefix = "coursebook " + (facts.pocket ? location.pathname : root.pathname) + " ";
const memory = new Map<string, string>();

/** Whether the browser stores texts. */
export const persistent = isPersistent();

function isPersistent(): boolean {
  try {
    localStorage.setItem(prefix + "probe", "1");
    const ok = localStorage.getItem(prefix + "probe") === "1";
    localStorage.removeItem(prefix + "probe");
    return ok;
  } catch {
    return false;
  }
}

/** The stored text of a key; empty if there is none. */
export function load(key: string): string {
  try {
    return localStorage.getItem(prefix + key) ?? memory.get(key) ?? "";
  } catch {
    return memory.get(key) ?? "";
  }
}

/** Stores a text; an empty text removes the key. Returns whether the browser has stored it. */
export function save(key: string, text: string): boolean {
  memory.set(key, text);
  try {
    if (text) localStorage.setItem(prefix + key, text);
    else localStorage.removeItem(prefix + key);
    return true;
  } catch {
    return false; // the copy in memory is used until the page is closed
  }
}

/** All stored texts by key, for export. */
export function allStored(): Record<string, string> {
  const out: Record<string, string> = {};
  for (const [k, v] of memory) if (v) out[k] = v;
  if (!persistent) return out;
  for (let i = 0; i < localStorage.length; i++) {
    const k = localStorage.key(i)!;
    if (k.startsWith(prefix)) out[k.slice(prefix.length)] = localStorage.getItem(k)!;
  }
  return out;
}
