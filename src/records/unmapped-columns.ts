import type { ColumnMapping } from "./column-mapping.ts";
import type { UnmappedColumn } from "./file-read.ts";

const MOST_VALUES = 60;
const LONGEST_VALUE = 200;

/**
 * The columns of a table that no field was found for, with some of their values.
 *
 * @param rows cells of some of the table's rows
 * @example unmappedColumns(["Art", "year"], mapColumns(["Art", "year"], {}), [["Bombus", "2020"]]) // => [{ header: "Art", values: ["Bombus"] }]
 */
export function unmappedColumns(
  headers: readonly string[],
  { unknown }: Pick<ColumnMapping, "unknown">,
  rows: readonly (readonly string[])[],
): UnmappedColumn[] {
  const left = new Set(unknown.filter((header) => header !== ""));
  return [...left].map((header) => {
    const column = headers.indexOf(header);
    const values = new Set(rows.map((cells) => (cells[column] ?? "").trim()).filter((value) => value !== ""));
    return { header, values: [...values].slice(0, MOST_VALUES).map((value) => value.slice(0, LONGEST_VALUE)) };
  });
}
