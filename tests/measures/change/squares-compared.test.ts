import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import {
  anyRecords,
  anyRules,
  measureRows,
  PLACES,
  type PlaceRow,
  type RecordRow,
  type Rules,
  time,
} from "../judged-records.ts";

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-squares-compared-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
});
afterAll(() => database.close());

const RULES: Rules = {
  within: { a: [], b: [], c: [] },
  periods: [
    { id: "earlier", from: 1990, to: 2005 },
    { id: "recent", from: 2006, to: 2020 },
  ],
  compared: [0, 1],
  minimumVisits: 2,
  provisionalYears: [2020],
  minimumComparable: 1,
};

/** A place in the hectad SK1n, good to 10 km. */
function hectad(number: number): PlaceRow {
  return { ...(PLACES[4] as PlaceRow), hectad: `SK1${number}`, visit_place: `SK1${number}` };
}

function found(taxon_id: string, at: number, date: string, more: Partial<RecordRow> = {}): RecordRow {
  return {
    ...hectad(at),
    ...time(RULES, date),
    taxon_id,
    present: true,
    kind_id: 0,
    recorder: "ann",
    status: "used",
    ...more,
  };
}

/** Two visits that named another taxon, in each period. */
function covered(at: number): RecordRow[] {
  return ["1995-06-01", "1995-06-02", "2010-06-01", "2010-06-02"].map((date) => found("b", at, date));
}

async function trend(taxon: string, set = "main"): Promise<object | undefined> {
  const [row] = await database.rows<object>(
    `SELECT n_from, n_to, n, estimate, judged, reason FROM trends
     WHERE taxon_id = $taxon AND evidence_set = $set AND method = 'squares_compared'`,
    { taxon, set },
  );
  return row;
}

async function states(taxon: string): Promise<Record<string, string | null>> {
  const rows = await database.rows<{ square: string; state: string | null }>(
    "SELECT square, state FROM square_states WHERE taxon_id = $taxon AND resolution_m = 10000 ORDER BY square",
    { taxon },
  );
  return Object.fromEntries(rows.map(({ square, state }) => [square, state]));
}

