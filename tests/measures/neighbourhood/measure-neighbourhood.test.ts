import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { isRefusal } from "../../../src/grids/grid.ts";
import { gridNamed } from "../../../src/grids/index.ts";
import { centreOf } from "../../../src/grids/squares.ts";
import { greatCircleKm } from "../../../src/measures/neighbourhood/near-squares.ts";
import { measureRows, type RecordRow, type Rules, time } from "../judged-records.ts";
import { distinct, upwards, visitOf } from "../plain-records.ts";

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-neighbourhood-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
});
afterAll(() => database.close());

const RULES: Rules = {
  within: { a: ["ab"], b: ["ab"], ab: [], c: [] },
  periods: [
    { id: "earlier", from: 1990, to: 2005 },
    { id: "recent", from: 2006, to: 2020 },
  ],
  compared: [0, 1],
  minimumVisits: 1,
};
/** A block of nine squares, one 70 km away, and one on another grid some 20 km from a twelfth. */
const HECTADS = ["SK11", "SK12", "SK13", "SK21", "SK22", "SK23", "SK31", "SK32", "SK33", "SK92", "NW90", "J67"];

const placeOf = (hectad: string) => ({
  ...{ territory: hectad.startsWith("J") ? "ireland" : "britain", grid: hectad.startsWith("J") ? "irish" : "british" },
  ...{ hectad, hectad_reason: null, tetrad: null, tetrad_reason: "too imprecise", visit_place: hectad },
});

const record = (hectad: string, taxon_id: string, day: string, changed: Partial<RecordRow> = {}): RecordRow => ({
  ...{ ...placeOf(hectad), ...time(RULES, day), taxon_id, present: true, kind_id: 0, recorder: "ann", status: "used" },
  ...changed,
});

const anyRecord: fc.Arbitrary<RecordRow> = fc
  .record({
    hectad: fc.constantFrom(...HECTADS),
    taxon: fc.constantFrom("a", "b", "ab", "c"),
    day: fc.constantFrom("1995-06-11", "2010-06-11", "2011-06-11", "2012-07-21", "2021-06-11"),
    source: fc.constantFrom("walks", "walks", "walks", "week", "survey", "museum"),
    present: fc.constantFrom(true, true, true, false),
    recorder: fc.constantFrom("ann", "bob"),
    established: fc.constantFrom(true, true, true, false),
  })
  .map(({ hectad, taxon, day, ...changed }) => record(hectad, taxon, day, changed));

function kmBetween(one: string, other: string): number {
  const centre = (code: string) => {
    const grid = gridNamed(code.startsWith("J") ? "irish" : "british");
    const square = grid.parse(code);
    if (isRefusal(square)) throw new Error(code);
    const [longitude, latitude] = grid.unproject(centreOf(square));
    return { latitude, longitude };
  };
  return greatCircleKm(centre(one), centre(other));
}
const sum = (numbers: readonly number[]) => numbers.reduce((all, number) => all + number, 0);

/** Frequencies worked out again from their definition, one visit at a time. */
function plainNeighbourhood(records: readonly RecordRow[]) {
  const places = [...new Set(records.map(({ hectad }) => hectad ?? ""))].sort();
  const classes: Record<string, string> = { week: "mass_event", survey: "targeted", museum: "lot" };
  const everyday = records.filter((own) => {
    const visit = records.filter((other) => visitOf(other) === visitOf(own));
    return visit.some(({ source = "walks" }) => classes[source] === undefined) && own.period === 1;
  });
  const visitsTo = (hectad: string, taxon?: string) =>
    distinct(
      everyday
        .filter((own) => own.hectad === hectad)
        .filter((own) => taxon === undefined || (own.present && upwards(own.taxon_id, RULES).has(taxon)))
        .map(visitOf),
    );
  return places.map((square) => {
    const near = places.filter((other) => kmBetween(square, other) < 40);
    const weighted = (taxon?: string) =>
      sum(near.map((other) => (40 - kmBetween(square, other)) * visitsTo(other, taxon)));
    const taxa = Object.keys(RULES.within).flatMap((taxon) => {
      const own = records.filter((one) => one.present && upwards(one.taxon_id, RULES).has(taxon));
      const away = own.map(({ hectad }) => kmBetween(square, hectad ?? "")).filter((km) => km <= 150);
      const here = own.filter(({ hectad }) => hectad === square);
      if (away.length === 0) return [];
      return [
        {
          ...{ square, taxon_id: taxon, here: here.length, nearest_km: Math.min(...away) },
          last_year: here.length === 0 ? null : Math.max(...here.map(({ last_year }) => last_year)),
          frequency: weighted() === 0 ? 0 : Math.floor((100_000 * weighted(taxon)) / weighted() + 0.5),
        },
      ];
    });
    const effort = { square, weighted_visits: weighted(), visits: sum(near.map((other) => visitsTo(other))) };
    return { effort: { ...effort, squares: near.filter((other) => visitsTo(other) > 0).length }, taxa };
  });
}

