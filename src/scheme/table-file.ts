import Papa from "papaparse";
import type { z } from "zod";
import { Mistake } from "../mistake.ts";

/**
 * Reads one of the scheme's own small CSV files by a contract (records are read elsewhere, by the database).
 *
 * @param text the file's text; a byte order mark is dropped
 * @param file the name shown in messages
 * @param row contract of one row: all cells arrive as trimmed text
 * @returns the rows in order, each with `row`, its row in the file (the header is row 1)
 * @throws {Mistake} on a missing column or a cell the contract refuses, with row and field
 * @example parseTable("taxonID\na\n", "checklist.csv", z.object({ taxonID: z.string() })) // => [{ taxonID: "a", row: 2 }]
 */
export function parseTable<Row extends z.ZodObject>(
  text: string,
  file: string,
  row: Row,
): (z.infer<Row> & { row: number })[] {
  const parsed = Papa.parse<Record<string, string>>(text.replace(/^\uFEFF/, ""), {
    header: true,
    skipEmptyLines: "greedy",
    transformHeader: (header) => header.trim(),
    transform: (cell) => cell.trim(),
  });
  const headers = parsed.meta.fields ?? [];
  for (const [name, field] of Object.entries(row.shape)) {
    if (!headers.includes(name) && !(field as z.ZodType).safeParse(undefined).success)
      throw new Mistake(`column ${name}`, "is missing", `add it; the header is ${headers.join(", ")}`, {
        file,
        row: 1,
      });
  }
  return parsed.data.map((cells, index) => {
    const known = Object.fromEntries(Object.keys(row.shape).map((name) => [name, cells[name]]));
    const result = row.safeParse(known);
    if (result.success) return { ...result.data, row: index + 2 };
    const issue = result.error.issues[0];
    const field = String(issue?.path[0] ?? "");
    throw new Mistake(`“${cells[field] ?? ""}”`, "is not allowed here", issue?.message ?? "correct it", {
      file,
      row: index + 2,
      field,
    });
  });
}
