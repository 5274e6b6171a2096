import Papa from "papaparse";
import type { z } from "zod";
import { Mistake } from "../mistake.ts";

/**
 * Reads one of the scheme's own small CSV files by a contract (records are read elsewhere, by the database).
 * Columns the contract does not know are notes of the scheme's own, unless they look like one it does know.
 *
 * @param text the file's text; a byte order mark is dropped
 * @param file the name shown in messages
 * @param row contract of one row: all cells arrive as trimmed text
 * @returns the rows in order, each with `row`, its row in the file (the header is row 1, blank rows count)
 * @throws {Mistake} on a missing or misspelt column, a row with too many cells, a quotation mark that is not closed,
 *   or a cell the contract refuses, with row and field
 * @example parseTable("taxonID\na\n", "checklist.csv", z.object({ taxonID: z.string() })) // => [{ taxonID: "a", row: 2 }]
 */
export function parseTable<Row extends z.ZodObject>(
  text: string,
  file: string,
  row: Row,
): (z.infer<Row> & { row: number })[] {
  const parsed = Papa.parse<string[]>(text.replace(/^\uFEFF/, ""), { delimitersToGuess: [",", "\t", ";"] });
  const [header = [], ...rows] = parsed.data.map((cells) => cells.map((cell) => cell.trim()));
  checkHeader(header, file, row);
  const unclosed = parsed.errors.find(({ type }) => type === "Quotes");
  if (unclosed !== undefined)
    throw new Mistake(
      "a quotation mark",
      "is not closed, or something follows it",
      "close it, and double those that are text",
      {
        file,
        row: (unclosed.row ?? 0) + 1,
      },
    );
  return rows.flatMap((cells, index) =>
    cells.every((cell) => cell === "") ? [] : [readRow(cells, { header, file, number: index + 2, row })],
  );
}

function readRow<Row extends z.ZodObject>(
  cells: readonly string[],
  { header, file, number, row }: { header: readonly string[]; file: string; number: number; row: Row },
): z.infer<Row> & { row: number } {
  const over = cells.slice(header.length).filter((cell) => cell !== "");
  if (over.length > 0)
    throw new Mistake(
      "the row",
      `has ${cells.length} cells, where the header has ${header.length}`,
      "put cells that hold a comma between quotation marks",
      {
        file,
        row: number,
      },
    );
  const known = Object.fromEntries(Object.keys(row.shape).map((name) => [name, cells[header.indexOf(name)]]));
  const result = row.safeParse(known);
  if (result.success) return { ...result.data, row: number };
  const issue = result.error.issues[0];
  const field = String(issue?.path[0] ?? "");
  const value = known[field] ?? "";
  throw new Mistake(field, value === "" ? "is empty" : `is “${value}”`, issue?.message ?? "correct it", {
    file,
    row: number,
    field,
  });
}

function checkHeader(header: readonly string[], file: string, row: z.ZodObject): void {
  const names = Object.keys(row.shape);
  const plain = (name: string) =>
    name
      .toLowerCase()
      .replaceAll(/[\s_-]/g, "")
      .replace(/s$/, "");
  for (const found of header) {
    const meant = names.find((name) => plain(name) === plain(found));
    if (meant !== undefined && meant !== found && !header.includes(meant))
      throw new Mistake(`column “${found}”`, "is not known", `write ${meant}`, { file, row: 1, field: found });
  }
  for (const [name, field] of Object.entries(row.shape))
    if (!header.includes(name) && !(field as z.ZodType).safeParse(undefined).success)
      throw new Mistake(`column ${name}`, "is missing", `add it; the header is ${header.join(", ")}`, { file, row: 1 });
  const twice = names.find((name) => header.indexOf(name) !== header.lastIndexOf(name));
  if (twice !== undefined)
    throw new Mistake(`column ${twice}`, "is there twice", "take one of the two out", { file, row: 1, field: twice });
}
