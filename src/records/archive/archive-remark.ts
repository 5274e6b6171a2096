import type { FileFinding, Severity } from "../finding.ts";

/** What is said of an archive, or of a table in it, as a whole. */
export interface ArchiveRemark {
  check: string;
  severity: Severity;
  /** What it is about: a path in the archive, a term, or an id. */
  value: string;
  message: string;
  wayOut: string;
}

const LONGEST_VALUE = 200;

/** A remark as a finding of a file's first row, or of the row given. */
export function remarkFinding(file: string, { value, ...remark }: ArchiveRemark, row = 1): FileFinding {
  return { file, row, field: "", value: value.slice(0, LONGEST_VALUE), ...remark };
}

/** Part of an archive that is never taken out of it, and why. */
export function refusedEntry(value: string, message: string, wayOut = "pack the archive anew"): ArchiveRemark {
  return { check: "archive_entry_refused", severity: "ask", value, message: `${message}; it was left alone`, wayOut };
}

/** An archive of which nothing can be used, and why. */
export function refusedArchive(message: string, wayOut: string): ArchiveRemark {
  return { check: "archive_unreadable", severity: "blocks", value: "", message, wayOut };
}
