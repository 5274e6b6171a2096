import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { sqlText } from "../../src/engine/database.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { type PartsRead, readBytes, told, useDatabase } from "./reading.ts";

const database = useDatabase();

async function read(query: string, settings: object = {}): Promise<PartsRead> {
  const folder = makeTemporaryFolder();
  const path = join(folder, "made.parquet");
  await database().run(`COPY (${query}) TO ${sqlText(path)} (FORMAT parquet)`);
  return await readBytes(database(), "walks.parquet", readFileSync(path), settings, folder);
}

describe("a Parquet file", () => {
  it("is read by the names of its columns; its first record is row 2", async () => {
    const { parts, rows } = await read(
      `SELECT * FROM (VALUES ('Bombus pratorum', DATE '2021-05-03', 'sun'), (NULL, NULL, 'rain')) AS t ("dwc:scientificName", "EVENTDATE", weather)`,
    );
    expect(parts).toMatchObject([
      {
        name: "records/walks.parquet",
        result: {
          records: 2,
          read: 2,
          lastRow: 3,
          how: "Parquet",
          unmapped: [{ header: "weather", values: ["sun", "rain"] }],
        },
      },
    ]);
    expect(rows).toEqual([
      { file: 0, row: 2, scientificName: "Bombus pratorum", eventDate: "2021-05-03" },
      { file: 0, row: 3 },
    ]);
  });

  // Dates and times by ISO 8601-1:2019; numbers as decimal numerals; lists as Darwin Core separates them (" | ").
  it.each([
    ["DATE '2021-05-03'", "2021-05-03"],
    ["TIMESTAMP '2021-05-03 00:00:00'", "2021-05-03"],
    ["TIMESTAMP '2021-05-03 14:07:09'", "2021-05-03T14:07:09"],
    ["TIMESTAMP_MS '2021-05-03 14:07:09'", "2021-05-03T14:07:09"],
    ["TIMESTAMP_NS '2021-05-03 14:07:09'", "2021-05-03T14:07:09"],
    ["TIMESTAMPTZ '2021-05-03 14:07:09+01'", "2021-05-03T13:07:09Z"],
    ["TIME '14:07:09'", "14:07:09"],
    ["2021::DOUBLE", "2021"],
    ["0.1::DOUBLE + 0.2::DOUBLE", "0.3"],
    ["51.4778::DOUBLE", "51.4778"],
    ["51.4778::FLOAT", "51.4778"],
    ["-3::FLOAT", "-3"],
    ["'NaN'::DOUBLE", ""],
    ["'Infinity'::FLOAT", ""],
    ["51.47780::DECIMAL(8,5)", "51.47780"],
    ["9007199254740993::BIGINT", "9007199254740993"],
    ["true", "true"],
    ["encode('Åker')", "Åker"],
    ["['a', NULL, 'b c']", "a | b c"],
    ["[1.5::DOUBLE, 2::DOUBLE]", "1.5 | 2"],
    ["[['a'], ['b', 'c']]", "a | b | c"],
    ["[]::VARCHAR[]", ""],
    ["'  x  '", "x"],
    ["NULL::VARCHAR", ""],
  ])("has %s as %j", async (value, text) => {
    const { rows } = await read(`SELECT 'a' AS "scientificName", ${value} AS locality`);
    expect(rows[0]?.locality ?? "").toBe(text);
  });

  it("may have a cell of 10 MB, which is cut and told", async () => {
    const reading = await read(`SELECT 'a' AS "scientificName", repeat('x', 10000000) AS locality`);
    expect(reading.rows[0]?.locality).toHaveLength(20_000);
    expect(reading.parts.flatMap(({ result }) => told(result))).toContain("row 2: cell_cut");
  });

  it("without a known column is counted and blocks; an empty one is told", async () => {
    const reading = await read("SELECT 1 AS a FROM range(3)");
    expect(reading.parts).toMatchObject([{ result: { records: 3, unreadable: 3 } }]);
    expect(reading.parts.flatMap(({ result }) => told(result))).toContain("row 1: no_known_column");
    const empty = await read(`SELECT 'a' AS "scientificName" WHERE false`);
    expect(empty.parts.flatMap(({ result }) => told(result))).toEqual(["row 1: no_rows"]);
  });
});

describe("a Parquet file with a broken column that is not used", () => {
  it("is damaged as a whole, and leaves no rows that are not counted", async () => {
    const folder = makeTemporaryFolder();
    const path = join(folder, "made.parquet");
    await database().run(
      `COPY (SELECT 'Bombus pratorum' AS "scientificName", 'weather of day ' || i AS weather FROM range(40) AS t(i)) TO ${sqlText(path)} (FORMAT parquet, COMPRESSION uncompressed)`,
    );
    const bytes = readFileSync(path);
    // What stands before the column's first value says how long its page is.
    const value = bytes.indexOf("weather of day 0");
    bytes.fill(0, value - 24, value);
    const { parts, rows } = await readBytes(database(), "walks.parquet", bytes, {}, folder);
    expect(parts.map(({ result }) => [result.records, told(result)])).toEqual([[0, ["row 1: file_damaged"]]]);
    expect(rows).toEqual([]);
    const written = readdirSync(folder, { recursive: true }).map(String);
    expect(written.filter((name) => name.endsWith("rows.parquet"))).toEqual([]);
  });
});
