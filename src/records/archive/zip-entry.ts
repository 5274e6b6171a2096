import { type Entry, getFileNameLowLevel } from "yauzl";

/** Text is packed to a twentieth, a hundredth at best; only what is made to fill a disk goes beyond this. */
const HIGHEST_RATIO = 200;
/** Ratio says nothing of small files: a thousand equal rows pack well. */
const SMALL = 100 * 2 ** 20;
const LARGEST = 64 * 2 ** 30;

const FILE_TYPE = 0o170000;
const LINK = 0o120000;

/** The path of a zip's entry with forward slashes; a name not in UTF-8 is read as the zip format says. */
export function entryPath(entry: Entry): string {
  return getFileNameLowLevel(entry.generalPurposeBitFlag, entry.fileNameRaw, entry.extraFields, false);
}

/**
 * Why an entry of a zip may not be taken out: a path that leaves the archive, a link, encryption, a way of packing we
 * do not know, or a size no table of records has.
 *
 * @returns undefined for an entry that may
 */
export function entryRefusal(path: string, entry: Entry): string | undefined {
  if (/^\//.test(path) || /^[A-Za-z]:/.test(path)) return "has an absolute path";
  if (path.split("/").includes("..")) return "has a path out of the archive";
  if (path.includes("\0")) return "has a path no file can have";
  // Made on a system with such attributes or not: no honest entry has them by chance.
  if (((entry.externalFileAttributes >>> 16) & FILE_TYPE) === LINK) return "is a link";
  if (entry.isEncrypted()) return "is encrypted";
  if (!entry.canDecodeFileData()) return `is packed in a way (${entry.compressionMethod}) that is not known here`;
  if (entry.uncompressedSize > LARGEST) return "is larger than any table can be";
  if (entry.uncompressedSize > SMALL && entry.uncompressedSize > HIGHEST_RATIO * entry.compressedSize)
    return `would grow to ${Math.round(entry.uncompressedSize / Math.max(1, entry.compressedSize))} times its size`;
  return undefined;
}
