// The text format of requests to the module and of its answers: a record a line,
// fields separated by tabs. Version 1; package generator/module/protocol is the
// module's side.

const head = ["coursebook", "1"];

export type ProtocolRecord = string[];

/** The text of a request. */
export function encode(command: string, records: ProtocolRecord[]): string {
  return [[...head, command], ...records].map((r) => r.map(escape).join("\t")).join("\n") + "\n";
}

/** The records of an answer. Throws an Error with the module's message if the answer is an error. */
export function decode(text: string): ProtocolRecord[] {
  const [first, ...rest] = text.replace(/\n$/, "").split("\n").map((line) => line.split("\t").map(unescape));
  if (first[0] !== head[0] || first[1] !== head[1] || first[2] !== "ok") throw new Error(first[3] ?? "");
  return rest.filter((r) => r[0]);
}

function escape(s: string): string {
  return s.replace(/[\\\t\n\r]/g, (c) => ({ "\\": "\\\\", "\t": "\\t", "\n": "\\n" })[c] ?? "");
}

function unescape(s: string): string {
  if (!s.includes("\\")) return s; // most fields; a drawing has a thousand
  return s.replace(/\\(.)/g, (_, c) => ({ t: "\t", n: "\n" } as { [c: string]: string })[c] ?? c);
}
