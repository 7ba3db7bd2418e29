// The messages between page and worker. Page and worker can be of different
// editions: the values stay the same in all editions.

/** Accepts the waiting edition, or requests the status. */
export type PageMessage = { type: "accept" | "status" };

/** The progress of an installation, its failure, or the number of cached files. */
export type WorkerMessage =
  | { kind: "saving"; count: number; total: number }
  | { kind: "failed"; why: "full" | "changed" | "failed" }
  | { kind: "status"; edition: string; count: number; total: number };
