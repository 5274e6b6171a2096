import { statSync } from "node:fs";
import type { ArchiveRemark } from "./archive-remark.ts";
import { folderFiles } from "./folder-files.ts";
import { zipFiles } from "./zip-files.ts";

/** The files of an archive that may be read, by their path in it. */
export interface ArchiveFiles {
  /** Paths with forward slashes, sorted. */
  paths: string[];
  /** What is refused of the archive, or of single files. */
  remarks: ArchiveRemark[];
  /**
   * Makes a file readable on disk and gives its path there.
   *
   * @returns a remark where it cannot be taken out whole
   */
  take(path: string): Promise<string | ArchiveRemark>;
  close(): void;
}

/**
 * Opens a zipped archive or one in a folder. What could reach outside it, or would fill the disk, is refused with a
 * remark and never written.
 *
 * @param folder where files of a zip are taken out to, under names of our own
 * @returns a remark where nothing of it can be read
 * @example (await openArchive("records/walks.zip", "/tmp/own")).paths // => ["meta.xml", "occurrence.txt"]
 */
export async function openArchive(path: string, folder: string): Promise<ArchiveFiles | ArchiveRemark> {
  return statSync(path).isDirectory() ? folderFiles(path) : await zipFiles(path, folder);
}

/** Files that programs leave in archives beside what people put there. */
const LITTER = /(^|\/)(__MACOSX\/|\.[^/]|Thumbs\.db$|desktop\.ini$)/i;

/** True for a file that nobody put into an archive on purpose. */
export function isLitter(path: string): boolean {
  return LITTER.test(path);
}
