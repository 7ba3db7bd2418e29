// The module: fetched, unpacked and started once, when first needed.
import { facts } from "./page";
import { decode, encode, type Record_ } from "./records";
import { imports } from "./wasi";

type Bytes = Uint8Array<ArrayBuffer>;

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
  let exports: Exports;
  try {
    const module = await compiled();
    const instance = await WebAssembly.instantiate(module, imports(module, () => exports.memory));
    exports = instance.exports as unknown as Exports;
    exports._initialize();
  } catch (e) {
    console.error(e);
    throw new NoModule(e instanceof NotLoaded ? "ui.calc.no-load" : "ui.calc.no-module");
  }
  const hello = call(exports, "hello", []);
  if (hello[0]?.[1] !== facts.fingerprint) throw new NoModule("ui.calc.other");
  return exports;
}

/** Something else came in place of the module, or nothing. */
class NotLoaded extends Error {}

/** The module, compiled while it comes in where it is a file. */
async function compiled(): Promise<WebAssembly.Module> {
  if (document.getElementById("module")) return WebAssembly.compile(await bytesOf("module", facts.module));
  try {
    const { first, plain } = await opened(facts.module);
    if (!isPacked(first) && !isModule(first)) throw new Error(facts.module + ": not a module");
    return await WebAssembly.compileStreaming(new Response(plain, { headers: { "content-type": "application/wasm" } }));
  } catch (e) {
    if (e instanceof WebAssembly.CompileError) throw e;
    throw new NotLoaded(String(e));
  }
}

/** Whether bytes open as a module does; a network's sign-in page does not. */
function isModule(bytes: Bytes): boolean {
  return String.fromCharCode(...bytes.subarray(0, 4)) === "\0asm";
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
 * the one-file edition.
 */
async function bytesOf(block: string, address: string): Promise<ArrayBuffer> {
  const inside = document.getElementById(block);
  if (!inside) return new Response((await opened(address)).plain).arrayBuffer();
  const bytes = Uint8Array.from(atob(inside.textContent!.trim()), (c) => c.charCodeAt(0));
  return new Response(unpacked(bytes, new Blob([bytes]).stream())).arrayBuffer();
}

/** A published file as it comes in, with the first of its bytes as they were sent. */
async function opened(address: string): Promise<{ first: Bytes; plain: ReadableStream<Bytes> }> {
  const response = await fetch(address);
  if (!response.ok || !response.body) throw new Error(address + ": " + response.status);
  const [peek, body] = response.body.tee();
  const reader = peek.getReader();
  const first = (await reader.read()).value ?? new Uint8Array();
  void reader.cancel();
  return { first, plain: unpacked(first, body) };
}

/** Unpacks what is packed, told by its first bytes: a server may have unpacked it on the way. */
function unpacked(first: Bytes, body: ReadableStream<Bytes>): ReadableStream<Bytes> {
  return isPacked(first) ? body.pipeThrough(new DecompressionStream("gzip")) : body;
}

function isPacked(bytes: Bytes): boolean {
  return bytes[0] === 0x1f && bytes[1] === 0x8b;
}
