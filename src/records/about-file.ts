import type { SourceSetting } from "../scheme/settings.ts";
import type { ColumnMapping } from "./column-mapping.ts";
import type { FileFinding } from "./finding.ts";
import type { FoundHeader } from "./header-row.ts";
import { missingColumns } from "./missing-columns.ts";
import type { Encoding, TextFacts } from "./text-file.ts";

/**
 * What there is to say of a text file as a whole: its encoding and its line endings.
 *
 * @param encoding the one it was read with
 * @returns findings of row 1
 */
export function aboutText(
  file: string,
  { facts, encoding }: { facts: Pick<TextFacts, "encoding" | "validUtf8" | "lineEnding">; encoding: Encoding },
): FileFinding[] {
  const findings: FileFinding[] = [];
  const add = adder(findings, file, 1);
  if (encoding === "windows-1252" && facts.encoding === "windows-1252")
    add(
      "file_encoding",
      "note",
      encoding,
      "the file is not UTF-8 and was read as Windows-1252",
      "set encoding for the source if accents look wrong",
    );
  if (encoding === "utf-8" && !facts.validUtf8)
    add(
      "file_encoding",
      "ask",
      facts.encoding,
      "the file holds bytes that are not UTF-8; they became �",
      "save it again as UTF-8, or set encoding for the source",
    );
  if (facts.lineEnding === "mixed")
    add("line_endings", "note", "mixed", "the file mixes line endings; all were read", "nothing to do");
  return findings;
}

/**
 * What there is to say of a table's header: rows before it, and headers that are not used, stand twice or are missing.
 * A header without a name is passed over where no named one follows it, for that is a delimiter at the end of the row.
 *
 * @returns findings of the header's row
 */
export function aboutHeader(
  file: string,
  { row, headers, before }: Pick<FoundHeader, "row" | "headers" | "before">,
  mapping: ColumnMapping,
): FileFinding[] {
  const findings: FileFinding[] = [];
  const add = adder(findings, file, Math.max(1, row));
  if (before.length > 0)
    add(
      "rows_before_header",
      "note",
      before[0]?.cells.join(" ").trim().slice(0, 200) ?? "",
      `the header was found in row ${row}; what stands before it is no record`,
      "set header_row for the source if that is not the header",
    );
  const lastNamed = headers.findLastIndex((header) => header !== "");
  const nameless = headers.slice(0, lastNamed).filter((header) => header === "").length;
  if (nameless > 0)
    add(
      "unknown_header",
      "note",
      "",
      `${nameless === 1 ? "a column has" : `${nameless} columns have`} no header and is not used`,
      "give it one if it holds a field",
    );
  for (const header of mapping.unknown.filter((name) => name !== ""))
    add(
      "unknown_header",
      "note",
      header,
      `column “${header}” is not used`,
      "map it in the source's columns if it holds a field",
    );
  if (mapping.unused.length > 0)
    add(
      "unused_terms",
      "note",
      mapping.unused.join(", "),
      "columns of Darwin Core that an atlas makes no use of",
      "nothing to do",
    );
  for (const header of mapping.repeated)
    add(
      "repeated_header",
      "ask",
      header,
      `column “${header}” fills a field another column fills already; the first counts`,
      "take one out or map the right one",
    );
  for (const header of mapping.missing)
    add(
      "mapped_header_missing",
      "ask",
      header,
      `the settings map column “${header}”, which the file does not have`,
      "correct columns in the source's settings",
    );
  return findings;
}

function adder(findings: FileFinding[], file: string, row: number) {
  return (check: string, severity: FileFinding["severity"], value: string, message: string, wayOut: string) =>
    findings.push({ file, row, field: "", value, check, severity, message, wayOut });
}

/**
 * What there is to say of a table's records as a whole: that there are none, or that none can be used.
 *
 * @param records how many there are
 */
export function aboutRecords(
  file: string,
  {
    records,
    header,
    mapping,
    constants,
  }: {
    records: number;
    header: Pick<FoundHeader, "row" | "headers">;
    mapping: ColumnMapping;
    constants: SourceSetting["constants"];
  },
): FileFinding[] {
  const row = Math.max(1, header.row);
  if (records === 0) return [noRows(file)];
  if (mapping.columns.size > 0) return missingColumns(file, mapping, constants, row);
  return [
    fileFinding(file, {
      row,
      value: header.headers.join(", ").slice(0, 200),
      check: "no_known_column",
      severity: "blocks",
      message: "no column is known, so no row can be used",
      wayOut: "map the columns in the source's settings",
    }),
  ];
}

/** A file or table without a record. */
export function noRows(file: string): FileFinding {
  const message = "the file holds no rows";
  return fileFinding(file, { check: "no_rows", severity: "note", message, wayOut: "nothing to do if that is so" });
}

/** A finding about a file as a whole: of its first row, where no other is given. */
export function fileFinding(
  file: string,
  finding: Omit<FileFinding, "file" | "row" | "field" | "value"> & { row?: number; value?: string },
): FileFinding {
  return { file, row: 1, field: "", value: "", ...finding };
}
