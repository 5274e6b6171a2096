/** Files of records with faults in their bytes, for tests and long runs: sound files of every format, and what befalls them. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { writeXlsx } from "hucre/xlsx";
import yazl from "yazl";
import { type Database, sqlText } from "../../src/engine/database.ts";

/** Formats that are read by other code. "sheet" is a workbook whose faults are in a sheet, so that its zip is sound. */
export const FORMATS = ["csv", "tsv", "utf-16", "gzip", "xlsx", "sheet", "parquet"] as const;
export type MutatedFormat = (typeof FORMATS)[number];

/** Something that befalls the bytes of a file; `at` is a share of its length, from 0 to 1. */
export interface Fault {
  kind: "set" | "insert" | "take out" | "repeat" | "cut off" | "zeros";
  at: number;
  byte: number;
  length: number;
}

/** Any few faults. Bytes that part cells, rows and elements come more often than others. */
export const faults: fc.Arbitrary<Fault[]> = fc.array(
  fc.record({
    kind: fc.constantFrom("set", "set", "insert", "take out", "repeat", "cut off", "zeros"),
    // Without bias, for else nearly all faults befall the first byte and the last.
    at: fc.noBias(fc.integer({ min: 0, max: 99_999 })).map((part) => part / 100_000),
    byte: fc.oneof(fc.constantFrom(...Buffer.from(',;\t|"\n\r\0<>/&=#\u00e9')), fc.integer({ min: 0, max: 255 })),
    length: fc.integer({ min: 1, max: 60 }),
  }),
  { minLength: 1, maxLength: 6 },
);

/** A file with its faults. */
export function withFaults(bytes: Uint8Array, some: readonly Fault[]): Buffer {
  return some.reduce((before: Buffer, { kind, at, byte, length }) => {
    const from = Math.floor(at * before.length);
    const piece = before.subarray(from, from + length);
    const parts = {
      set: [before.subarray(0, from), Buffer.from([byte]), before.subarray(from + 1)],
      insert: [before.subarray(0, from), Buffer.from([byte]), before.subarray(from)],
      "take out": [before.subarray(0, from), before.subarray(from + length)],
      repeat: [before.subarray(0, from), piece, before.subarray(from)],
      "cut off": [before.subarray(0, from)],
      zeros: [before.subarray(0, from), Buffer.alloc(piece.length), before.subarray(from + piece.length)],
    };
    return Buffer.concat(parts[kind]);
  }, Buffer.from(bytes));
}

const ROWS = Array.from({ length: 40 }, (_, index) => [
  ["Bombus pratorum", "Bombus lucorum", "Bombus muscorum"][index % 3] ?? "",
  `2021-05-${String((index % 28) + 1).padStart(2, "0")}`,
  `TQ${30 + index}`,
  String(index),
  ["Long Lea", "Åker, øst", "", 'the "Nab"'][index % 4] ?? "",
]);
const HEADERS = ["scientificName", "eventDate", "gridReference", "individualCount", "locality"];

/** Makes a sound file of each format, 40 records in each. */
export async function soundFiles(database: Database, folder: string): Promise<Record<MutatedFormat, Buffer>> {
  const table = [HEADERS, ...ROWS];
  const cell = (text: string) => (/[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const csv = `${table.map((cells) => cells.map(cell).join(",")).join("\n")}\n`;
  const tsv = `${table.map((cells) => cells.join("\t").replaceAll('"', "")).join("\r\n")}\r\n`;
  const rows = ROWS.map(([name, date, square, count, site]) => [
    name ?? "",
    new Date(date ?? ""),
    square ?? "",
    Number(count),
    site ?? "",
  ]);
  const xlsx = await writeXlsx({ sheets: [{ name: "Records", rows: [HEADERS, ...rows] }] });
  const parquet = join(folder, "sound.parquet");
  const values = ROWS.map((cells) => `(${cells.map(sqlText).join(", ")})`).join(", ");
  await database.run(
    `COPY (SELECT c1 AS "scientificName", c2::DATE AS "eventDate", c3 AS "gridReference", c4::INTEGER AS "individualCount", c5 AS locality
     FROM (VALUES ${values}) AS t (c1, c2, c3, c4, c5)) TO ${sqlText(parquet)} (FORMAT parquet)`,
  );
  return {
    csv: Buffer.from(csv),
    tsv: Buffer.from(tsv),
    "utf-16": Buffer.from(`\uFEFF${tsv}`, "utf16le"),
    gzip: gzipSync(csv),
    xlsx: Buffer.from(xlsx),
    sheet: Buffer.from(sheetXml()),
    parquet: readFileSync(parquet),
  };
}

/** The bytes of a file of a format with faults: for "sheet" the workbook is packed anew around the sheet. */
export async function mutated(format: MutatedFormat, sound: Uint8Array, some: readonly Fault[]): Promise<Buffer> {
  const bytes = withFaults(sound, some);
  return format === "sheet" ? await workbookAround(bytes) : bytes;
}

function sheetXml(): string {
  const cells = [HEADERS, ...ROWS].map((texts, row) => {
    const inline = texts.map((text, column) => {
      const name = `${"ABCDE"[column]}${row + 1}`;
      const escaped = text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
      return column === 3 && row > 0
        ? `<c r="${name}"><f>A1+1</f><v>${escaped}</v></c>`
        : `<c r="${name}" t="inlineStr"><is><t>${escaped}</t></is></c>`;
    });
    return `<row r="${row + 1}">${inline.join("")}</row>`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${cells.join("")}</sheetData><mergeCells count="1"><mergeCell ref="E2:E4"/></mergeCells></worksheet>`;
}

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PARTS = {
  "[Content_Types].xml":
    '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="application/xml"/></Types>',
  "_rels/.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  "xl/workbook.xml": `<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${OFFICE}"><sheets><sheet name="Records" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  "xl/_rels/workbook.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
};

/** A small workbook around the XML of its one sheet, with other parts in the place of its own where they are given. */
export async function workbookAround(sheet: string | Uint8Array, parts: Record<string, string> = {}): Promise<Buffer> {
  const zip = new yazl.ZipFile();
  for (const [name, text] of Object.entries({ ...PARTS, ...parts })) zip.addBuffer(Buffer.from(text), name);
  zip.addBuffer(Buffer.from(sheet), "xl/worksheets/sheet1.xml");
  zip.end();
  const pieces: Buffer[] = [];
  for await (const piece of zip.outputStream) pieces.push(Buffer.from(piece as Buffer));
  return Buffer.concat(pieces);
}
