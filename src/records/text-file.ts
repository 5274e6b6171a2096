import { isUtf8 } from "node:buffer";
import { createHash } from "node:crypto";
import { once } from "node:events";
import { closeSync, createReadStream, createWriteStream, openSync, readSync } from "node:fs";
import { type LineBreaks, watchLineBreaks } from "./line-breaks.ts";

export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

/** What the bytes of a text file say about it. */
export interface TextFacts extends LineBreaks {
  encoding: Encoding;
  byteOrderMark: boolean;
  validUtf8: boolean;
  /** True where a byte is 0, as half of them are in UTF-16. */
  nul: boolean;
  bytes: number;
  sha256: string;
}

const CHUNK = 1 << 22;

/**
 * Reads a file once to learn its encoding, line endings and content hash. A file that is not UTF-8 and has
 * no UTF-16 byte order mark is taken for Windows-1252, in which every byte but five is a character.
 *
 * @example await readTextFacts("records/walks.csv") // => { encoding: "utf-8", byteOrderMark: false, lineEnding: "LF", … }
 */
export async function readTextFacts(path: string): Promise<TextFacts> {
  const hash = createHash("sha256");
  let bytes = 0;
  let utf8 = true;
  let mark: Encoding | null = null;
  let carry = Buffer.alloc(0);
  let nul = false;
  const breaks = watchLineBreaks();
  for await (const piece of createReadStream(path, { highWaterMark: CHUNK })) {
    const chunk = piece as Buffer;
    const first = bytes === 0;
    if (first) mark = markOf(chunk);
    hash.update(chunk);
    bytes += chunk.length;
    nul ||= chunk.includes(0);
    if (utf8) {
      const joined = carry.length === 0 ? chunk : Buffer.concat([carry, chunk]);
      const end = lastCharacterEnd(joined);
      utf8 = isUtf8(joined.subarray(0, end));
      carry = Buffer.from(joined.subarray(end));
    }
    const unmarked = first && mark !== null ? chunk.subarray(mark === "utf-8" ? 3 : 2) : chunk;
    breaks.look(mark === "utf-16le" || mark === "utf-16be" ? unitsOf(unmarked, mark) : unmarked);
  }
  if (carry.length > 0) utf8 = utf8 && isUtf8(carry);
  const encoding = mark ?? (utf8 ? "utf-8" : "windows-1252");
  return {
    encoding,
    byteOrderMark: mark !== null,
    validUtf8: utf8,
    nul,
    ...breaks.found(),
    bytes,
    sha256: hash.digest("hex"),
  };
}

function markOf(chunk: Buffer): Encoding | null {
  if (chunk[0] === 0xef && chunk[1] === 0xbb && chunk[2] === 0xbf) return "utf-8";
  if (chunk[0] === 0xff && chunk[1] === 0xfe) return "utf-16le";
  if (chunk[0] === 0xfe && chunk[1] === 0xff) return "utf-16be";
  return null;
}

/** Where the last whole UTF-8 character ends, so that a chunk is never judged in the middle of one. */
function lastCharacterEnd(bytes: Buffer): number {
  for (let back = 1; back <= Math.min(3, bytes.length); back += 1) {
    const byte = bytes[bytes.length - back] ?? 0;
    if (byte >= 0xc0) return bytes.length - back;
    if (byte < 0x80) break;
  }
  return bytes.length;
}

/** The 16-bit units of a chunk of UTF-16; an odd byte at the end of a file is dropped. */
function unitsOf(chunk: Buffer, encoding: "utf-16le" | "utf-16be"): Uint16Array {
  const bytes = Buffer.from(chunk.subarray(0, chunk.length & ~1));
  return new Uint16Array(new Uint8Array(encoding === "utf-16be" ? bytes.swap16() : bytes).buffer);
}

/** Writes a file again as UTF-8. Bytes that are no text become U+FFFD. */
export async function writeAsUtf8(path: string, encoding: Encoding, target: string): Promise<void> {
  const decoder = new TextDecoder(encoding);
  const out = createWriteStream(target);
  for await (const piece of createReadStream(path, { highWaterMark: CHUNK }))
    if (!out.write(decoder.decode(piece as Buffer, { stream: true }))) await once(out, "drain");
  out.end(decoder.decode());
  await once(out, "finish");
}

/** The first part of a file, decoded: enough for its header and a look at its delimiter. */
export function readBeginning(path: string, encoding: Encoding, bytes = 1 << 18): string {
  const file = openSync(path, "r");
  try {
    const buffer = Buffer.alloc(bytes);
    const length = readSync(file, buffer, 0, bytes, 0);
    return new TextDecoder(encoding).decode(buffer.subarray(0, length), { stream: true });
  } finally {
    closeSync(file);
  }
}
