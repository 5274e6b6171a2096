import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase, sqlText } from "../../../src/engine/database.ts";
import { isHeld } from "../../../src/review/standard-tests/held-tests.ts";
import { STANDARD_TESTS } from "../../../src/review/standard-tests/index.ts";
import { layProposalRecords } from "../../../src/review/standard-tests/proposal-records.ts";
import {
  runStandardTests,
  type StandardTestRules,
  writeStandardResults,
} from "../../../src/review/standard-tests/run-on-records.ts";
import type { TermTexts } from "../../../src/review/standard-tests/standard-test.ts";
import { RECORD_FIELDS, SourceSetting } from "../../../src/scheme/settings.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";

const SOURCES = [
  SourceSetting.parse({ id: "cards", files: "cards.csv", date_format: "day-first" }),
  SourceSetting.parse({ id: "walks", files: "walks.csv" }),
];
const RULES: StandardTestRules = { today: "2025-12-31", intervalEnd: "inclusive" };

let database: Database;
beforeAll(async () => {
  database = await openDatabase({ spillFolder: "" });
});
afterAll(() => database.close());

/** Lays records as the read stage does, numbered from 1 in the order given. */
async function lay(records: readonly (TermTexts & { readonly source: string })[]): Promise<void> {
  const row = (record: TermTexts & { readonly source: string }, index: number) =>
    `(${index + 1}, ${sqlText(record.source)}, ${RECORD_FIELDS.map((field) => sqlText(record[field] ?? "")).join(", ")})`;
  const columns = RECORD_FIELDS.map((field) => `"${field}" VARCHAR`).join(", ");
  await database.run(`CREATE OR REPLACE TABLE raw_records (record_no INTEGER, source VARCHAR, ${columns})`);
  if (records.length > 0) await database.run(`INSERT INTO raw_records VALUES ${records.map(row).join(", ")}`);
}

async function resultsOf(label: string): Promise<unknown[]> {
  return await database.rows(
    `SELECT source, status, result, records FROM standard_results WHERE label = ${sqlText(label)} ORDER BY ALL`,
  );
}

describe("runStandardTests", () => {
  it("counts records by source and answer", async () => {
    await lay([
      { source: "walks", eventDate: "1998-07-12" },
      { source: "walks", eventDate: "1998-07-12", occurrenceID: "7" },
      { source: "walks", eventDate: "12/7/1998" },
      { source: "cards", eventDate: " " },
    ]);
    await runStandardTests(database, SOURCES, RULES);
    expect(await resultsOf("VALIDATION_EVENTDATE_STANDARD")).toEqual([
      { source: "cards", status: "INTERNAL_PREREQUISITES_NOT_MET", result: "", records: 1 },
      { source: "walks", status: "RUN_HAS_RESULT", result: "COMPLIANT", records: 2 },
      { source: "walks", status: "RUN_HAS_RESULT", result: "NOT_COMPLIANT", records: 1 },
    ]);
    expect(await resultsOf("VALIDATION_OCCURRENCEID_NOTEMPTY")).toEqual([
      { source: "cards", status: "RUN_HAS_RESULT", result: "NOT_COMPLIANT", records: 1 },
      { source: "walks", status: "RUN_HAS_RESULT", result: "COMPLIANT", records: 1 },
      { source: "walks", status: "RUN_HAS_RESULT", result: "NOT_COMPLIANT", records: 2 },
    ]);
  });

  it("leaves out a test of terms that records do not have here", async () => {
    await lay([{ source: "walks" }]);
    await runStandardTests(database, SOURCES, RULES);
    const labels = (await database.rows<{ label: string }>("SELECT label FROM standard_results")).map(
      ({ label }) => label,
    );
    expect(labels).toContain("VALIDATION_LOCATION_NOTEMPTY");
    expect(labels).not.toContain("VALIDATION_MINELEVATION_INRANGE");
    expect(labels).not.toContain("VALIDATION_POLYNOMIAL_CONSISTENT");
  });

  it("asks the checklist for names where there is one", async () => {
    await lay([
      { source: "walks", scientificName: "Bombus pratorum" },
      { source: "walks", scientificName: "Bombus fictus" },
    ]);
    const label = "VALIDATION_SCIENTIFICNAME_FOUND";
    await runStandardTests(database, SOURCES, RULES);
    expect(await resultsOf(label)).toMatchObject([{ status: "EXTERNAL_PREREQUISITES_NOT_MET", records: 2 }]);
    await runStandardTests(database, SOURCES, { ...RULES, hasName: (name) => name === "Bombus pratorum" });
    expect(await resultsOf(label)).toMatchObject([
      { result: "COMPLIANT", records: 1 },
      { result: "NOT_COMPLIANT", records: 1 },
    ]);
  });

  it("proposes once for each distinct input, as the source declares its dates, and finds all its records", async () => {
    await lay([
      { source: "walks", verbatimEventDate: "3/4/2020" },
      { source: "cards", verbatimEventDate: "3/4/2020", locality: "one" },
      { source: "cards", verbatimEventDate: "3/4/2020", locality: "another" },
      { source: "cards", verbatimEventDate: "3/4/2020", eventDate: "2020-04-03" },
    ]);
    await runStandardTests(database, SOURCES, RULES);
    expect(await database.rows("SELECT * FROM standard_proposals WHERE NOT restates")).toEqual([
      {
        source: "cards",
        guid: "6d0a0c10-5e4a-4759-b448-88932f399812",
        label: "AMENDMENT_EVENTDATE_FROM_VERBATIM",
        status: "FILLED_IN",
        inputs: '{"verbatimEventDate":"3/4/2020"}',
        proposal: "eventDate=2020-04-03",
        records: 2,
        record_no: 2,
        restates: false,
      },
    ]);
    await layProposalRecords(database);
    expect(await database.rows("SELECT record_no, proposal FROM standard_proposal_records ORDER BY record_no")).toEqual(
      [
        { record_no: 2, proposal: "eventDate=2020-04-03" },
        { record_no: 3, proposal: "eventDate=2020-04-03" },
      ],
    );
  });

  it("marks what only restates", async () => {
    await lay([{ source: "walks", eventDate: "2007-03" }]);
    await runStandardTests(database, SOURCES, RULES);
    const query = "SELECT proposal, restates FROM standard_proposals WHERE label = 'AMENDMENT_EVENT_FROM_EVENTDATE'";
    // Published case 302.
    expect(await database.rows(query)).toEqual([{ proposal: "year=2007; month=3", restates: true }]);
  });

  it("proposes no interval where the scheme reads its end exclusively", async () => {
    // Published case 704.
    await lay(["9.ii-10.iii.2000", "9.ii.2000"].map((verbatimEventDate) => ({ source: "walks", verbatimEventDate })));
    const query = "SELECT proposal FROM standard_proposals WHERE NOT restates ORDER BY record_no";
    await runStandardTests(database, SOURCES, RULES);
    expect(await database.rows(query)).toEqual([
      { proposal: "eventDate=2000-02-09/2000-03-10" },
      { proposal: "eventDate=2000-02-09" },
    ]);
    await runStandardTests(database, SOURCES, { ...RULES, intervalEnd: "exclusive" });
    expect(await database.rows(query)).toEqual([{ proposal: "eventDate=2000-02-09" }]);
  });

  it("gives nothing of no records", async () => {
    await lay([]);
    await runStandardTests(database, SOURCES, RULES);
    expect(await database.rows("SELECT * FROM standard_results")).toEqual([]);
  });
});

