import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { KINDS, measureRows, PLACES, type RecordRow, type Rules, time } from "../judged-records.ts";

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-use-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
});
afterAll(() => database.close());

const rules: Rules = {
  within: { a: ["ab"], b: ["ab"], ab: [], c: [] },
  periods: [{ id: "all", from: 1990, to: 2020 }],
  compared: null,
  minimumVisits: 1,
};

const anyRecord: fc.Arbitrary<RecordRow> = fc
  .record({
    place: fc.constantFrom(...PLACES),
    day: fc.constantFrom("2011-05-30", "2012-05-30", "2013-05-31"),
    taxon_id: fc.constantFrom("a", "b", "ab", "c"),
    kind_id: fc.nat(KINDS.length - 1),
    present: fc.constantFrom(true, true, true, false),
    source: fc.constantFrom("walks", "pictures", "survey", "museum"),
    habitats: fc.subarray(["heath", "wood", "garden"]),
    flowers: fc.subarray(["clover", "ivy"], { maxLength: 1 }),
    recorder: fc.constantFrom("ann", "bob"),
  })
  .map(({ place, day, ...record }) => ({ ...place, ...time(rules, day), ...record, status: "used" as const }));

const visitOf = ({ visit_place, first_day, recorder }: RecordRow) => [visit_place, first_day, recorder].join("|");
const distinct = (records: readonly RecordRow[]) => new Set(records.map(visitOf)).size;
const upwards: Record<string, string[]> = { a: ["a", "ab"], b: ["b", "ab"], ab: ["ab"], c: ["c"] };

/** The four counts of visits, from their definition: everyday visits on which an everyday record states a habitat. */
function plainCounts(records: readonly RecordRow[], taxon: string, caste: string, term: string) {
  const everyday = records.filter(({ source, present }) => present && source !== "survey" && source !== "museum");
  const stating = everyday.filter(({ habitats = [] }) => habitats.length > 0).map(visitOf);
  const inTerm = everyday.filter(({ habitats = [] }) => habitats.includes(term)).map(visitOf);
  const told = everyday.filter((record) => stating.includes(visitOf(record)));
  const own = told.filter(
    ({ taxon_id, kind_id }) =>
      upwards[taxon_id]?.includes(taxon) === true && (caste === "all" || KINDS[kind_id]?.includes(caste) === true),
  );
  return [
    distinct(own.filter((record) => inTerm.includes(visitOf(record)))),
    new Set(inTerm).size,
    distinct(own),
    distinct(told),
  ];
}

/** The same of flowers, which are a record's own: taxa on visits whose record names one. */
function plainFlowerCounts(records: readonly RecordRow[], taxon: string, caste: string, term: string) {
  const stating = records.filter(
    ({ source, present, flowers = [] }) => present && source !== "survey" && source !== "museum" && flowers.length > 0,
  );
  const unitOf = (record: RecordRow) => `${visitOf(record)}|${record.taxon_id}`;
  const inTerm = stating.filter(({ flowers = [] }) => flowers.includes(term)).map(unitOf);
  const own = stating.filter(
    ({ taxon_id, kind_id }) =>
      upwards[taxon_id]?.includes(taxon) === true && (caste === "all" || KINDS[kind_id]?.includes(caste) === true),
  );
  const units = new Set(own.map(unitOf));
  return [
    [...units].filter((unit) => inTerm.includes(unit)).length,
    new Set(inTerm).size,
    units.size,
    new Set(stating.map(unitOf)).size,
  ];
}

const ASKED = [
  ...["heath", "wood", "garden"].map((term) => [plainCounts, term] as const),
  ...["clover", "ivy"].map((term) => [plainFlowerCounts, term] as const),
];

describe("measureUse", () => {
  it("counts visits as the definitions do, worked out record by record", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyRecord, { maxLength: 60, size: "max" }), async (records) => {
        await measureRows(database, records, rules);
        const rows = await database.rows<Record<string, number | string>>(
          "SELECT * FROM surroundings_use ORDER BY taxon_id, caste, term",
        );
        for (const taxon of ["a", "b", "ab", "c"])
          for (const caste of ["all", "queen", "worker", "male"])
            for (const [count, term] of ASKED) {
              const [a, b, c, n] = count(records, taxon, caste, term);
              const row = rows.find(
                (one) => one["taxon_id"] === taxon && one["caste"] === caste && one["term"] === term,
              );
              if (c === 0 || b === 0) expect(row).toBeUndefined();
              else expect(row).toMatchObject({ n_taxon_term: a, n_term: b, n_taxon: c, n_all: n });
            }
      }),
      { numRuns: 15 },
    );
  });

  it("is silent, with the reason, where too few visits say where it was", async () => {
    const record = (taxon_id: string): RecordRow => ({
      ...(PLACES[0] as (typeof PLACES)[number]),
      ...time(rules, "2013-05-31"),
      ...{ taxon_id, present: true, kind_id: 0, recorder: "ann", status: "used", habitats: ["heath"] },
    });
    await measureRows(database, [record("a"), record("c")], rules);
    expect(
      await database.rows("SELECT taxon_id, ratio, judged, reason FROM surroundings_use ORDER BY taxon_id LIMIT 1"),
    ).toEqual([
      { taxon_id: "a", ratio: null, judged: false, reason: "stated too seldom with it: 1, where 30 are needed" },
    ]);
  });
});
