// The messages between page and worker. The page accepts the waiting edition
// or asks for the status; the worker reports.

export type Wish = { type: "accept" | "status" };

export type Report =
  | { kind: "saving"; count: number; total: number }
  | { kind: "failed"; why: "full" | "changed" | "failed" }
  | { kind: "status"; edition: string; count: number; total: number };
