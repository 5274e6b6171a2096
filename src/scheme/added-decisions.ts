import Papa from "papaparse";
import { Mistake } from "../mistake.ts";
import { DECISION_COLUMNS, DECISIONS_FILE, type DecisionRow } from "./decisions-file.ts";
import { guarded } from "./guarded-cell.ts";

/**
 * The text that, put behind a file of decisions, adds rows to it: in the file's own columns, delimiter and line ends. A
 * file that is empty or not there gets the header first.
 *
 * @param before the file's text; a byte order mark may stand before it
 * @param rows decisions with every field
 * @throws {Mistake} where the file lacks a column that a row fills
 * @example addedText("", []) // => "decisionID,recordKey,ruling,…\n"
 */
export function addedText(before: string, rows: readonly DecisionRow[]): string {
  const text = before.replace(/^\uFEFF/, "");
  const isNew = text.trim() === "";
  const { header, delimiter } = isNew ? { header: DECISION_COLUMNS as string[], delimiter: "," } : layoutOf(text);
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  const missing = DECISION_COLUMNS.find((name) => !header.includes(name) && rows.some((row) => row[name] !== ""));
  if (missing !== undefined)
    throw new Mistake(`column ${missing}`, "is missing", "add it at the end of the header", {
      file: DECISIONS_FILE,
      row: 1,
    });
  const lines = rows.map((row) => header.map((name) => guarded(row[name as keyof DecisionRow] ?? "")));
  const added = Papa.unparse(isNew ? [header, ...lines] : lines, { delimiter, newline });
  return `${isNew || /[\r\n]$/.test(text) ? "" : newline}${added}${newline}`;
}

function layoutOf(text: string): { header: string[]; delimiter: string } {
  const { data, meta } = Papa.parse<string[]>(text, { preview: 1, delimitersToGuess: [",", "\t", ";"] });
  return { header: (data[0] ?? []).map((name) => name.trim()), delimiter: meta.delimiter };
}
