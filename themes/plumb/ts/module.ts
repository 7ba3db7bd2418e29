// The module: fetched, unpacked and started once, when first needed.
import { facts } from "./page";
import { decode, encode, type Record_ } from "./records";
import { imports } from "./wasi";

/** Why there is no module: the key of a text. */
export class NoModule extends Error {}

interface Exports {
  memory: WebAssembly.Memory;
  _initialize(): void;
  buffer(n: number): number;
  answer(n: number): number;
}

let starting: Promise<Exports> | undefined;

/** Starts the module; later calls wait for the first. A failed start may be tried again. */
export function startModule(): Promise<Exports> {
  starting ??= start().catch((e) => {
    starting = undefined;
    throw e;
  });
  return starting;
}

async function start(): Promise<Exports> {
  if (typeof WebAssembly !== "object" || typeof DecompressionStream !== "function") throw new NoModule("ui.calc.no-module");
  let bytes: ArrayBuffer;
  try {
    bytes = await bytesOf("module", facts.module);
    if (!isModule(bytes)) throw new Error(facts.module + ": not a module");
  } catch (e) {
    console.error(e);
    throw new NoModule("ui.calc.no-load");
  }
  let exports: Exports;
  try {
    const module = await WebAssembly.compile(bytes);
    const instance = await WebAssembly.instantiate(module, imports(module, () => exports.memory));
    exports = instance.exports as unknown as Exports;
    exports._initialize();
  } catch (e) {
    console.error(e);
    throw new NoModule("ui.calc.no-module");
  }
  const hello = call(exports, "hello", []);
  if (hello[0]?.[1] !== facts.fingerprint) throw new NoModule("ui.calc.other");
  return exports;
}

/** Whether bytes open as a module does; a network's sign-in page does not. */
function isModule(bytes: ArrayBuffer): boolean {
  return String.fromCharCode(...new Uint8Array(bytes, 0, Math.min(4, bytes.byteLength))) === "\0asm";
}

/** Asks the module in a language, starting it if need be. */
export async function ask(command: string, lang: string, records: Record_[]): Promise<Record_[]> {
  await once("words-" + lang, () => loadWords(lang));
  return call(await startModule(), command, [["lang", lang], ...records]);
}

/** Loads the search index of a language. */
export function loadIndex(lang: string): Promise<void> {
  return once("index-" + lang, async () => {
    const text = await textOf("index-" + lang, facts.index);
    call(await startModule(), "index", [["lang", lang], ["data", text]]);
  });
}

/** The translations of what the module says; English needs none. */
async function loadWords(lang: string): Promise<void> {
  const block = "words-" + lang;
  if (!facts.words && !document.getElementById(block)) return;
  const lines = (await textOf(block, facts.words)).trimEnd().split("\n");
  call(await startModule(), "words", [["lang", lang], ...lines.map((line) => ["word", ...line.split("\t")])]);
}

const loading = new Map<string, Promise<void>>();

/** Does a piece of work once; where it fails, it may be tried again. */
function once(name: string, work: () => Promise<void>): Promise<void> {
  let done = loading.get(name);
  if (!done) {
    done = work();
    loading.set(name, done);
    done.catch(() => loading.delete(name));
  }
  return done;
}

function call(m: Exports, command: string, records: Record_[]): Record_[] {
  const request = new TextEncoder().encode(encode(command, records));
  // Every call may move the memory: take addresses first, then look at it.
  const to = m.buffer(request.length);
  new Uint8Array(m.memory.buffer, to, request.length).set(request);
  const n = m.answer(request.length);
  const from = m.buffer(0);
  return decode(new TextDecoder().decode(new Uint8Array(m.memory.buffer, from, n)));
}

async function textOf(block: string, address: string): Promise<string> {
  return new TextDecoder().decode(await bytesOf(block, address));
}

/**
 * The bytes of a published file, or of the data block that stands for it in
 * the one-file edition. Packed files are told by their first bytes: a server
 * may have unpacked them on the way.
 */
async function bytesOf(block: string, address: string): Promise<ArrayBuffer> {
  const inside = document.getElementById(block);
  let bytes: Uint8Array<ArrayBuffer>;
  if (inside) {
    bytes = Uint8Array.from(atob(inside.textContent!.trim()), (c) => c.charCodeAt(0));
  } else {
    const response = await fetch(address);
    if (!response.ok) throw new Error(address + ": " + response.status);
    bytes = new Uint8Array(await response.arrayBuffer());
  }
  if (bytes[0] !== 0x1f || bytes[1] !== 0x8b) return bytes.buffer;
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(stream).arrayBuffer();
}
