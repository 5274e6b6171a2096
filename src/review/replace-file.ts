import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname } from "node:path";
import { Mistake } from "../mistake.ts";

/** Bits of a mode that let somebody write (POSIX, sys/stat.h). */
const WRITABLE = 0o222;

/**
 * Replaces a file in one step: the new text is written beside it, brought to the disk and renamed, so that at any moment
 * the file is the old one or the new one, whole. A link is followed, and the file's mode is kept. One process at a time:
 * the caller holds the file.
 *
 * @param file path; its folder must be there
 * @throws {Mistake} where nobody may write the file
 * @example replaceFile("content/decisions.csv", "decisionID,recordKey\n")
 */
export function replaceFile(file: string, text: string): void {
  const target = existsSync(file) ? realpathSync(file) : file;
  const beside = `${target}.new`;
  const mode = existsSync(target) ? statSync(target).mode : 0o644;
  if ((mode & WRITABLE) === 0) throw new Mistake(basename(file), "is read-only", "let it be written, then try again");
  try {
    // What a process that was stopped left is of no use; and made anew it is no link to somewhere else.
    rmSync(beside, { force: true });
    const handle = openSync(beside, "wx", mode);
    try {
      writeFileSync(handle, text);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(beside, target);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
  bringToDisk(dirname(target));
}

/** A rename lasts once its folder is on the disk; systems that cannot open a folder do without. */
function bringToDisk(folder: string): void {
  let handle: number | undefined;
  try {
    handle = openSync(folder, "r");
    fsyncSync(handle);
  } catch {
    // Windows opens no folder; there a rename is on the disk when it returns.
  } finally {
    if (handle !== undefined) closeSync(handle);
  }
}
