// What page and worker say to each other. The page says "status" or
// "accept"; the worker answers with reports.

export type Report =
  | { kind: "saving"; count: number; total: number }
  | { kind: "failed"; why: "full" | "changed" | "failed" }
  | { kind: "status"; release: string; count: number; total: number };
