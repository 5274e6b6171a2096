import type { SourceSetting } from "../../scheme/settings.ts";
import { readTextFacts } from "../text-file.ts";
import type { ArchiveRemark } from "./archive-remark.ts";
import type { TableDescription } from "./description.ts";
import { tableRows } from "./table-rows.ts";
import { type TableShape, tableShape } from "./table-shape.ts";
import { termName } from "./terms.ts";

const ROWS_LOOKED_AT = 1000;

/** What the beginning of a table's file says of it. */
export interface TableLook {
  shape: TableShape;
  /** The last line before the first row; empty where there is none. */
  header: string[];
  /** Cells a row has. */
  width: number;
  /** Some of the rows. */
  rows: string[][];
  remarks: ArchiveRemark[];
}

/** Looks at the beginning of a table's file: how it is written, its header, and in what it is not as described. */
export async function lookAtTable(path: string, table: TableDescription, source: SourceSetting): Promise<TableLook> {
  const found = tableShape(path, table, { facts: await readTextFacts(path), source });
  const remarks = found.faults.map((message) => remark("archive_table_shape", "", message));
  let shape = found.shape;
  let { header, rows } = await beginning(path, shape);
  const [first] = rows;
  if (header.length === 0 && shape.headers === 0 && first !== undefined && isHeader(first, table)) {
    shape = { ...shape, headers: 1 };
    header = first;
    rows = rows.slice(1);
    remarks.push(remark("archive_table_shape", "", "the first line holds names of terms, and was left out"));
  }
  const width = usualWidth([...(header.length > 0 ? [header] : []), ...rows]);
  if (width > 0) remarks.push(...columnsBeyond(table, width));
  remarks.push(...misnamed(header, table));
  return { shape, header, width, rows, remarks };
}

function remark(check: string, value: string, message: string): ArchiveRemark {
  return { check, severity: "ask", value, message, wayOut: "correct meta.xml in the archive if records look wrong" };
}

/** Rows of the first piece of a file that has some, the header apart. */
async function beginning(path: string, shape: TableShape): Promise<{ header: string[]; rows: string[][] }> {
  for await (const piece of tableRows(path, { shape, width: 0 })) {
    const rows = piece.filter(({ row }) => row > shape.headers).slice(0, ROWS_LOOKED_AT);
    const header = piece.find(({ row }) => row === shape.headers);
    if (piece.length > 0) return { header: header?.cells ?? [], rows: rows.map(({ cells }) => cells) };
  }
  return { header: [], rows: [] };
}

/** The number of cells most rows have, the greater of two as common. */
function usualWidth(rows: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  for (const { length } of rows) counts.set(length, (counts.get(length) ?? 0) + 1);
  const [usual] = [...counts].sort(([a, many], [b, more]) => more - many || b - a);
  return usual?.[0] ?? 0;
}

function isHeader(cells: readonly string[], { fields }: TableDescription): boolean {
  const bound = fields.filter(({ index }) => index !== undefined);
  const named = bound.filter(({ term, index }) => plain(cells[index ?? 0] ?? "") === plain(termName(term)));
  return named.length >= 2 || (named.length === 1 && bound.length === 1);
}

function columnsBeyond({ fields }: TableDescription, width: number): ArchiveRemark[] {
  return fields
    .filter(({ index }) => index !== undefined && index >= width)
    .map(({ term, index }) =>
      remark(
        "archive_column_missing",
        term,
        `${termName(term)} is described as column ${(index ?? 0) + 1}, and rows have ${width}; it was taken as empty`,
      ),
    );
}

/** Columns whose header is the name of a term that the description sees in another column: the numbers may be shifted. */
function misnamed(header: readonly string[], { fields }: TableDescription): ArchiveRemark[] {
  const names = new Set(fields.map(({ term }) => plain(termName(term))));
  const wrong = fields.filter(({ term, index }) => {
    const cell = plain(header[index ?? -1] ?? "");
    const here = fields.filter((other) => other.index === index).map((other) => plain(termName(other.term)));
    return cell !== plain(termName(term)) && names.has(cell) && !here.includes(cell);
  });
  const [first] = wrong;
  if (first === undefined) return [];
  const others = wrong.length === 1 ? "" : `, and ${wrong.length - 1} more`;
  const said = `column ${(first.index ?? 0) + 1} is described as ${termName(first.term)} and headed “${header[first.index ?? 0]}”${others}; the description counts`;
  return [remark("archive_header_disagrees", first.term, said)];
}

function plain(name: string): string {
  return termName(name)
    .replaceAll(/["'\s]/g, "")
    .toLowerCase();
}
