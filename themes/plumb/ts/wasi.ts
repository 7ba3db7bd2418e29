// The imports of the module: the functions of WASI preview 1 that a Go reactor
// without files and network needs. Any other import throws when it is called.

// The module's environment variables. With GOGC=400 the first garbage collection is
// at 16 MB of heap, not at 4: a collection during a keystroke delays its result.
const environment = new TextEncoder().encode("GOGC=400\0");

/** The import object of a module. The memory exists only after instantiation, so it is passed as a function. */
export function imports(module: WebAssembly.Module, memory: () => WebAssembly.Memory): WebAssembly.Imports {
  const view = () => new DataView(memory().buffer);
  const implemented: { [name: string]: (...args: any[]) => number | void } = {
    args_sizes_get: (n, size) => (view().setUint32(n, 0, true), view().setUint32(size, 0, true), 0),
    args_get: () => 0,
    environ_sizes_get: (n, size) => (view().setUint32(n, 1, true), view().setUint32(size, environment.length, true), 0),
    environ_get: (list, at) => (view().setUint32(list, at, true), new Uint8Array(memory().buffer, at).set(environment), 0),
    random_get: (at, n) => (crypto.getRandomValues(new Uint8Array(memory().buffer, at, n)), 0),
    // The runtime panics if the clock is zero.
    clock_time_get: (_id, _precision, at) => {
      view().setBigUint64(at, BigInt(Math.round(performance.now() * 1e6) + 1), true);
      return 0;
    },
    // Prints to the console: a panic's message before the trap. The traceback has no names, which the module omits.
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
    poll_oneoff: () => 52, // ENOSYS: the module never waits
    proc_exit: (code) => {
      throw new Error("module exit " + code);
    },
  };
  const out: WebAssembly.Imports = {};
  for (const { module: namespace, name } of WebAssembly.Module.imports(module)) {
    const host = namespace === "wasi_snapshot_preview1" ? implemented[name] : undefined;
    (out[namespace] ??= {})[name] = host ?? (() => {
      throw new Error("module asks for " + namespace + "." + name);
    });
  }
  return out;
}