const TEXTS = ["", " ", "\u000e", "x", "1998", "1998-07-12", "12.7.1998", "0", "51.5", "3rd", "WGS84", "present", "1"];
const recordOfSource = fc.record({
  source: fc.constantFrom("cards", "walks"),
  ...Object.fromEntries(RECORD_FIELDS.map((field) => [field, fc.constantFrom(...TEXTS)])),
}) as fc.Arbitrary<TermTexts & { readonly source: string }>;

describe("laws", () => {
  it("every held test answers for every record, as it would for the record alone", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(recordOfSource, { minLength: 1, maxLength: 12 }), async (records) => {
        await lay(records);
        await runStandardTests(database, SOURCES, RULES);
        const expected = new Map<string, number>();
        for (const test of STANDARD_TESTS.filter(isHeld)) {
          for (const record of records) {
            const format = record.source === "cards" ? ("day-first" as const) : ("iso" as const);
            const needsList = test.label === "VALIDATION_SCIENTIFICNAME_FOUND" ? { sourceAuthority: null } : {};
            const { status, result } = test.run(record, { today: RULES.today, dates: { format }, ...needsList });
            const key = [record.source, test.label, status, result].join(" ");
            expected.set(key, (expected.get(key) ?? 0) + 1);
          }
        }
        const found = await database.rows<{ key: string; records: number }>(
          "SELECT concat_ws(' ', source, label, status, result) AS key, records FROM standard_results",
        );
        expect(new Map(found.map(({ key, records: count }) => [key, count]))).toEqual(expected);
      }),
      { numRuns: 15 },
    );
  });
});

describe("writeStandardResults", () => {
  it("writes the same bytes whatever order the records are in", async () => {
    const records = ["2007-03", "1998-07-12", "x", "", "2007-03"].map((eventDate) => ({ source: "walks", eventDate }));
    const file = join(makeTemporaryFolder(), "standard-tests.csv");
    const written: string[] = [];
    for (const some of [records, records.toReversed()]) {
      await lay(some);
      await runStandardTests(database, SOURCES, RULES);
      await writeStandardResults(database, file);
      written.push(readFileSync(file, "utf8"));
    }
    expect(written[1]).toBe(written[0]);
    const lines = written[0]?.split("\n") ?? [];
    expect(lines[0]).toBe("source,test,guid,status,result,records");
    expect(lines.filter((line) => line.includes("VALIDATION_EVENTDATE_NOTEMPTY"))).toEqual([
      "walks,VALIDATION_EVENTDATE_NOTEMPTY,f51e15a6-a67d-4729-9c28-3766299d2985,RUN_HAS_RESULT,COMPLIANT,4",
      "walks,VALIDATION_EVENTDATE_NOTEMPTY,f51e15a6-a67d-4729-9c28-3766299d2985,RUN_HAS_RESULT,NOT_COMPLIANT,1",
    ]);
  });
});
