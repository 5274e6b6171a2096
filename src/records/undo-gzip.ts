import { createReadStream, createWriteStream, existsSync, rmSync, statSync } from "node:fs";
import { pipeline } from "node:stream/promises";
import { createGunzip } from "node:zlib";

/** No table of records is larger once unpacked; what is would fill the disk. */
const MOST_BYTES = 64 * 2 ** 30;
/** Text is packed to a twentieth, a hundredth at best; of small files the ratio says nothing. */
const HIGHEST_RATIO = 200;
const SMALL = 100 * 2 ** 20;

/**
 * Unpacks a gzip file, of several members too, into a file. Every member is held against its checksum.
 *
 * @returns undefined, or what is wrong, in words; then no file is left
 * @throws {Error} where the target cannot be written
 */
export async function undoGzip(path: string, target: string): Promise<string | undefined> {
  const out = createWriteStream(target);
  const most = Math.min(MOST_BYTES, Math.max(SMALL, HIGHEST_RATIO * statSync(path).size));
  let bytes = 0;
  const bounded = async function* (pieces: AsyncIterable<Buffer>) {
    for await (const piece of pieces) {
      bytes += piece.length;
      if (bytes > most) throw new Error(`it unpacks to more than ${Math.round(most / 2 ** 20)} MB, as no table does`);
      yield piece;
    }
  };
  try {
    await pipeline(createReadStream(path), createGunzip(), bounded, out);
    return undefined;
  } catch (error) {
    if (existsSync(target)) rmSync(target);
    if (out.errored !== null && "syscall" in out.errored) throw out.errored;
    return error instanceof Error ? error.message : "unknown fault";
  }
}
