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
let indexing: Promise<void> | undefined;

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
  } catch {
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
  if (facts.words || document.getElementById("words-" + facts.lang)) {
    const text = new TextDecoder().decode(await bytesOf("words-" + facts.lang, facts.words));
    const words = text.trimEnd().split("\n").map((line) => ["word", ...line.split("\t")]);
    call(exports, "words", [["lang", facts.lang], ...words]);
  }
  return exports;
}

/** Asks the module, starting it if need be. */
export async function ask(command: string, records: Record_[]): Promise<Record_[]> {
  return call(await startModule(), command, records);
}

/** Loads the search index of the page's language. */
export function loadIndex(): Promise<void> {
  indexing ??= (async () => {
    await startModule();
    const text = new TextDecoder().decode(await bytesOf("index-" + facts.lang, facts.index));
    await ask("index", [["lang", facts.lang], ["data", text]]);
  })().catch((e) => {
    indexing = undefined;
    throw e;
  });
  return indexing;
}

function call(m: Exports, command: string, records: Record_[]): Record_[] {
  const request = new TextEncoder().encode(encode(command, records));
  new Uint8Array(m.memory.buffer, m.buffer(request.length), request.length).set(request);
  const n = m.answer(request.length);
  return decode(new TextDecoder().decode(new Uint8Array(m.memory.buffer, m.buffer(0), n)));
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
