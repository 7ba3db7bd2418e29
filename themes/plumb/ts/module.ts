// The WebAssembly module: fetched and started when first needed, then asked.
// A trap is any exception out of the module's code. An instance that trapped
// is never called again: a new one is started in its place, once a page, and
// the request is repeated.
import { bytesOf, isGzip, isInline, openFile, textOf } from "./files";
import { root, Unavailable } from "./page";
import { decode, encode, type ProtocolRecord } from "./records";
import { release, type Release } from "./release";
import { imports } from "./wasi";

interface Exports {
  memory: WebAssembly.Memory;
  _initialize(): void;
  buffer(n: number): number;
  answer(n: number): number;
}

interface Instance {
  exports: Exports;
  trapped: boolean;
}

class Trap extends Error {}

const maxRestarts = 1;
let traps = 0;
let starting: Promise<Instance> | undefined;
let compiling: Promise<WebAssembly.Module> | undefined;
const restarted: (() => void)[] = [];

/** Calls back when the module has been started again after a trap. */
export function onRestart(listener: () => void): void {
  restarted.push(listener);
}

/** Starts the module if it does not run. A failed start may be tried again. */
export function startModule(): Promise<void> {
  return withInstance(() => {});
}

/** Asks the module in a language. Rejects with Unavailable where there is no module to ask. */
export async function ask(command: string, lang: string, records: ProtocolRecord[]): Promise<ProtocolRecord[]> {
  await once("words-" + lang, () => loadWords(lang));
  return withInstance((instance) => call(instance, command, [["lang", lang], ...records]));
}

/** Loads the search index of a language. */
export function loadIndex(lang: string): Promise<void> {
  return once("index-" + lang, async () => {
    const text = await fileText("index-" + lang, (await release()).index[lang]);
    await give("index", [["lang", lang], ["data", text]]);
  });
}

/** The translations of the module's texts; English needs none. */
async function loadWords(lang: string): Promise<void> {
  const block = "words-" + lang;
  const path = (await release()).words[lang];
  if (!path && !isInline(block)) return;
  const lines = (await fileText(block, path)).trimEnd().split("\n");
  await give("words", [["lang", lang], ...lines.map((line) => ["word", ...line.split("\t")])]);
}

/** What every instance must be given before it is asked: words and indexes. */
const given: [command: string, records: ProtocolRecord[]][] = [];

function give(command: string, records: ProtocolRecord[]): Promise<void> {
  return withInstance((instance) => {
    call(instance, command, records);
    given.push([command, records]);
  });
}

/** Runs work on the instance, and once more on a new instance where it traps. */
async function withInstance<T>(work: (instance: Instance) => T): Promise<T> {
  for (;;) {
    if (traps > maxRestarts) throw new Unavailable("ui.stopped");
    try {
      const instance = await (starting ??= start());
      if (!instance.trapped) return work(instance);
    } catch (e) {
      if (!(e instanceof Trap)) throw e;
      console.error(e);
    }
  }
}

async function start(): Promise<Instance> {
  try {
    const list = await release();
    const instance = await instantiate(list);
    const hello = call(instance, "hello", []);
    if (hello[0]?.[1] !== list.fingerprint) throw new Unavailable("ui.calc.other");
    for (const [command, records] of given) call(instance, command, records);
    if (traps > 0) for (const listener of restarted) listener();
    return instance;
  } catch (e) {
    starting = undefined;
    throw e;
  }
}

async function instantiate(list: Release): Promise<Instance> {
  if (typeof WebAssembly !== "object" || typeof DecompressionStream !== "function") throw new Unavailable("ui.calc.no-module");
  try {
    compiling ??= compile(new URL(list.module, root).href);
    const module = await compiling;
    let exports: Exports;
    const instance = await WebAssembly.instantiate(module, imports(module, () => exports.memory));
    exports = instance.exports as unknown as Exports;
    exports._initialize();
    return { exports, trapped: false };
  } catch (e) {
    compiling = undefined;
    console.error(e);
    throw new Unavailable(e instanceof NotLoaded ? "ui.calc.no-load" : "ui.calc.no-module");
  }
}

class NotLoaded extends Error {}

/** Compiles the module, while it is received where it is a file. */
async function compile(address: string): Promise<WebAssembly.Module> {
  if (isInline("module")) return WebAssembly.compile(await bytesOf("module", address));
  try {
    const { first, body } = await openFile(address);
    if (!isGzip(first) && !isModule(first)) throw new Error(address + ": not a module");
    return await WebAssembly.compileStreaming(new Response(body, { headers: { "content-type": "application/wasm" } }));
  } catch (e) {
    if (e instanceof WebAssembly.CompileError) throw e;
    throw new NotLoaded(String(e));
  }
}

/** Whether bytes begin as a module does; a network's sign-in page does not. */
function isModule(bytes: Uint8Array): boolean {
  return String.fromCharCode(...bytes.subarray(0, 4)) === "\0asm";
}

function call(instance: Instance, command: string, records: ProtocolRecord[]): ProtocolRecord[] {
  const request = new TextEncoder().encode(encode(command, records));
  return decode(new TextDecoder().decode(exchange(instance, request)));
}

/** One request and its answer. Every call may move the memory: addresses first, then the bytes. */
function exchange(instance: Instance, request: Uint8Array): Uint8Array {
  const { exports: m } = instance;
  try {
    const to = m.buffer(request.length);
    new Uint8Array(m.memory.buffer, to, request.length).set(request);
    const n = m.answer(request.length);
    const from = m.buffer(0);
    return new Uint8Array(m.memory.buffer, from, n);
  } catch (e) {
    instance.trapped = true;
    starting = undefined;
    traps++;
    throw new Trap(String(e));
  }
}

function fileText(block: string, path: string): Promise<string> {
  return textOf(block, path && new URL(path, root).href);
}

const loading = new Map<string, Promise<void>>();

/** Does a piece of work once; where it fails, a later call tries again. */
function once(name: string, work: () => Promise<void>): Promise<void> {
  let done = loading.get(name);
  if (!done) {
    done = work();
    loading.set(name, done);
    done.catch(() => loading.delete(name));
  }
  return done;
}
