import { writeFileSync } from "node:fs";
import type { Row, Source } from "./source.ts";

/** The characters beyond Latin-1 that the invented files use, in Windows-1252. */
const WINDOWS_1252: Readonly<Record<string, number>> = { "–": 0x96, "’": 0x92, "“": 0x93, "”": 0x94 };

/**
 * Writes the rows of a source in its form.
 *
 * @throws Error for a character that the source's encoding lacks
 * @example writeSource("records/walks.csv", walks, rows)
 */
export function writeSource(path: string, { columns, form }: Source, rows: readonly Row[]): void {
  const { delimiter, encoding, newline } = form;
  const line = (cells: readonly string[]): string => cells.map((cell) => quoted(cell, delimiter)).join(delimiter);
  const lines = rows.map(
    ({ cells, surplus }) => line(columns.map((column) => cells[column] ?? "")) + (surplus ? delimiter + surplus : ""),
  );
  const text = [line(columns), ...lines, ""].join(newline);
  writeFileSync(path, encoding === "utf-8" ? text : windows1252(text));
}

/**
 * Writes lines below a header, UTF-8.
 *
 * @param lines cells already quoted where they need it
 * @example writeLines("truth.csv", "taxon_id,epoch", ["invented-hypnorum,2006–2024"])
 */
export function writeLines(path: string, header: string, lines: readonly string[]): void {
  writeFileSync(path, [header, ...lines, ""].join("\n"));
}

/** A cell in quotation marks where it holds the delimiter, a quotation mark or a line end. @example quoted("a,b", ",") // '"a,b"' */
export function quoted(cell: string, delimiter: string): string {
  return cell.includes(delimiter) || /["\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

function windows1252(text: string): Buffer {
  const bytes = Buffer.alloc(text.length);
  for (let i = 0; i < text.length; i++) {
    const code = WINDOWS_1252[text.charAt(i)] ?? text.charCodeAt(i);
    if (code > 255) {
      throw new Error(`no Windows-1252 byte for ${text.charAt(i)}`);
    }
    bytes[i] = code;
  }
  return bytes;
}
