import { statSync } from "node:fs";
import type { ArchiveFiles } from "./archive-files.ts";
import type { ArchiveRemark } from "./archive-remark.ts";
import { folderFiles } from "./folder-files.ts";
import { zipFiles } from "./zip-files.ts";

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