describe("measureNeighbourhood", () => {
  it("gives the frequencies, efforts and distances that the definitions give, over grids", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyRecord, { minLength: 1, maxLength: 60 }), async (records) => {
        await measureRows(database, records, RULES);
        const plain = plainNeighbourhood(records);
        const [effort, taxa] = await Promise.all([
          database.rows("SELECT square, weighted_visits, visits, squares FROM neighbourhood_effort ORDER BY square"),
          database.rows(
            "SELECT square, taxon_id, here, nearest_km, last_year, frequency FROM neighbourhood_frequencies ORDER BY square, taxon_id",
          ),
        ]);
        expect(effort).toEqual(plain.map((one) => one.effort));
        expect(taxa).toEqual(plain.flatMap((one) => one.taxa.toSorted((a, b) => (a.taxon_id < b.taxon_id ? -1 : 1))));
      }),
      { numRuns: 12 },
    );
  }, 60_000);

  it("expects no taxon that was recorded there lately, nor a group beside its member, and ranks squares 1 to n", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyRecord, { minLength: 60, maxLength: 200 }), async (records) => {
        await measureRows(database, records, RULES);
        const expected = await database.rows<{ square: string; taxon_id: string; [name: string]: unknown }>(
          "SELECT * FROM expected_taxa",
        );
        const has = (square: string, taxon: string) =>
          records.some(
            (own) =>
              own.present && own.period === 1 && own.hectad === square && upwards(own.taxon_id, RULES).has(taxon),
          );
        const keys = new Set(expected.map(({ square, taxon_id }) => `${square} ${taxon_id}`));
        for (const { square, taxon_id, ...row } of expected) {
          expect(has(square, taxon_id)).toBe(false);
          if (taxon_id === "ab") expect(keys.has(`${square} a`) || keys.has(`${square} b`)).toBe(false);
          expect(row["squares_with"]).toBeLessThanOrEqual(Number(row["squares_near"]));
          expect(row["chance"]).toBeLessThanOrEqual(Number(row["share"]));
        }
        const wanted = await database.rows<{ square: string; rank: number; gain: number }>(
          "SELECT square, rank, gain FROM wanted_squares ORDER BY rank",
        );
        expect(wanted.map(({ rank }) => rank)).toEqual(wanted.map((_, index) => index + 1));
        expect(wanted.map(({ gain }) => gain)).toEqual(
          wanted.map(({ gain }) => gain).sort((one, other) => other - one),
        );
        expect(wanted.map(({ square }) => square).sort()).toEqual(
          [...new Set(expected.map(({ square }) => square))].sort(),
        );
      }),
      { numRuns: 10 },
    );
  }, 60_000);

  it("tells what is expected in a square, worked by hand", async () => {
    const around = HECTADS.slice(0, 9).filter((hectad) => hectad !== "SK22");
    const records = [
      ...around.map((hectad) => record(hectad, "a", "2010-06-11")),
      // Beside the middle, in the north and in the south: c on one of two visits.
      ...["SK23", "SK21"].flatMap((hectad) => [record(hectad, "c", "2011-06-11"), record(hectad, "a", "2012-06-11")]),
      record("SK22", "a", "2012-07-21"),
      record("SK22", "c", "1995-07-21"),
    ];
    await measureRows(database, records, RULES);
    // Of eight squares around, four at 10 km (weight 30) and four at 14 km (weight 26), two at 10 km hold c:
    // share = (60 + 40 × 2/9) / (224 + 40) = 0.260943. Of their six visits two recorded it: frequency = 1/3, as in the
    // atlas. One visit missed it: 0.260943 × 2/3 / (1 − 0.260943 + 0.260943 × 2/3) = 0.190542.
    expect(await database.rows("SELECT * FROM expected_taxa WHERE square = 'SK22'")).toEqual([
      {
        ...{ grid: "british", square: "SK22", taxon_id: "c", chance: 191, share: 261, frequency: 333 },
        ...{ squares_near: 8, squares_with: 2, visits_here: 1, last_year: 1995 },
      },
    ]);
    // Gain of three visits: 0.191 × (1 − 0.667³) = 0.134322.
    const [own] = await database.rows<{ gain: number }>("SELECT gain FROM wanted_squares WHERE square = 'SK22'");
    expect(own?.gain).toBe(134);
  });

  it("lets no taxon's own visits cover a square for it, and asks for five covered squares", async () => {
    const around = HECTADS.slice(0, 9).filter((hectad) => hectad !== "SK22");
    const records = [
      ...around.slice(0, 5).map((hectad) => record(hectad, "a", "2010-06-11")),
      ...around.slice(5).map((hectad) => record(hectad, "c", "2010-06-11")),
      ...around.slice(0, 1).map((hectad) => record(hectad, "c", "2010-06-11")),
      record(around[0] ?? "", "a", "2011-06-11"),
      record("SK22", "b", "2010-06-11"),
    ];
    await measureRows(database, records, RULES);
    const asked =
      "SELECT taxon_id, squares_near, squares_with FROM expected_taxa WHERE square = 'SK22' ORDER BY taxon_id";
    // Covered for a: the four squares of c; a square of a alone is not. With four only, nothing is said of a.
    expect(await database.rows(asked)).toEqual([{ taxon_id: "c", squares_near: 5, squares_with: 1 }]);
  });
});
