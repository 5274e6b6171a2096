import type { ArchiveRemark } from "./archive-remark.ts";

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

/** Files that programs leave in archives beside what people put there. */
const LITTER = /(^|\/)(__MACOSX\/|\.[^/]|Thumbs\.db$|desktop\.ini$)/i;

/** True for a file that nobody put into an archive on purpose. */
export function isLitter(path: string): boolean {
  return LITTER.test(path);
}
