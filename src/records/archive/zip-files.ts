import { once } from "node:events";
import { createWriteStream, rmSync } from "node:fs";
import { join } from "node:path";
import { Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import { crc32 } from "node:zlib";
import type { Entry, ZipFile } from "yauzl";
import { type ArchiveFiles, isLitter } from "./archive-files.ts";
import { type ArchiveRemark, refusedArchive, refusedEntry } from "./archive-remark.ts";
import { openZip } from "./open-zip.ts";
import { entryPath, entryRefusal } from "./zip-entry.ts";

/** All that is taken out of one archive together. */
const MOST_BYTES = 128 * 2 ** 30;

/**
 * The files of a zipped archive. Only files that are asked for are taken out, one after the other, under names of our
 * own, and each is held against its size and checksum.
 *
 * @param folder where they are taken out to
 * @returns a remark where it is no zip that can be read
 */
export async function zipFiles(path: string, folder: string): Promise<ArchiveFiles | ArchiveRemark> {
  try {
    const { zip, entries } = await openZip(path);
    return filesOf(zip, entries, folder);
  } catch (error) {
    return refusedArchive(
      `the archive cannot be read: ${error instanceof Error ? error.message : "unknown fault"}`,
      "fetch it again, or pack it anew as zip",
    );
  }
}

function filesOf(zip: ZipFile, entries: readonly Entry[], folder: string): ArchiveFiles {
  const known = new Map<string, Entry>();
  const remarks: ArchiveRemark[] = [];
  for (const entry of entries) {
    const path = entryPath(entry);
    if (path.endsWith("/")) continue;
    const refused = known.has(path) ? "is there a second time" : entryRefusal(path, entry);
    if (refused !== undefined) remarks.push(refusedEntry(path, refused));
    else if (!isLitter(path)) known.set(path, entry);
  }
  let bytes = 0;
  let files = 0;
  return {
    paths: [...known.keys()].sort(),
    remarks,
    async take(path) {
      const entry = known.get(path);
      if (entry === undefined) return refusedEntry(path, "is not in the archive");
      bytes += entry.uncompressedSize;
      if (bytes > MOST_BYTES)
        return refusedEntry(path, `would fill more than ${MOST_BYTES / 2 ** 30} GB with the others`);
      const target = join(folder, `taken-${files++}`);
      const fault = await takeOut(zip, entry, target);
      if (fault === undefined) return target;
      rmSync(target, { force: true });
      return refusedEntry(path, `cannot be taken out whole: ${fault}`, "fetch the archive again, or pack it anew");
    },
    close: () => zip.close(),
  };
}

/** Writes an entry to a file. Gives what is wrong with the entry; a disk that is full is an error. */
async function takeOut(zip: ZipFile, entry: Entry, target: string): Promise<string | undefined> {
  let sum = 0;
  const watch = new Transform({
    transform(piece: Buffer, _, done) {
      sum = crc32(piece, sum);
      done(null, piece);
    },
  });
  const out = createWriteStream(target);
  await once(out, "open");
  try {
    await pipeline(await zip.openReadStreamPromise(entry), watch, out);
  } catch (error) {
    if (out.errored !== null && isSystemError(out.errored)) throw out.errored;
    return error instanceof Error ? error.message : "unknown fault";
  }
  return sum === entry.crc32 ? undefined : "its checksum is not the one stated";
}

function isSystemError(error: Error): boolean {
  return "syscall" in error;
}
