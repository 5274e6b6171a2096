import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { KINDS, measureRows, PLACES, type RecordRow, type Rules, time } from "../judged-records.ts";

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-season-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
});
afterAll(() => database.close());

const rules: Rules = {
  within: { a: ["ab"], b: ["ab"], ab: [], c: [] },
  periods: [
    { id: "earlier", from: 1990, to: 2005 },
    { id: "recent", from: 2006, to: 2020 },
  ],
  compared: [0, 1],
  minimumVisits: 1,
};
const upwards: Record<string, string[]> = { a: ["a", "ab"], b: ["b", "ab"], ab: ["ab"], c: ["c"] };

const anyRecord: fc.Arbitrary<RecordRow> = fc
  .record({
    place: fc.constantFrom(...PLACES),
    dates: fc.constantFrom(
      ["2011-05-30", "2011-05-30"] as const,
      ["2012-05-30", "2012-05-30"] as const,
      ["2012-02-29", "2012-02-29"] as const,
      ["2003-12-31", "2003-12-31"] as const,
      ["2011-05-01", "2011-05-09"] as const,
    ),
    taxon_id: fc.constantFrom("a", "b", "ab", "c"),
    kind_id: fc.nat(KINDS.length - 1),
    present: fc.constantFrom(true, true, true, false),
    source: fc.constantFrom("walks", "walks", "pictures", "museum"),
    recorder: fc.constantFrom("ann", "bob"),
  })
  .map(({ place, dates: [first, last], ...record }) => ({
    ...place,
    ...time(rules, first, last),
    ...record,
    status: "used" as const,
  }));

/** Day of the year of a leap day is that of 28 February; the rest are as in a year of 365 days. */
const DAYS: Record<string, number> = { "05-30": 150, "02-29": 59, "12-31": 365 };
const isoOf = (day: number) => new Date(day * 86_400_000).toISOString().slice(5, 10);

/** Numbers of records, visits, vague dates and specimens of a scope, from their definition. */
function plainCounts(records: readonly RecordRow[], taxon: string, caste: string, territory: string, period: string) {
  const own = records.filter(
    (record) =>
      record.present &&
      upwards[record.taxon_id]?.includes(taxon) === true &&
      (caste === "all" || KINDS[record.kind_id]?.includes(caste) === true) &&
      (territory === "all" || record.territory === territory) &&
      (period === "all" || rules.periods[record.period ?? -1]?.id === period),
  );
  const alive = own.filter(({ source }) => source !== "museum");
  const dated = alive.filter(({ first_day, last_day }) => first_day === last_day);
  const visits = dated
    .filter(({ visit_place }) => visit_place !== "")
    .map((one) => [one.visit_place, one.first_day, one.recorder].join());
  return {
    records: dated.length,
    visits: new Set(visits).size,
    vague: alive.length - dated.length,
    of_no_season: own.length - alive.length,
  };
}

describe("measureSeason", () => {
  it("counts records and visits as the definitions do, worked out record by record", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyRecord, { maxLength: 60, size: "max" }), async (records) => {
        await measureRows(database, records, rules);
        const rows = await database.rows<Record<string, number | string>>("SELECT * FROM season_figures");
        for (const taxon of ["a", "ab", "c"])
          for (const caste of ["all", "queen", "worker", "not_stated"])
            for (const period of ["all", "earlier", "recent"]) {
              const plain = plainCounts(records, taxon, caste, "all", period);
              const found = rows.filter(
                (one) =>
                  one["taxon_id"] === taxon &&
                  one["caste"] === caste &&
                  one["territory"] === "all" &&
                  one["period"] === period,
              );
              if (plain.records + plain.vague + plain.of_no_season === 0) expect(found).toEqual([]);
              else {
                const { vague, of_no_season } = plain;
                expect(found.find(({ basis }) => basis === "records")).toMatchObject({
                  n: plain.records,
                  vague,
                  of_no_season,
                });
                expect(found.find(({ basis }) => basis === "visits")).toMatchObject({ n: plain.visits });
              }
            }
      }),
      { numRuns: 6 },
    );
  });

  const one = (date: string, extra: Partial<RecordRow> = {}): RecordRow => ({
    ...(PLACES[0] as (typeof PLACES)[number]),
    ...time(rules, date),
    ...{ taxon_id: "a", present: true, kind_id: 1, recorder: "ann", status: "used" as const },
    ...extra,
  });

  it("counts days in a year of 365, and a visit's records once", async () => {
    const dates = ["2012-02-29", "2011-05-30", "2012-05-30", "2003-12-31"];
    await measureRows(database, [...dates.map((date) => one(date)), one("2011-05-30")], rules);
    expect(
      await database.rows(
        "SELECT season_day, sum(records)::INT AS records, sum(visits)::INT AS visits FROM season_days WHERE taxon_id = 'a' AND caste = 'queen' GROUP BY season_day ORDER BY season_day",
      ),
    ).toEqual([
      { season_day: DAYS["02-29"], records: 1, visits: 1 },
      { season_day: DAYS["05-30"], records: 3, visits: 2 },
      { season_day: DAYS["12-31"], records: 1, visits: 1 },
    ]);
    expect(dates.map((date) => isoOf(one(date).last_day))).toEqual(["02-29", "05-30", "05-30", "12-31"]);
  });

  it("gives a share of the visits in a third, and none where fewer were made than the setting asks for", async () => {
    const others = (days: number, from: string) =>
      Array.from({ length: days }, (_, i) => one(`${2006 + (i % 15)}-${from}`, { taxon_id: "c", recorder: `r${i}` }));
    await measureRows(
      database,
      [...others(40, "05-30"), one("2011-05-30"), ...others(10, "06-05"), one("2011-06-05")],
      rules,
    );
    const rows = await database.rows<{ third: number; share: number; low: number; high: number }>(
      "SELECT third, share, low, high FROM season_shares WHERE taxon_id = 'a' AND caste = 'queen' ORDER BY third",
    );
    expect(rows.map(({ third, share }) => [third, share])).toEqual([[14, 1 / 41]]);
    // Wilson's interval of 1 in 41, by scipy 1.17.1, binomtest(1, 41).proportion_ci(0.95, "wilson").
    expect(rows[0]?.low).toBeCloseTo(0.0043185316, 8);
    expect(rows[0]?.high).toBeCloseTo(0.1259506206, 8);
  });

  it("tells no shift of all castes together where most visits state none", async () => {
    const rowsOf = Array.from({ length: 12 * 60 }, (_, i) =>
      one(`${2006 + (i % 12)}-05-${String(1 + (i % 25)).padStart(2, "0")}`, {
        kind_id: i % 3 === 0 ? 1 : 0,
        recorder: `r${i}`,
      }),
    );
    await measureRows(database, rowsOf, rules);
    const reasons = await database.rows<{ reason: string }>(
      "SELECT DISTINCT reason FROM season_shifts WHERE taxon_id = 'a' AND caste = 'all' AND adjusted",
    );
    expect(reasons).toEqual([{ reason: "480 of 720 visits state no caste, and castes are about at different times" }]);
  });
});
