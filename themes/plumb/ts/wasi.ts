// The host of the module: WASI preview 1 as far as a Go reactor that only
// computes needs it. Any import that is not listed here traps, so that a
// module which suddenly wants files or the network is found at once.

// All of the module's environment. Its runtime tidies memory at 16 MB and not
// at 4: a tidying falls into a keystroke, and a phone feels it.
const setting = new TextEncoder().encode("GOGC=400\0");

/** The imports for a module; memory is asked for when it is used. */
export function imports(module: WebAssembly.Module, memory: () => WebAssembly.Memory): WebAssembly.Imports {
  const view = () => new DataView(memory().buffer);
  const listed: { [name: string]: (...args: any[]) => number | void } = {
    args_sizes_get: (n, size) => (view().setUint32(n, 0, true), view().setUint32(size, 0, true), 0),
    args_get: () => 0,
    environ_sizes_get: (n, size) => (view().setUint32(n, 1, true), view().setUint32(size, setting.length, true), 0),
    environ_get: (list, at) => (view().setUint32(list, at, true), new Uint8Array(memory().buffer, at).set(setting), 0),
    random_get: (at, n) => (crypto.getRandomValues(new Uint8Array(memory().buffer, at, n)), 0),
    // The runtime refuses a clock that stands at zero.
    clock_time_get: (_id, _precision, at) => {
      view().setBigUint64(at, BigInt(Math.round(performance.now() * 1e6) + 1), true);
      return 0;
    },
    // A panic prints its message before the trap. Its traceback has no names: they are not in the module.
    fd_write: (_fd, list, count, written) => {
      let bytes = 0;
      for (let i = 0; i < count; i++) {
        const [at, n] = [view().getUint32(list + 8 * i, true), view().getUint32(list + 8 * i + 4, true)];
        console.error(new TextDecoder().decode(new Uint8Array(memory().buffer, at, n)));
        bytes += n;
      }
      view().setUint32(written, bytes, true);
      return 0;
    },
    sched_yield: () => 0,
    poll_oneoff: () => 52, // not supported: nothing here ever waits
    proc_exit: (code) => {
      throw new Error("module exit " + code);
    },
  };
  const out: WebAssembly.Imports = {};
  for (const { module: space, name } of WebAssembly.Module.imports(module)) {
    const host = space === "wasi_snapshot_preview1" ? listed[name] : undefined;
    (out[space] ??= {})[name] = host ?? (() => {
      throw new Error("module asks for " + space + "." + name);
    });
  }
  return out;
}
