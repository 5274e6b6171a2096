import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readXlsx } from "hucre/xlsx";
import Papa from "papaparse";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../src/engine/database.ts";
import { layWorklist, writeWorklistCsv } from "../../src/review/worklist.ts";
import { RULED_COLUMNS, WORKLIST_COLUMNS } from "../../src/review/worklist-columns.ts";
import { writeWorklistWorkbook } from "../../src/review/worklist-workbook.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { review } from "./reviewing.ts";

let database: Database;
let folder: string;
beforeEach(async () => {
  folder = makeTemporaryFolder();
  database = await openDatabase({ spillFolder: join(folder, "spill") });
});
afterEach(() => database.close());

/** Two cuckoo workers, which are held; three rows with one unknown name, and one with another. */
const WALKS = `occurrenceID,scientificName,eventDate,gridReference,recordedBy,caste,occurrenceRemarks
a1,Bombus xxx,2011-07-12,SP5006,Ann,,=1+1
a2,Bombus vestalis,2011-07-12,SP5006,Ann,worker,
a3,Bombus yyy,2011-07-12,SP5006,Ann,,
a4,Bombus yyy,2011-07-13,SP5006,Ann,,
a5,Bombus yyy,2011-07-14,SP5006,Ann,,
a6,Bombus terrestris,2011-07-14,SP5006,Ann,,
`;

async function rowsOf(decisions: object[] = []): Promise<Record<string, string>[]> {
  await review(database, { walks: WALKS }, { decisions, more: { checks: { severity: {} } } });
  await layWorklist(database);
  await writeWorklistCsv(database, join(folder, "worklist.csv"));
  return Papa.parse<Record<string, string>>(readFileSync(join(folder, "worklist.csv"), "utf8"), {
    header: true,
    skipEmptyLines: true,
  }).data;
}

describe("worklist", () => {
  it("has what holds a record first, then what one look settles for most records", async () => {
    const rows = await rowsOf();
    expect(rows.map(({ record, look, records }) => [record, look, records])).toEqual([
      ["walks:a2", "1", "1"],
      ["walks:a3", "2", "3"],
      ["walks:a4", "2", "3"],
      ["walks:a5", "2", "3"],
      ["walks:a1", "3", "1"],
    ]);
    expect(rows.map(({ severity }) => severity)).toEqual(["blocks", "ask", "ask", "ask", "ask"]);
  });

  it("leaves the columns of the ruling empty, and begins no cell like a formula", async () => {
    const rows = await rowsOf();
    for (const row of rows) for (const column of RULED_COLUMNS) expect(row[column]).toBe("");
    expect(rows.at(-1)?.["remarks"]).toBe("'=1+1");
  });

  it("makes one look of what a setting of the source settles", async () => {
    const header = "occurrenceID,scientificName,eventDate,easting,northing";
    const rows = [1, 2, 3].map((row) => `a${row},Bombus terrestris,2011-07-12,45078${row},20629${row}`);
    await review(database, { walks: [header, ...rows].join("\n") });
    await layWorklist(database);
    const looks = await database.rows(
      "SELECT DISTINCT look_no::INTEGER AS look, records_of_look::INTEGER AS records, check_name FROM worklist",
    );
    expect(looks).toEqual([{ look: 1, records: 3, check_name: "crs_not_stated" }]);
  });

  it("asks no more about a record that was ruled on", async () => {
    const rows = await rowsOf([{ recordKey: "walks:a2", ruling: "use" }]);
    expect(rows.map(({ record }) => record)).not.toContain("walks:a2");
  });

  it("is the same in the workbook", async () => {
    const rows = await rowsOf();
    await writeWorklistWorkbook(database, join(folder, "worklist.xlsx"));
    const { sheets } = await readXlsx(readFileSync(join(folder, "worklist.xlsx")));
    const [header, ...cells] = sheets[0]?.rows ?? [];
    expect(header).toEqual(WORKLIST_COLUMNS.map(({ name }) => name));
    expect(cells.map((row) => row.map((cell) => String(cell ?? "")))).toEqual(
      rows.map((row) => WORKLIST_COLUMNS.map(({ name }) => row[name] ?? "")),
    );
  });
});
