/** How much a finding matters: `blocks` holds the record back until somebody decides, `ask` and `note` do not. */
export type Severity = "blocks" | "ask" | "note";

/** A question about a file or one cell of it. A finding is a row of a table, never a line in a log. */
export interface FileFinding {
  file: string;
  /** Row in the file as a spreadsheet shows it: the header is row 1. */
  row: number;
  field: string;
  value: string;
  /** Name of the check, in snake case. */
  check: string;
  severity: Severity;
  message: string;
  wayOut: string;
}
