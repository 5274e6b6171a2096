import { isUtf8 } from "node:buffer";
import { createHash } from "node:crypto";
import { closeSync, createReadStream, createWriteStream, openSync, readSync } from "node:fs";
import { pipeline } from "node:stream/promises";
import { watchEmptyRows } from "./empty-rows.ts";
import { type LineBreaks, watchLineBreaks } from "./line-breaks.ts";

export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

/**
 * The encoding a source's settings name. Latin-1 is read as Windows-1252: the characters it has are the same, and where
 * it has none Windows-1252 has the quotation marks and dashes that programs call Latin-1.
 *
 * @example statedEncoding("latin-1") // => "windows-1252"
 */
export function statedEncoding(name: Encoding | "latin-1" | "iso-8859-1"): Encoding {
  return name === "latin-1" || name === "iso-8859-1" ? "windows-1252" : name;
}

/** What the bytes of a text file say about it. */
export interface TextFacts extends LineBreaks {
  encoding: Encoding;
  byteOrderMark: boolean;
  validUtf8: boolean;
  /** True where a byte is 0, as half of them are in UTF-16. */
  nul: boolean;
  /** True where several spaces stand before a quotation mark, which the database takes otherwise than one space or none. */
  spacedMark: boolean;
  /** True where a row holds delimiters and nothing else. */
  emptyRow: boolean;
  bytes: number;
  sha256: string;
}

const CHUNK = 1 << 22;

/**
 * Reads a file once to learn its encoding, line endings and content hash. UTF-16 is told by its byte order mark, or by
 * every other byte being 0 at the beginning; a file that is neither that nor UTF-8 is taken for Windows-1252, in which
 * every byte but five is a character.
 *
 * @example await readTextFacts("records/walks.csv") // => { encoding: "utf-8", byteOrderMark: false, lineEnding: "LF", … }
 */
export async function readTextFacts(path: string): Promise<TextFacts> {
  const hash = createHash("sha256");
  let bytes = 0;
  let utf8 = true;
  let mark: Encoding | null = null;
  let wide: Encoding | null = null;
  let carry = Buffer.alloc(0);
  let nul = false;
  let spacedMark = false;
  let before = Buffer.alloc(0);
  const breaks = watchLineBreaks();
  const emptyRows = watchEmptyRows();
  for await (const piece of createReadStream(path, { highWaterMark: CHUNK })) {
    const chunk = piece as Buffer;
    const first = bytes === 0;
    if (first) {
      mark = markOf(chunk);
      wide = mark ?? wideOf(chunk);
    }
    hash.update(chunk);
    bytes += chunk.length;
    nul ||= chunk.includes(0);
    emptyRows.look(chunk);
    spacedMark ||= chunk.includes('  "') || Buffer.concat([before, chunk.subarray(0, 2)]).includes('  "');
    before = Buffer.from(chunk.subarray(-2));
    if (utf8) {
      const joined = carry.length === 0 ? chunk : Buffer.concat([carry, chunk]);
      const end = lastCharacterEnd(joined);
      utf8 = isUtf8(joined.subarray(0, end));
      carry = Buffer.from(joined.subarray(end));
    }
    const unmarked = first && mark !== null ? chunk.subarray(mark === "utf-8" ? 3 : 2) : chunk;
    breaks.look(wide === "utf-16le" || wide === "utf-16be" ? unitsOf(unmarked, wide) : unmarked);
  }
  if (carry.length > 0) utf8 = utf8 && isUtf8(carry);
  const encoding = wide ?? (utf8 ? "utf-8" : "windows-1252");
  return {
    encoding,
    byteOrderMark: mark !== null,
    validUtf8: utf8,
    nul,
    spacedMark,
    emptyRow: emptyRows.found(),
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

/**
 * The end first of UTF-16 without a mark, by the beginning of a file; null where it does not look like that.
 *
 * Of the first characters, most of which are of ASCII in any header, one byte is 0, always the same.
 *
 * @example wideOf(Buffer.from("name", "utf16le")) // => "utf-16le"
 */
export function wideOf(chunk: Uint8Array): Encoding | null {
  const beginning = chunk.subarray(0, Math.min(chunk.length & ~1, 64));
  let [even, odd] = [0, 0];
  for (let at = 0; at < beginning.length; at += 2) {
    if (beginning[at] === 0) even += 1;
    if (beginning[at + 1] === 0) odd += 1;
  }
  const enough = Math.max(2, beginning.length / 4);
  if (odd >= enough && even === 0) return "utf-16le";
  if (even >= enough && odd === 0) return "utf-16be";
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
  const decoded = async function* (pieces: AsyncIterable<Buffer>) {
    for await (const piece of pieces) yield decoder.decode(piece, { stream: true });
    yield decoder.decode();
  };
  await pipeline(createReadStream(path, { highWaterMark: CHUNK }), decoded, createWriteStream(target));
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
