// Published files, read as text or bytes. In the one-file edition a file is a
// data block of the page, in base64.

type Bytes = Uint8Array<ArrayBuffer>;

/** Whether the page holds a file as a data block. */
export function isInline(block: string): boolean {
  return document.getElementById(block) !== null;
}

/** The text of a data block, or of the file at an address where the page has no such block. */
export async function textOf(block: string, address: string, options?: RequestInit): Promise<string> {
  return new TextDecoder().decode(await bytesOf(block, address, options));
}

/** The bytes of a data block or file, decompressed. */
export async function bytesOf(block: string, address: string, options?: RequestInit): Promise<ArrayBuffer> {
  const inside = document.getElementById(block);
  if (!inside) return new Response((await openFile(address, options)).body).arrayBuffer();
  const bytes = Uint8Array.from(atob(inside.textContent!.trim()), (c) => c.charCodeAt(0));
  return new Response(decompressed(bytes, new Blob([bytes]).stream())).arrayBuffer();
}

/** A file as a decompressed stream, with its first bytes as the server sent them. */
export async function openFile(address: string, options?: RequestInit): Promise<{ first: Bytes; body: ReadableStream<Bytes> }> {
  const response = await fetch(address, options);
  if (!response.ok || !response.body) throw new Error(address + ": " + response.status);
  const [peek, body] = response.body.tee();
  const reader = peek.getReader();
  const first = (await reader.read()).value ?? new Uint8Array();
  void reader.cancel();
  return { first, body: decompressed(first, body) };
}

/** Decompresses what is gzip by its first bytes: a server may have decompressed it already. */
function decompressed(first: Bytes, body: ReadableStream<Bytes>): ReadableStream<Bytes> {
  return isGzip(first) ? body.pipeThrough(new DecompressionStream("gzip")) : body;
}

export function isGzip(bytes: Bytes): boolean {
  return bytes[0] === 0x1f && bytes[1] === 0x8b;
}
