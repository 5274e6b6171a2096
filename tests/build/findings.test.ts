import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { gatherFindings, writeFindings } from "../../src/build/findings.ts";
import { openDatabase } from "../../src/engine/database.ts";
import type { ReadFile } from "../../src/records/raw-records.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const FILE_FINDING = {
  file: "=walks.csv",
  row: 1,
  field: "",
  value: "@header",
  check: "unknown_header",
  severity: "note" as const,
  message: "column is not used",
  wayOut: "map it",
};

describe("writeFindings", () => {
  it("lays findings of files beside those of records, what blocks first, and begins no cell like a formula", async () => {
    const folder = makeTemporaryFolder();
    const database = await openDatabase({ spillFolder: join(folder, "spill") });
    await database.run(
      `CREATE TABLE record_findings AS SELECT *, '' AS subject, '' AS proposal, false AS settled FROM (VALUES
         (3, 'walks', '=walks.csv', 3, 'scientificName', '=1+1', 'name_unknown', 'ask', 'is not in the checklist', '-write another'),
         (2, 'walks', '=walks.csv', 2, 'caste', 'worker', 'impossible_caste', 'blocks', 'is a caste this taxon does not have', 'correct it')
       ) AS t(record_no, source, file, row, field, value, check_name, severity, message, way_out)`,
    );
    await database.run("CREATE TABLE decisions_without_record (record_key VARCHAR, said VARCHAR)");
    await gatherFindings(database, [
      { source: { id: "walks" }, result: { findings: [FILE_FINDING] } } as unknown as ReadFile,
    ]);
    expect(await writeFindings(database, join(folder, "findings.csv"))).toBe(3);
    database.close();
    expect(Papa.parse(readFileSync(join(folder, "findings.csv"), "utf8"), { skipEmptyLines: true }).data).toEqual([
      ["severity", "check", "source", "file", "row", "field", "value", "message", "way_out"],
      [
        "blocks",
        "impossible_caste",
        "walks",
        "'=walks.csv",
        "2",
        "caste",
        "worker",
        "is a caste this taxon does not have",
        "correct it",
      ],
      [
        "ask",
        "name_unknown",
        "walks",
        "'=walks.csv",
        "3",
        "scientificName",
        "'=1+1",
        "is not in the checklist",
        "'-write another",
      ],
      ["note", "unknown_header", "walks", "'=walks.csv", "1", "", "'@header", "column is not used", "map it"],
    ]);
  });
});
