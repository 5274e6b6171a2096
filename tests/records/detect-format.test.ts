import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import yazl from "yazl";
import { detectFormat } from "../../src/records/detect-format.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

async function formatOf(bytes: string | Uint8Array, name = "walks") {
  const path = join(makeTemporaryFolder(), name);
  writeFileSync(path, bytes);
  return await detectFormat(path);
}

async function zipOf(...names: string[]): Promise<Buffer> {
  const zip = new yazl.ZipFile();
  for (const name of names) zip.addBuffer(Buffer.from("x"), name);
  zip.end();
  const pieces: Buffer[] = [];
  for await (const piece of zip.outputStream) pieces.push(Buffer.from(piece as Buffer));
  return Buffer.concat(pieces);
}

describe("a format", () => {
  // First bytes by the formats' own texts: gzip RFC 1952, zip APPNOTE 4.3.7, Parquet's "PAR1".
  it.each([
    ["delimited", "scientificName,year\n"],
    ["delimited", ""],
    ["delimited", Buffer.from("\uFEFFa\tb\n", "utf16le")],
    ["delimited", Buffer.from("name\tyear\n".repeat(9), "utf16le")],
    ["delimited", "a,b\0c\n1,2\x01\n"],
    ["delimited", '{"a": 1}'],
    ["gzip", gzipSync("a,b\n")],
    ["parquet", "PAR1...."],
  ])("is %s by its first bytes", async (kind, bytes) => {
    expect(await formatOf(bytes)).toEqual({ kind });
  });

  it.each([
    ["spreadsheet", ["[Content_Types].xml", "xl/workbook.xml"]],
    ["archive", ["meta.xml", "occurrence.txt"]],
    ["archive", ["walks/meta.xml", "walks/occurrence.txt"]],
    ["archive", ["occurrence.csv"]],
  ])("of a zip is %s by what is in it", async (kind, names) => {
    expect(await formatOf(await zipOf(...names))).toEqual({ kind });
  });

  it("of a folder is an archive", async () => {
    const folder = join(makeTemporaryFolder(), "walks");
    mkdirSync(folder);
    expect(await detectFormat(folder)).toEqual({ kind: "archive" });
  });

  it.each([
    ["a binary spreadsheet (.xlsb)", ["xl/workbook.bin"]],
    ["an OpenDocument file", ["mimetype", "content.xml"]],
    ["a text document (.docx)", ["word/document.xml"]],
    ["a zip without tables that we know", ["a.jpg"]],
  ])("is said for %s, with a way out", async (what, names) => {
    const detected = await formatOf(await zipOf(...names));
    expect(detected).toMatchObject({ kind: "other", check: "foreign_file", what });
    expect("wayOut" in detected && detected.wayOut !== "").toBe(true);
  });

  it("of a zip that is cut off is a damaged one", async () => {
    const whole = await zipOf("meta.xml", "occurrence.txt");
    expect(await formatOf(whole.subarray(0, 60))).toMatchObject({ kind: "other", check: "file_damaged" });
  });

  it("is said for bytes that are no text", async () => {
    const whole = gzipSync("a,b\n".repeat(500));
    for (const bytes of [whole.subarray(1), Uint8Array.from({ length: 400 }, (_, index) => (index * 7919) % 251)])
      expect(await formatOf(bytes)).toMatchObject({ kind: "other", what: "no text, or a damaged file" });
  });

  it("is told of JSON by the name beside the bytes", async () => {
    expect(await formatOf('{"a": 1}', "a.json")).toMatchObject({ what: "JSON" });
  });
});
