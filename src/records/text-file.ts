import { isUtf8 } from "node:buffer";
import { createHash } from "node:crypto";
import { closeSync, createReadStream, createWriteStream, openSync, readSync } from "node:fs";
import { once } from "node:events";

export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

/** What the bytes of a text file say about it. */
export interface TextFacts {
  encoding: Encoding;
  byteOrderMark: boolean;
  /** The line ending used throughout, or "mixed". */
  lineEnding: "LF" | "CRLF" | "CR" | "mixed" | "none";
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
  const endings = { crlf: 0, lf: 0, cr: 0 };
  let afterReturn = false;
  for await (const piece of createReadStream(path, { highWaterMark: CHUNK })) {
    const chunk = piece as Buffer;
    if (bytes === 0) mark = markOf(chunk);
    hash.update(chunk);
    bytes += chunk.length;
    if (utf8) {
      const joined = carry.length === 0 ? chunk : Buffer.concat([carry, chunk]);
      const end = lastCharacterEnd(joined);
      utf8 = isUtf8(joined.subarray(0, end));
      carry = Buffer.from(joined.subarray(end));
    }
    afterReturn = countEndings(chunk, endings, afterReturn);
  }
  if (afterReturn) endings.cr += 1;
  if (carry.length > 0) utf8 = utf8 && isUtf8(carry);
  const encoding = mark ?? (utf8 ? "utf-8" : "windows-1252");
  return { encoding, byteOrderMark: mark !== null, lineEnding: endingOf(endings), bytes, sha256: hash.digest("hex") };
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

function countEndings(chunk: Buffer, endings: { crlf: number; lf: number; cr: number }, afterReturn: boolean): boolean {
  if (!afterReturn && chunk.indexOf(13) < 0) {
    if (chunk.indexOf(10) >= 0) endings.lf += 1;
    return false;
  }
  let returned = afterReturn;
  for (const byte of chunk) {
    if (byte === 10) endings[returned ? "crlf" : "lf"] += 1;
    else if (returned) endings.cr += 1;
    returned = byte === 13;
  }
  return returned;
}

function endingOf({ crlf, lf, cr }: { crlf: number; lf: number; cr: number }): TextFacts["lineEnding"] {
  const kinds = [crlf, lf, cr].filter((number) => number > 0).length;
  if (kinds > 1) return "mixed";
  return crlf > 0 ? "CRLF" : lf > 0 ? "LF" : cr > 0 ? "CR" : "none";
}

/** Writes a file again as UTF-8 with LF, which is all the database reads. Bytes that are no text become U+FFFD. */
export async function writeAsUtf8(path: string, encoding: Encoding, target: string): Promise<void> {
  const decoder = new TextDecoder(encoding);
  const out = createWriteStream(target);
  let pendingReturn = false;
  const write = async (text: string) => {
    let whole = pendingReturn ? `\r${text}` : text;
    pendingReturn = whole.endsWith("\r");
    if (pendingReturn) whole = whole.slice(0, -1);
    if (!out.write(whole.replace(/\r\n?/g, "\n"))) await once(out, "drain");
  };
  for await (const piece of createReadStream(path, { highWaterMark: CHUNK })) await write(decoder.decode(piece as Buffer, { stream: true }));
  await write(decoder.decode());
  out.end(pendingReturn ? "\n" : "");
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
