import type { SourceSetting } from "../scheme/settings.ts";
import { mapColumns } from "./column-mapping.ts";
import { rowSplitter, type TextRow } from "./row-splitter.ts";

/** Where the header of a table stands. */
export interface FoundHeader {
  /** Its row; 0 where the table has none. */
  row: number;
  /** Trimmed headers; "#1", "#2" … where the table has none; none where the table is empty. */
  headers: string[];
  /** Rows before it that are not blank. */
  before: TextRow[];
  /** Some of the rows under it. */
  below: TextRow[];
}

/** As many rows are looked at for the header, and as many below a row to see how wide the table is. */
const ROWS_LOOKED_AT = 60;
const ROWS_BELOW = 20;

const DELIMITERS = [",", "\t", ";", "|"] as const;

/** What a source's settings say of the header. */
export type HeaderSettings = Pick<SourceSetting, "columns" | "header_row">;

/**
 * The delimiter of a text and its header, from its beginning. Of the four usual delimiters the one counts whose header
 * holds most known fields, then most cells; a first line `sep=;` decides.
 *
 * @param given the delimiter of the source's settings, if any
 * @example findHeader("Walks 2021\n\neventDate;scientificName\n2021;Bombus\n", { columns: {} }) // => { delimiter: ";", row: 3, headers: ["eventDate", "scientificName"], before: [{ row: 1, … }], below: [{ row: 4, … }] }
 */
export function findHeader(
  beginning: string,
  settings: HeaderSettings,
  given?: string,
): FoundHeader & { delimiter: string } {
  const stated = given ?? /^sep=([^\r\n])\r?[\r\n]/i.exec(beginning)?.[1];
  const candidates = (stated === undefined ? DELIMITERS : [stated]).map((delimiter) => {
    const rows = (width: number) => rowsOf(beginning, { delimiter, width, header_row: settings.header_row });
    const first = headerAmong(rows(0), settings);
    // A second look, now that the table's width tells a cell of several lines from several rows.
    const found = headerAmong(rows(first.headers.length), settings);
    return { delimiter, ...found, score: scoreOf(found, settings) };
  });
  const { score: _, ...best } = candidates.reduce((one, other) => (other.score > one.score ? other : one));
  return best;
}

function rowsOf(
  beginning: string,
  { delimiter, width, header_row = 0 }: { delimiter: string; width: number; header_row: number | undefined },
): TextRow[] {
  const splitter = rowSplitter(delimiter, width);
  return [...splitter.push(beginning), ...splitter.end()].slice(0, Math.max(ROWS_LOOKED_AT, header_row) + ROWS_BELOW);
}

/** Known fields count most, then cells that are words (a decimal comma parts numbers), with rows below that have as many. */
function scoreOf({ row, headers, before, below }: FoundHeader, { columns }: HeaderSettings): number {
  const nearby = below.slice(0, ROWS_BELOW);
  const alike = nearby.filter(({ cells }) => cells.length === headers.length).length / Math.max(1, nearby.length);
  const words = headers.filter((header) => row === 0 || /^\P{N}*\p{L}/u.test(header)).length;
  return knownIn(headers, columns) * 1000 + (words > 1 ? words * (1 + alike) : 0) - before.length / 2;
}

/**
 * The header among a table's first rows that are not blank. It is the row the settings name; else the first with at
 * least two known fields; else the first with one, or with at least half as many filled cells as the rows below have,
 * that is no comment (`#`). Else it is the first row.
 *
 * @example headerAmong([{ row: 1, cells: ["Walks"], broken: false }, { row: 2, cells: ["Art", "Jahr"], broken: false }], { columns: {} }).row // => 2
 */
export function headerAmong(rows: readonly TextRow[], { columns, header_row }: HeaderSettings): FoundHeader {
  if (header_row === 0) {
    const width = Math.max(0, ...rows.map(({ cells }) => cells.length));
    return {
      row: 0,
      headers: Array.from({ length: width }, (_, column) => `#${column + 1}`),
      before: [],
      below: [...rows],
    };
  }
  const index =
    header_row === undefined ? likeliestHeader(rows, columns) : rows.findIndex(({ row }) => row === header_row);
  const header = rows[index];
  if (header === undefined) return { row: header_row ?? 1, headers: [], before: [], below: [] };
  return {
    row: header.row,
    headers: header.cells.map((cell) => cell.trim()),
    before: rows.slice(0, index),
    below: rows.slice(index + 1),
  };
}

function likeliestHeader(rows: readonly TextRow[], columns: SourceSetting["columns"]): number {
  const looks = rows.slice(0, ROWS_LOOKED_AT).map(({ cells }, index) => {
    const filled = filledCells(cells);
    const below = rows.slice(index + 1, index + 1 + ROWS_BELOW).map((row) => filledCells(row.cells));
    const width = Math.max(0, ...below);
    return {
      known: knownIn(cells, columns),
      filled,
      fits: filled >= Math.max(Math.min(2, width), width / 2),
      comment: cells[0]?.trimStart().startsWith("#") === true,
    };
  });
  const sure = looks.findIndex(({ known, filled, fits }) => known >= 2 && (fits || known * 2 >= filled));
  if (sure >= 0) return sure;
  const likely = looks.findIndex(({ known, filled, fits, comment }) => !comment && (fits || (known > 0 && filled > 1)));
  return Math.max(0, likely);
}

function filledCells(cells: readonly string[]): number {
  return cells.filter((cell) => cell.trim() !== "").length;
}

/** How many fields a row's cells name; a column named by its number is in every row, and tells nothing. */
function knownIn(cells: readonly string[], own: SourceSetting["columns"]): number {
  const named = Object.fromEntries(Object.entries(own).filter(([, header]) => !/^\s*#\d+\s*$/.test(header)));
  return mapColumns(cells, named).columns.size;
}

/**
 * Where the header is, for the log.
 *
 * @example headerInWords(3) // => "header in row 3"
 */
export function headerInWords(row: number): string {
  return row === 0 ? "no header" : `header in row ${row}`;
}

/**
 * The delimiter a text shows at its beginning; a comma where it shows none.
 *
 * @example delimiterOf('"Site; place"\tDate\n') // => "\t"
 */
export function delimiterOf(beginning: string): string {
  return findHeader(beginning, { columns: {} }).delimiter;
}
