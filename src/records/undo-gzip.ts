import { createReadStream, createWriteStream, rmSync } from "node:fs";
import { pipeline } from "node:stream/promises";
import { createGunzip } from "node:zlib";

/** No table of records is larger once unpacked; what is would fill the disk. */
const MOST_BYTES = 64 * 2 ** 30;

/**
 * Unpacks a gzip file, of several members too, into a file. Every member is held against its checksum.
 *
 * @returns undefined, or what is wrong, in words; then no file is left
 * @throws {Error} where the target cannot be written
 */
export async function undoGzip(path: string, target: string): Promise<string | undefined> {
  const out = createWriteStream(target);
  let bytes = 0;
  const bounded = async function* (pieces: AsyncIterable<Buffer>) {
    for await (const piece of pieces) {
      bytes += piece.length;
      if (bytes > MOST_BYTES) throw new Error(`it unpacks to more than ${MOST_BYTES / 2 ** 30} GB`);
      yield piece;
    }
  };
  try {
    await pipeline(createReadStream(path), createGunzip(), bounded, out);
    return undefined;
  } catch (error) {
    if (out.errored !== null && "syscall" in out.errored) throw out.errored;
    rmSync(target, { force: true });
    return error instanceof Error ? error.message : "unknown fault";
  }
}
