// The WebAssembly module: fetched and started when first needed; answers requests.
// A trap is any exception out of the module's code. An instance that trapped
// is never called again: a new one is started, at most maxRestarts times a page,
// and the request is repeated.
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
const restartListeners: (() => void)[] = [];

/** Adds a listener that is called when the module has restarted after a trap. */
export function onRestart(listener: () => void): void {
  restartListeners.push(listener);
}

/** Starts the module unless it is running. A later call retries a failed start. */
export function startModule(): Promise<void> {
  return withInstance(() => {});
}

/** Sends a request in a language and returns the records of the answer. Rejects with Unavailable if no module can be started. */
export async function request(command: string, lang: string, records: ProtocolRecord[]): Promise<ProtocolRecord[]> {
  await once("words-" + lang, () => loadWords(lang));
  return withInstance((instance) => call(instance, command, [["lang", lang], ...records]));
}

/** Loads the search index of a language. */
export function loadIndex(lang: string): Promise<void> {
  return once("index-" + lang, async () => {
    void startModule().catch(() => {}); // beside the index; load below handles its errors
    void once("words-" + lang, () => loadWords(lang)).catch(() => {});
    const text = await fileText("index-" + lang, (await release()).index[lang]);
    await load("index", [["lang", lang], ["data", text]]);
  });
}

/** Loads the translations of the module's texts; English needs none. */
async function loadWords(lang: string): Promise<void> {
  const block = "words-" + lang;
  const path = (await release()).words[lang];
  if (!path && !isInline(block)) return;
  const lines = (await fileText(block, path)).trimEnd().split("\n");
  await load("words", [["lang", lang], ...lines.map((line) => ["word", ...line.split("\t")])]);
}

/** The commands that load words and indexes; each is repeated on a new instance. */
const loaded: [command: string, records: ProtocolRecord[]][] = [];

function load(command: string, records: ProtocolRecord[]): Promise<void> {
  return withInstance((instance) => {
    call(instance, command, records);
    loaded.push([command, records]);
  });
}

/** Runs work on the instance; after a trap, again on a new instance. */
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
    call(instance, "rules", Object.entries(list.rules).map(([id, amount]) => ["rule", id, amount]));
    const hello = call(instance, "hello", []);
    if (hello[0]?.[1] !== list.fingerprint) throw new Unavailable("ui.calc.other");
    for (const [command, records] of loaded) call(instance, command, records);
    if (traps > 0) for (const listener of restartListeners) listener();
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

/** Compiles the module; a file is compiled while it is received. */
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

/** Whether bytes begin with the magic number of WebAssembly; a network's sign-in page does not. */
function isModule(bytes: Uint8Array): boolean {
  return String.fromCharCode(...bytes.subarray(0, 4)) === "\0asm";
}

function call(instance: Instance, command: string, records: ProtocolRecord[]): ProtocolRecord[] {
  const bytes = new TextEncoder().encode(encode(command, records));
  return decode(new TextDecoder().decode(exchange(instance, bytes)));
}

/** Sends the bytes of a request and returns those of the answer. Every call can grow the memory: the view is made after the call. */
function exchange(instance: Instance, bytes: Uint8Array): Uint8Array {
  const { exports: m } = instance;
  try {
    const to = m.buffer(bytes.length);
    new Uint8Array(m.memory.buffer, to, bytes.length).set(bytes);
    const n = m.answer(bytes.length);
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

/** Runs named work once; a later call retries failed work. */
function once(name: string, work: () => Promise<void>): Promise<void> {
  let done = loading.get(name);
  if (!done) {
    done = work();
    loading.set(name, done);
    done.catch(() => loading.delete(name));
  }
  return done;
}