describe("squaresCompared, worked by hand", () => {
  it("leaves records of provisional years and what is not established on the map and out of the figures", async () => {
    const early = "1995-07-01";
    const late = "2010-07-01";
    const open = "2020-07-01";
    await measureRows(
      database,
      [
        ...[0, 1, 2, 3, 4, 5, 6].flatMap(covered),
        found("a", 0, early),
        found("a", 0, late),
        found("a", 1, early),
        found("a", 2, late),
        // Only this year's record tells of it later: neither refound nor not refound; nor newly found.
        found("a", 3, early),
        found("a", 3, open),
        found("a", 4, open),
        // A stray is a dot, and no gain; nor is a square that only strays were in before.
        found("a", 5, late, { established: false }),
        found("a", 6, early, { established: false }),
        found("a", 6, late),
      ],
      RULES,
    );
    expect(await states("a")).toEqual({
      SK10: "retained",
      SK11: "lost",
      SK12: "gained",
      SK13: "retained",
      SK14: "not_comparable_since",
      SK15: "not_comparable_since",
      SK16: "retained",
    });
    // By hand: SK10 in both, SK11 not refound, SK12 newly found: (1 − 1) / 2.
    expect(await trend("a")).toEqual({ n_from: 2, n_to: 2, n: 3, estimate: 0, judged: true, reason: "" });
    // With provisional years SK13 is in both and SK14 newly found: (2 − 1) / 3.
    expect(await trend("a", "with_provisional_years")).toEqual({
      ...{ n_from: 3, n_to: 4, n: 5, judged: true, reason: "" },
      estimate: 100 / 3,
    });
    const [counts] = await database.rows(
      "SELECT retained, gained, lost, recorded_both_unsettled, not_comparable_since FROM change_counts WHERE taxon_id = 'a' AND territory = 'all' AND resolution_m = 10000 AND minimum_visits = 2",
    );
    expect(counts).toEqual({ retained: 1, gained: 1, lost: 1, recorded_both_unsettled: 2, not_comparable_since: 2 });
  });

  it("lets no visit of a provisional year cover a square", async () => {
    const later = ["2010-06-01", "2020-06-02"].map((date) => found("b", 0, date));
    await measureRows(database, [...covered(0).slice(0, 2), ...later, found("a", 0, "1995-07-01")], RULES);
    expect(await states("a")).toEqual({ SK10: "not_comparable_before" });
    expect(await trend("a")).toMatchObject({ n: 0, judged: false, reason: "no comparable squares" });
    expect(await trend("a", "with_provisional_years")).toMatchObject({ n_from: 1, n_to: 0, n: 1, estimate: -100 });
  });

  it("shows what a class of records carries: a loss that only a museum's specimens make", async () => {
    const specimen = found("a", 0, "1995-07-01", { source: "museum" });
    await measureRows(
      database,
      [...covered(0), ...covered(1), specimen, found("a", 1, "1995-07-01"), found("a", 1, "2010-07-01")],
      RULES,
    );
    expect(await trend("a")).toMatchObject({ n: 2, estimate: -50 });
    expect(await trend("a", "without_lots")).toMatchObject({ n: 1, estimate: 0 });
    expect(await trend("a", "complete_lists")).toMatchObject({
      judged: false,
      reason: "no square in the earlier period from this part of the records",
    });
  });

  it("calls a taxon without a square in the earlier period a newcomer, and tells how it spread", async () => {
    const spread = [
      found("a", 0, "2007-07-01"),
      found("a", 1, "2009-07-01"),
      found("a", 0, "2009-07-01"),
      found("a", 2, "2020-07-01"),
    ];
    await measureRows(database, [...[0, 1, 2].flatMap(covered), ...spread], RULES);
    expect(await trend("a")).toMatchObject({
      ...{ n_from: 0, n_to: 2, n: 2, estimate: null, judged: false },
      reason: "it is a newcomer: no square in the earlier period",
    });
    expect(await trend("c")).toMatchObject({ n: 0, judged: false, reason: "no square in either period" });
    expect(await database.rows("SELECT * EXCLUDE (taxon_id) FROM spread WHERE taxon_id = 'a' ORDER BY year")).toEqual([
      { year: 2007, squares_new: 1, squares_total: 1, provisional: false },
      { year: 2009, squares_new: 1, squares_total: 2, provisional: false },
      { year: 2020, squares_new: 1, squares_total: 3, provisional: true },
    ]);
  });

  it("gives the share of covered squares that hold it, with Wilson's interval", async () => {
    const three = [...Array(10).keys()].slice(0, 3).map((at) => found("a", at, "1995-07-01"));
    await measureRows(database, [...[...Array(10).keys()].flatMap(covered), ...three], RULES);
    const [first, second] = await database.rows<{ n: number; estimate: number; low: number; high: number }>(
      "SELECT n, estimate, low, high FROM series WHERE taxon_id = 'a' AND method = 'squares_compared' ORDER BY time",
    );
    // 3 of 10: R's prop.test(3, 10, correct = FALSE) gives 0.107791 to 0.603222, six places.
    expect([first?.n, first?.estimate]).toEqual([10, 30]);
    expect(first?.low).toBeCloseTo(10.7791, 4);
    expect(first?.high).toBeCloseTo(60.3222, 4);
    expect([second?.n, second?.estimate, second?.low]).toEqual([10, 0, 0]);
  });

  it("tells nothing of a taxon whose places are withheld", async () => {
    const records = [...covered(0), found("a", 0, "1995-07-01"), found("a", 0, "2010-07-01")];
    const entry = { taxonID: "a", level: "withheld" as const, territories: [], castes: [], months: [] };
    await measureRows(database, records, RULES, [entry]);
    expect(await trend("a")).toMatchObject({ judged: false, reason: "its places are withheld" });
    expect(await database.rows("SELECT * FROM series WHERE taxon_id = 'a'")).toEqual([]);
  });
});

describe("squaresCompared", () => {
  it("agrees with the counted squares where both are of the main evidence", async () => {
    const input = anyRules
      .filter(({ compared }) => compared !== null)
      .chain((rules) => fc.tuple(fc.constant(rules), anyRecords(rules)));
    await fc.assert(
      fc.asyncProperty(input, async ([rules, records]) => {
        await measureRows(database, records, rules);
        const apart = await database.rows(
          `SELECT * FROM trends AS t JOIN change_counts AS c USING (taxon_id, from_period, to_period)
           WHERE t.method = 'squares_compared' AND t.evidence_set = 'main' AND c.resolution_m = 10000 AND c.territory = 'all'
             AND c.minimum_visits = (SELECT minimum_visits FROM rules)
             AND (t.n <> c.retained + c.gained + c.lost OR t.n_from <> c.retained + c.lost OR t.n_to <> c.retained + c.gained)`,
        );
        expect(apart).toEqual([]);
      }),
      { numRuns: 6 },
    );
  });
});
