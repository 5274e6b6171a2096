import { resolve } from "node:path";
import { Mistake } from "../mistake.ts";

/** Codes of the operating system and words of the database for a disk, a quota or a file at its limit. */
const FULL =
  /^(?:ENOSPC|EDQUOT|EFBIG)$|No space left on device|Disk quota exceeded|File too large|max_temp_directory_size/;
const LOCKED = /^(?:EROFS|EACCES|EPERM)$|Read-only file system|Permission denied/;

/**
 * What a failure to write or read says about the machine rather than about the program: a full disk, or a folder that
 * may not be written. Neither is our bug, and the last atlas stands as it was.
 *
 * @param error anything thrown; causes are looked at too
 * @returns the mistake with its way out, or undefined for every other error
 * @example diskFault(Object.assign(new Error("ENOSPC: no space left on device, write"), { code: "ENOSPC" }))?.found // => "is full: …"
 */
export function diskFault(error: unknown): Mistake | undefined {
  for (let one = error; one instanceof Error; one = one.cause) {
    const code = "code" in one ? String(one.code) : "";
    const path = pathOf(one);
    if (FULL.test(code) || FULL.test(one.message)) {
      const where = path === undefined ? `.build in ${resolve(".")}` : path;
      return new Mistake(
        "the disk",
        `is full: ${where} could not be written, and the last atlas is as it was`,
        "free some space there, or run this in a folder on a larger disk: what is worked on is kept in its .build",
      );
    }
    if (LOCKED.test(code) || LOCKED.test(one.message))
      return new Mistake(
        path ?? "a file or folder",
        "may not be read or written",
        "change its permissions, or run this in a folder you may write in: what is worked on is kept in its .build",
      );
  }
  return undefined;
}

/** The path an error names, in a property or, as the database does, between quotation marks. */
function pathOf(error: Error): string | undefined {
  for (const name of ["dest", "path"])
    if (name in error) {
      const path = (error as unknown as Record<string, unknown>)[name];
      if (typeof path === "string") return path;
    }
  return /["'](\/[^"']+|[A-Za-z]:\\[^"']+)["']/.exec(error.message)?.[1];
}
