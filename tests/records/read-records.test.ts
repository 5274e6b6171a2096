import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { FORMATS, faults, mutated, soundFiles } from "./mutated-files.ts";
import { type PartsRead, readBytes, readInput, told, useDatabase } from "./reading.ts";

const database = useDatabase();
const TABLE = "scientificName,eventDate,gridReference\nBombus pratorum,2021-05-03,TQ38\n";

describe("records", () => {
  it("are read whatever their format, and the log says how", async () => {
    const sound = await soundFiles(database(), makeTemporaryFolder());
    const hows: Record<string, string> = {};
    for (const format of FORMATS) {
      const { parts, rows } = await readBytes(database(), "walks", await mutated(format, sound[format], []));
      hows[format] = parts.map(({ result }) => result.how).join("; ");
      expect(
        rows.map(({ row, scientificName, eventDate, gridReference }) => [
          row,
          scientificName,
          eventDate,
          gridReference,
        ]),
      ).toEqual(
        Array.from({ length: 40 }, (_, index) => [
          index + 2,
          ["Bombus pratorum", "Bombus lucorum", "Bombus muscorum"][index % 3],
          `2021-05-${String((index % 28) + 1).padStart(2, "0")}`,
          `TQ${30 + index}`,
        ]),
      );
    }
    expect(hows).toEqual({
      csv: "UTF-8, comma, LF, header in row 1",
      tsv: "UTF-8, tab, CRLF, header in row 1",
      "utf-16": "UTF-16 LE, tab, CRLF, header in row 1",
      gzip: "gzip, UTF-8, comma, LF, header in row 1",
      xlsx: "sheet Records, header in row 1",
      sheet: "sheet Records, header in row 1",
      parquet: "Parquet",
    });
  });

  it("packed by gzip in several members are read whole", async () => {
    const members = Buffer.concat([gzipSync(TABLE), gzipSync("Bombus lucorum,2022,TQ37\n")]);
    const { rows } = await readBytes(database(), "walks.csv.gz", members);
    expect(rows.map(({ row, eventDate }) => [row, eventDate])).toEqual([
      [2, "2021-05-03"],
      [3, "2022"],
    ]);
  });

  it("packed by gzip and damaged are not read, for nobody knows what is missing", async () => {
    const packed = gzipSync(TABLE.repeat(50));
    for (const bytes of [
      packed.subarray(0, packed.length / 2),
      Buffer.concat([packed.subarray(0, -8), Buffer.alloc(8)]),
    ]) {
      const { parts, rows } = await readBytes(database(), "walks.csv.gz", bytes);
      expect(rows).toEqual([]);
      expect(parts.flatMap(({ result }) => told(result))).toEqual(["row 1: file_damaged"]);
    }
  });

  it.each([
    ["walks.xls", Buffer.from("d0cf11e0a1b11ae1", "hex"), "an old spreadsheet (.xls) or one with a password"],
    ["walks.pdf", "%PDF-1.7\n", "a PDF document"],
    ["walks.png", Buffer.from("89504e470d0a1a0a", "hex"), "a picture (PNG)"],
    ["walks.html", "<!DOCTYPE html><html></html>", "a web page"],
    ["walks.geojson", '{"type": "FeatureCollection"}', "JSON"],
  ])("that are no table, as %s, are said to be what they are, and nothing is read", async (name, bytes, what) => {
    const { parts, rows } = await readBytes(database(), name, bytes);
    expect(rows).toEqual([]);
    expect(parts).toMatchObject([{ result: { records: 0, how: "not read" } }]);
    const [finding] = parts[0]?.result.findings ?? [];
    expect(finding).toMatchObject({ check: "foreign_file", message: `the file is ${what}; nothing was read` });
    expect(finding?.wayOut).toMatch(/./);
  });

  it("are of the format the settings say", async () => {
    const { parts } = await readBytes(database(), "walks.html", "<html>,scientificName\na,Bombus pratorum\n", {
      format: "delimited",
    });
    expect(parts).toMatchObject([{ result: { records: 1, fields: ["scientificName"] } }]);
    const wrong = await readBytes(database(), "walks.csv", TABLE, { format: "parquet" });
    expect(wrong.parts.flatMap(({ result }) => told(result))).toEqual(["row 1: file_damaged"]);
  });
});

/** Formats that hold their content against checksums, so that no record can be missing without a trace. */
const CHECKED = ["gzip", "xlsx", "parquet"];

/** What holds of anything that was read, however broken. */
function addsUp({ parts, rows }: PartsRead, least: number): void {
  parts.forEach(({ result }, file) => {
    const own = rows.filter((row) => row.file === file).map(({ row }) => row);
    expect(result.records).toBe(result.read + result.rescued.length + result.unreadable);
    expect(own).toHaveLength(result.read + result.rescued.length);
    expect(new Set(own).size).toBe(own.length);
    expect(own.every((row) => row >= 1 && row <= result.lastRow)).toBe(true);
    if (result.records < least) expect(result.findings.length).toBeGreaterThan(0);
  });
}

describe("laws", () => {
  it.each(FORMATS)(
    "whatever befalls the bytes of a file (%s), its records add up, and missing ones are told",
    async (format) => {
      const folder = makeTemporaryFolder();
      const sound = (await soundFiles(database(), folder))[format];
      await fc.assert(
        fc.asyncProperty(faults, async (some) => {
          const path = join(folder, "walks");
          const bytes = await mutated(format, sound, some);
          writeFileSync(path, bytes);
          const read = await readInput(database(), path, {}, folder);
          addsUp(read, CHECKED.includes(format) ? 40 : 1);
          linesAreCounted(bytes, read);
        }),
        { numRuns: 25, seed: 20_260 },
      );
    },
  );
});

/** In text without quotation marks every line under the header that is not blank is a record: counted without the reader. */
function linesAreCounted(bytes: Buffer, { parts: [part] }: PartsRead): void {
  const found = /^header in row (\d+)$/.exec(part?.result.how.split(", ").at(-1) ?? "");
  if (part === undefined || found === null || !part.result.how.startsWith("UTF-8, comma")) return;
  const text = bytes.toString();
  if (text.includes('"')) return;
  const lines = text.split(/\r\n|\r|\n/).slice(Number(found[1]));
  expect(part.result.records).toBe(lines.filter((line) => line.trim() !== "").length);
}
