import { writeFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { privateFolder } from "../review/private-folder.ts";
import { type ContentFinding, findingInWords } from "../scheme/content-findings/index.ts";
import { guarded } from "../scheme/guarded-cell.ts";
import { counted } from "./counted.ts";
import type { Progress } from "./progress.ts";

const FILE = "content-findings.csv";
/** So many are told in the log; the file has them all. */
const MOST_TOLD = 8;

/**
 * Tells what in a scheme's own tables, texts and pictures does not agree, and writes it for the officer. It holds up
 * nothing.
 *
 * @param folder private, of the scheme; made if need be, and left alone where nothing was found and none is there
 * @returns the findings in words
 */
export function tellContentFindings(findings: readonly ContentFinding[], folder: string, progress: Progress): string[] {
  const lines = findings.map(findingInWords);
  if (lines.length > 0)
    progress.note(`          ${counted(lines.length, "finding")} in tables, texts and pictures, in review/${FILE}`);
  for (const line of lines.slice(0, MOST_TOLD)) progress.note(`          ${line}`);
  const rows = findings.map(({ check, file, row, field, value, found, wayOut }) =>
    [check, file, row === null ? "" : String(row), field, value, found, wayOut].map(guarded),
  );
  const fields = ["check", "file", "row", "field", "value", "found", "way_out"];
  writeFileSync(join(privateFolder(folder), FILE), `${Papa.unparse({ fields, data: rows }, { newline: "\n" })}\n`);
  return lines;
}
