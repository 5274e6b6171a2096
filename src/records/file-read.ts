import type { RecordField } from "../scheme/settings.ts";
import type { FileFinding } from "./finding.ts";

/** What reading one table of records gave. Row numbers count rows as a spreadsheet shows them: the first is row 1. */
export interface FileRead {
  fields: RecordField[];
  /** Records the table holds: `read`, `rescued` and `unreadable` together. */
  records: number;
  /** Rows read as they stand. */
  read: number;
  /** Numbers of the rows that were used after mending. */
  rescued: number[];
  unreadable: number;
  /** Number of the last row, blank ones counted. */
  lastRow: number;
  /**
   * How the rows of the Parquet file are numbered: by its column `file_row`; or, from row 2 on, with the rows left out
   * that are listed, those of them that were rescued standing in a file of their own (`mendedFile`).
   */
  numbering: "column" | number[];
  findings: FileFinding[];
  /** How it was read, for the log: "UTF-8, comma, LF, header in row 3". */
  how: string;
  /** The columns no field is known for, with some of what stands in them, so that a mapping can be proposed. */
  unmapped: UnmappedColumn[];
}

/** A column that fills no field. */
export interface UnmappedColumn {
  header: string;
  /** Some of its values that are not empty, each once, as they stand. */
  values: string[];
}

/** What is said of a file that gives no records, beside its findings. */
export function nothingRead(how: string, findings: FileFinding[]): FileRead {
  return {
    fields: [],
    records: 0,
    read: 0,
    rescued: [],
    unreadable: 0,
    lastRow: 0,
    numbering: "column",
    findings,
    how,
    unmapped: [],
  };
}
