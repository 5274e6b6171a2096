import type { SourceSetting } from "../../scheme/settings.ts";
import { delimiterOf } from "../header-row.ts";
import { type Encoding, readBeginning, statedEncoding, type TextFacts } from "../text-file.ts";
import type { TableDescription } from "./description.ts";

/** How one file of a table is written. */
export interface TableShape {
  encoding: Encoding;
  delimiter: string;
  /** Mark that encloses cells; empty where there is none. */
  quote: string;
  /** Lines before the first row. */
  headers: number;
  /** True where only LF and CRLF end a row, so that a CR alone is text. */
  carriageIsText: boolean;
}

/** A shape, and in what the file is not as described. */
export interface TableShapeFound {
  shape: TableShape;
  faults: string[];
}

/**
 * How a file is written: as the source's settings say, else as the archive says, unless the bytes say otherwise.
 *
 * @param facts what its bytes say
 */
export function tableShape(
  path: string,
  table: TableDescription,
  { facts, source }: { facts: TextFacts; source: SourceSetting },
): TableShapeFound {
  const faults: string[] = [];
  const encoding =
    source.encoding === undefined ? encodingOf(path, table.encoding, facts, faults) : statedEncoding(source.encoding);
  const quote = oneCharacter(table.fieldsEnclosedBy) ? table.fieldsEnclosedBy : "";
  if (quote !== table.fieldsEnclosedBy)
    faults.push(`fieldsEnclosedBy is “${table.fieldsEnclosedBy}”, which is no single mark; none was taken`);
  let delimiter = source.delimiter ?? table.fieldsTerminatedBy;
  if (!oneCharacter(delimiter) || delimiter === quote) {
    delimiter = delimiterOf(readBeginning(path, encoding));
    faults.push(
      `fieldsTerminatedBy is “${table.fieldsTerminatedBy}”, which is no single mark; “${delimiter}” was taken`,
    );
  }
  if (!/^\r?\n$|^\r$/.test(table.linesTerminatedBy))
    faults.push(`linesTerminatedBy is “${table.linesTerminatedBy}”; rows were taken to end at line breaks`);
  const carriageIsText = quote === "" && table.linesTerminatedBy.endsWith("\n") && facts.lineEnding !== "CR";
  return { shape: { encoding, delimiter, quote, headers: table.ignoreHeaderLines, carriageIsText }, faults };
}

function oneCharacter(text: string): boolean {
  return text.length === 1 && !/[\r\n]/.test(text);
}

function encodingOf(path: string, stated: string, facts: TextFacts, faults: string[]): Encoding {
  if (facts.byteOrderMark) return facts.encoding;
  const named = encodingNamed(stated);
  if (named === undefined) {
    faults.push(`encoding “${stated}” is not known; ${facts.encoding} was taken`);
    return facts.encoding;
  }
  if (named === "utf-8" && !facts.validUtf8) {
    faults.push("the file is not UTF-8 as described and was read as Windows-1252");
    return "windows-1252";
  }
  return /^utf-?16$/i.test(stated) ? utf16Of(path) : named;
}

/** ISO-8859-1 is read as Windows-1252, of which it is a part, as browsers do (WHATWG Encoding). */
function encodingNamed(stated: string): Encoding | undefined {
  try {
    const { encoding } = new TextDecoder(stated);
    return encoding === "utf-8" || encoding === "utf-16le" || encoding === "utf-16be" || encoding === "windows-1252"
      ? encoding
      : undefined;
  } catch {
    return undefined;
  }
}

/** Without a byte order mark, the end at which the characters of a delimited text are empty. */
function utf16Of(path: string): Encoding {
  const beginning = readBeginning(path, "windows-1252", 1024);
  const empty = (from: number) => [...beginning].filter((one, place) => place % 2 === from && one === "\0").length;
  return empty(0) > empty(1) ? "utf-16be" : "utf-16le";
}
