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
import { dirname } from "node:path";

/**
 * Replaces a file in one step: the new text is written beside it, brought to the disk and renamed, so that at any moment
 * the file is the old one or the new one, whole. A link is followed, and the file's mode is kept.
 *
 * @param file path; its folder must be there
 * @example replaceFile("content/decisions.csv", "decisionID,recordKey\n")
 */
export function replaceFile(file: string, text: string): void {
  const target = existsSync(file) ? realpathSync(file) : file;
  const beside = `${target}.${process.pid}.new`;
  const mode = existsSync(target) ? statSync(target).mode : 0o644;
  try {
    const handle = openSync(beside, "w", mode);
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
