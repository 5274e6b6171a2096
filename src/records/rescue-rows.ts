import Papa from "papaparse";
import type { RecordField } from "../scheme/settings.ts";
import type { FileFinding } from "./finding.ts";

export interface Rescue {
  gaps: { after: number; rows: number }[];
  rescued: { row: number; cells: Partial<Record<RecordField, string>> }[];
  unreadable: number;
  findings: FileFinding[];
}

/**
 * Tries the rows the database refused again, one physical line at a time where a quotation mark is never closed.
 * A row that is too short is filled up with empty cells; one that is too long is used only if what is over is empty.
 *
 * @param refused number of each refused row as the database counts (a row whose quotation mark is never closed counts once), with its text, in file order
 * @returns the rows that could be used, and a finding for every one of them
 */
export function rescueRows(
  refused: readonly { line: number; text: string }[],
  { headers, delimiter, columns, file }: { headers: number; delimiter: string; columns: ReadonlyMap<RecordField, number>; file: string },
): Rescue {
  const rescue: Rescue = { gaps: [], rescued: [], unreadable: 0, findings: [] };
  let further = 0;
  refused.forEach(({ line, text }, index) => {
    const rows = rowsOf(text.replace(/^[\r\n]+/, ""), delimiter);
    rescue.gaps.push({ after: line - 2 - index, rows: rows.length });
    rows.forEach((cells, within) => {
      const row = line + further + within;
      const finding = judge(cells, headers);
      const readable = finding.check === "ragged_row_filled" || finding.check === "ragged_row_trimmed" || finding.check === "stray_quotation_mark";
      rescue.findings.push({ file, row, field: "", value: cells.join(delimiter).slice(0, 200), ...finding });
      if (!readable) rescue.unreadable += 1;
      else
        rescue.rescued.push({
          row,
          cells: Object.fromEntries([...columns].map(([field, column]) => [field, (cells[column] ?? "").trim()])),
        });
    });
    further += rows.length - 1;
  });
  return rescue;
}

function rowsOf(text: string, delimiter: string): string[][] {
  const whole = Papa.parse<string[]>(text, { delimiter });
  if (whole.errors.length === 0 && whole.data.length === 1) return whole.data;
  return text
    .split(/\r?\n/)
    .filter((line) => line !== "")
    .map((line) => line.split(delimiter).map((cell) => cell.replaceAll(/^"|"$/g, "")));
}

function judge(cells: readonly string[], headers: number): Pick<FileFinding, "check" | "severity" | "message" | "wayOut"> {
  if (cells.length < headers)
    return { check: "ragged_row_filled", severity: "ask", message: `the row has ${cells.length} of ${headers} cells; the last were taken as empty`, wayOut: "correct the row in the file" };
  if (cells.slice(headers).every((cell) => cell.trim() === ""))
    return cells.length > headers
      ? { check: "ragged_row_trimmed", severity: "note", message: `the row has ${cells.length - headers} empty cells too many`, wayOut: "nothing to do" }
      : { check: "stray_quotation_mark", severity: "note", message: "a quotation mark stands where none can; it was taken as text", wayOut: "double it or take it out" };
  return { check: "unreadable_row", severity: "ask", message: `the row has ${cells.length} cells where the header has ${headers}`, wayOut: "put cells that hold the delimiter between quotation marks" };
}
