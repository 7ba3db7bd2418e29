// The text that page and module exchange: records on lines, fields between
// tabs. Version 1; the other side is generator/module/protocol.

const head = ["coursebook", "1"];

export type ProtocolRecord = string[];

export function encode(command: string, records: ProtocolRecord[]): string {
  return [[...head, command], ...records].map((r) => r.map(escape).join("\t")).join("\n") + "\n";
}

/** The records of an answer; a fault is thrown with the module's own words. */
export function decode(text: string): ProtocolRecord[] {
  const [first, ...rest] = text.replace(/\n$/, "").split("\n").map((line) => line.split("\t").map(unescape));
  if (first[0] !== head[0] || first[1] !== head[1] || first[2] !== "ok") throw new Error(first[3] ?? "");
  return rest.filter((r) => r[0]);
}

function escape(s: string): string {
  return s.replace(/[\\\t\n\r]/g, (c) => ({ "\\": "\\\\", "\t": "\\t", "\n": "\\n" })[c] ?? "");
}

function unescape(s: string): string {
  if (!s.includes("\\")) return s; // most: a drawing has a thousand fields
  return s.replace(/\\(.)/g, (_, c) => ({ t: "\t", n: "\n" } as { [c: string]: string })[c] ?? c);
}
