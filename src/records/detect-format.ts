import { closeSync, openSync, readSync, statSync } from "node:fs";
import { basename } from "node:path";
import { wideOf } from "./text-file.ts";
import { type ZipContents, zipContents } from "./zip-contents.ts";

/** A format records can be read from. */
export type Format = "delimited" | "spreadsheet" | "parquet" | "archive";

/** What a file is: records in a format, something packed by gzip, or something else, in words and with the way out. */
export type Detected =
  | { kind: Format | "gzip" }
  | { kind: "other"; what: string; wayOut: string; check: "foreign_file" | "file_damaged" };

const SAVE_AS = "save it as .xlsx or as CSV and name that file";
const EXPORT = "export its records as CSV and name that file";

/** Beginnings of files that hold no records we can read: bytes in Latin-1, where they stand, what it is, the way out. */
const FOREIGN: readonly { begins: string; at?: number; what: string; wayOut: string }[] = [
  { begins: "\xD0\xCF\x11\xE0", what: "an old spreadsheet (.xls) or one with a password", wayOut: SAVE_AS },
  { begins: "%PDF", what: "a PDF document", wayOut: EXPORT },
  { begins: "\x89PNG", what: "a picture (PNG)", wayOut: "name the file with the records" },
  { begins: "\xFF\xD8\xFF", what: "a picture (JPEG)", wayOut: "name the file with the records" },
  { begins: "GIF8", what: "a picture (GIF)", wayOut: "name the file with the records" },
  { begins: "II*\0", what: "a picture (TIFF)", wayOut: "name the file with the records" },
  { begins: "MM\0*", what: "a picture (TIFF)", wayOut: "name the file with the records" },
  { begins: "SQLite format 3\0", what: "an SQLite database", wayOut: EXPORT },
  { begins: "\0\x01\0\0Standard ", what: "an Access database", wayOut: EXPORT },
  { begins: "{\\rtf", what: "a text document (RTF)", wayOut: EXPORT },
  { begins: "7z\xBC\xAF", what: "a 7z archive", wayOut: "unpack it and name the files in it" },
  { begins: "Rar!", what: "a RAR archive", wayOut: "unpack it and name the files in it" },
  { begins: "BZh", what: "packed by bzip2", wayOut: "unpack it, or pack it by gzip" },
  { begins: "\xFD7zXZ", what: "packed by xz", wayOut: "unpack it, or pack it by gzip" },
  { begins: "\x28\xB5\x2F\xFD", what: "packed by zstd", wayOut: "unpack it, or pack it by gzip" },
  { begins: "ustar", at: 257, what: "a tar archive", wayOut: "unpack it and name the files in it" },
];

/**
 * What a file or folder is, from its first bytes, for a zip from what is in it, and from its name where bytes tell nothing.
 *
 * @returns delimited text for whatever is not known to be something else
 * @example await detectFormat("records/walks.xlsx") // => { kind: "spreadsheet" }
 */
export async function detectFormat(path: string): Promise<Detected> {
  if (statSync(path).isDirectory()) return { kind: "archive" };
  const beginning = beginningOf(path);
  if (beginning.startsWith("\x1F\x8B")) return { kind: "gzip" };
  if (beginning.startsWith("PAR1")) return { kind: "parquet" };
  if (/^PK(?:\x03\x04|\x05\x06|\x07\x08)/.test(beginning)) return await detectInZip(path);
  const foreign = FOREIGN.find(({ begins, at = 0 }) => beginning.startsWith(begins, at));
  const other = foreign ?? markedUp(beginning, basename(path)) ?? noText(beginning);
  if (other !== undefined) return { kind: "other", check: "foreign_file", what: other.what, wayOut: other.wayOut };
  return { kind: "delimited" };
}

function beginningOf(path: string): string {
  const file = openSync(path, "r");
  try {
    const bytes = Buffer.alloc(512);
    return bytes.subarray(0, readSync(file, bytes, 0, bytes.length, 0)).toString("latin1");
  } finally {
    closeSync(file);
  }
}

/** Text that is no table: a web page, other XML, and what calls itself JSON. */
function markedUp(beginning: string, name: string): { what: string; wayOut: string } | undefined {
  const text = beginning.replace(/^\xEF\xBB\xBF/, "").trimStart();
  if (/^<(?:!doctype html|html)/i.test(text)) return { what: "a web page", wayOut: SAVE_AS };
  if (/^<\?xml/i.test(text)) return { what: "an XML document", wayOut: EXPORT };
  if (/\.(?:geo)?json$/i.test(name) && /^[[{]/.test(text)) return { what: "JSON", wayOut: EXPORT };
  return undefined;
}

/** Bytes that no text has, in number: a picture, a program, or a packed file that has lost its beginning. */
function noText(beginning: string): { what: string; wayOut: string } | undefined {
  const isWide = /^(?:\xFF\xFE|\xFE\xFF)/.test(beginning) || wideOf(Buffer.from(beginning, "latin1")) !== null;
  const strange = [...beginning].filter((character) => character < " " && !"\t\n\r\f\x1A".includes(character)).length;
  if (isWide || strange < 8 || strange < beginning.length / 20) return undefined;
  return { what: "no text, or a damaged file", wayOut: "get the file again, or name the file with the records" };
}

async function detectInZip(path: string): Promise<Detected> {
  const contents = await zipContents(path);
  if (typeof contents === "string")
    return { kind: "other", check: "file_damaged", what: `a damaged zip (${contents})`, wayOut: "get the file again" };
  const has = (name: string) => contents.names.includes(name);
  if (has("xl/workbook.xml")) return { kind: "spreadsheet" };
  if (looksLikeArchive(contents)) return { kind: "archive" };
  const foreign = (what: string, wayOut: string): Detected => ({ kind: "other", check: "foreign_file", what, wayOut });
  if (has("xl/workbook.bin")) return foreign("a binary spreadsheet (.xlsb)", SAVE_AS);
  if (has("content.xml")) return foreign("an OpenDocument file", SAVE_AS);
  if (has("word/document.xml")) return foreign("a text document (.docx)", EXPORT);
  return foreign("a zip without tables that we know", "unpack it and name the files in it");
}

/** A description of an archive, at the top or in one folder, or tables that could be one without it. */
function looksLikeArchive({ names }: ZipContents): boolean {
  const files = names.map((name) => name.replace(/^[^/]+\/(?=[^/]+$)/, "").toLowerCase());
  return files.includes("meta.xml") || files.some((name) => /^[^/]+\.(?:txt|csv|tsv)$/.test(name));
}
