import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../src/engine/database.ts";
import {
  anyRecords,
  anyRules,
  measureRows,
  PLACES,
  type PlaceRow,
  type RecordRow,
  type Rules,
  time,
} from "./judged-records.ts";
import { plainMeasures } from "./plain-measures.ts";

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-measures-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
});
afterAll(() => database.close());

/** Tables to compare: what to ask for, in the shape the plain measures give. */
const ASKED: Readonly<Record<string, string>> = {
  taxon_squares:
    "SELECT taxon_id, resolution_m, grid || ' ' || square AS square, period, records, visits, first_year, last_year FROM taxon_squares",
  square_effort: "SELECT * EXCLUDE (territory, grid, square), grid || ' ' || square AS square FROM square_effort",
  period_effort: "SELECT * FROM period_effort",
  square_samples: "SELECT * EXCLUDE (territory, grid, square), grid || ' ' || square AS square FROM square_samples",
  coverage_rules: "SELECT * FROM coverage_rules",
  square_states: `SELECT taxon_id, resolution_m, territory, grid || ' ' || square AS square, recorded_ever, recorded_from, recorded_to,
      covered_from, covered_to, state FROM all_states`,
  change_counts: "SELECT * FROM change_counts",
  taxon_coverage: "SELECT taxon_id, resolution_m, grid || ' ' || square AS square, period FROM taxon_coverage",
  taxon_season: "SELECT * FROM taxon_season",
  season_left_out: "SELECT * FROM season_left_out",
  season_all: "SELECT * FROM season_all",
  season_effort: "SELECT * FROM season_effort",
  taxon_years: "SELECT * FROM taxon_years",
  effort_years: "SELECT * FROM effort_years",
  taxon_totals: "SELECT * FROM taxon_totals",
  off_map: "SELECT * FROM off_map",
  tetrad_shares: "SELECT * FROM tetrad_shares",
  trends:
    "SELECT taxon_id, evidence_set, from_period, to_period, n_from, n_to, n, judged, estimate FROM trends WHERE method = 'squares_compared'",
  series: "SELECT taxon_id, time, n, estimate FROM series WHERE method = 'squares_compared'",
  spread: "SELECT * FROM spread",
};

/** Rows without the order of rows and of columns. */
function asSet(rows: readonly object[]): string[] {
  return rows.map((row) => JSON.stringify(Object.entries(row).sort(([one], [other]) => (one < other ? -1 : 1)))).sort();
}

async function measured(records: readonly RecordRow[], rules: Rules): Promise<Record<string, string[]>> {
  await measureRows(database, records, rules);
  const tables = await Promise.all(
    Object.entries(ASKED).map(async ([name, sql]) => [name, asSet(await database.rows<object>(sql))] as const),
  );
  return Object.fromEntries(tables);
}

describe("measure, against the definitions worked out record by record", () => {
  it("gives the same squares, effort, coverage, states, change, seasons, years and totals", async () => {
    const input = anyRules.chain((rules) => fc.tuple(fc.constant(rules), anyRecords(rules)));
    await fc.assert(
      fc.asyncProperty(input, async ([rules, records]) => {
        const plain = plainMeasures(records, rules);
        expect(await measured(records, rules)).toEqual(
          Object.fromEntries(Object.entries(plain).map(([name, rows]) => [name, asSet(rows)])),
        );
      }),
      { numRuns: 25 },
    );
  });

  it("counts every square in exactly one class for every taxon", async () => {
    const input = anyRules
      .filter(({ compared }) => compared !== null)
      .chain((rules) => fc.tuple(fc.constant(rules), anyRecords(rules)));
    await fc.assert(
      fc.asyncProperty(input, async ([rules, records]) => {
        await measureRows(database, records, rules);
        const wrong = await database.rows(
          `SELECT c.taxon_id FROM change_counts AS c JOIN
             (SELECT resolution_m, count(*) AS squares FROM visited_squares GROUP BY resolution_m) AS v USING (resolution_m)
           WHERE territory = 'all' AND from_period = (SELECT from_period FROM compared) AND to_period = (SELECT to_period FROM compared)
             AND minimum_visits = (SELECT minimum_visits FROM rules)
             AND retained + gained + lost + recorded_both_not_covered + recorded_both_unsettled + not_comparable_since + not_comparable_before
             + covered_both_no_record + covered_one_no_record + covered_neither
             + (SELECT count(*) FROM all_states AS s WHERE s.taxon_id = c.taxon_id AND s.resolution_m = c.resolution_m AND recorded_ever AND state IS NULL) <> squares`,
        );
        expect(wrong).toEqual([]);
      }),
      { numRuns: 10 },
    );
  });

  it("never lets a taxon's own records, or those of its groups and members, change what is covered for it", async () => {
    const input = anyRules.chain((rules) => fc.tuple(fc.constant(rules), anyRecords(rules, 30), anyRecords(rules, 15)));
    const covered = () =>
      database.rows<{ square: string }>(
        "SELECT resolution_m, grid || square AS square, covered_from, covered_to FROM all_states WHERE taxon_id = 'a' AND (covered_from OR covered_to) ORDER BY ALL",
      );
    await fc.assert(
      fc.asyncProperty(input, async ([rules, records, more]) => {
        const lineage = new Set(["a", "ab", "abc", "all"]);
        await measureRows(database, records, rules);
        const before = await covered();
        await measureRows(
          database,
          [...records, ...more.filter(({ taxon_id, present }) => lineage.has(taxon_id) || !present)],
          rules,
        );
        expect(await covered()).toEqual(before);
      }),
      { numRuns: 12 },
    );
  });
});

const RULES: Rules = {
  within: { lucorum: ["white-tailed"], terrestris: ["white-tailed"], "white-tailed": [], pascuorum: [] },
  periods: [
    { id: "earlier", from: 1990, to: 2005 },
    { id: "recent", from: 2006, to: 2020 },
  ],
  compared: [0, 1],
  minimumVisits: 2,
};
const HERE = PLACES[0] as PlaceRow;

function found(taxon_id: string, date: string, more: Partial<RecordRow> = {}): RecordRow {
  return {
    ...HERE,
    ...time(RULES, date),
    taxon_id,
    present: true,
    kind_id: 0,
    recorder: "ann",
    status: "used",
    ...more,
  };
}

/** Two visits of another taxon in each period: the square is covered for all but that one. */
const COVERING = ["1995-06-01", "1995-06-02", "2010-06-01", "2010-06-02"].map((date) => found("pascuorum", date));

async function stateOf(taxon: string): Promise<string | null | undefined> {
  const [row] = await database.rows<{ state: string | null }>(
    "SELECT state FROM all_states WHERE taxon_id = $taxon AND resolution_m = 10000",
    { taxon },
  );
  return row?.state;
}

describe("measure, worked by hand", () => {
  it("lets a record of a group beside one of its members count for the group alone", async () => {
    await measureRows(
      database,
      [found("white-tailed", "1995-06-01"), found("lucorum", "2010-06-01"), ...COVERING],
      RULES,
    );
    expect(await stateOf("white-tailed")).toBe("retained");
    expect(await stateOf("lucorum")).toBe("gained");
    expect(await stateOf("terrestris")).toBeNull();
    const totals = await database.rows("SELECT taxon_id, records FROM taxon_totals ORDER BY taxon_id");
    expect(totals).toEqual([
      { taxon_id: "lucorum", records: 1 },
      { taxon_id: "pascuorum", records: 4 },
      { taxon_id: "white-tailed", records: 2 },
    ]);
  });

  it("makes no gain from a square that was covered later only", async () => {
    await measureRows(database, [found("lucorum", "2010-06-01"), ...COVERING.slice(1)], RULES);
    expect(await stateOf("lucorum")).toBe("not_comparable_since");
    await measureRows(database, [found("lucorum", "2010-06-01"), ...COVERING], RULES);
    expect(await stateOf("lucorum")).toBe("gained");
  });

  it("makes no loss from visits that found nothing but the taxon's own group", async () => {
    const group = ["2010-06-01", "2010-06-02", "2010-06-03"].map((date) => found("white-tailed", date));
    await measureRows(database, [found("lucorum", "1995-06-01"), ...COVERING.slice(0, 2), ...group], RULES);
    expect(await stateOf("lucorum")).toBe("not_comparable_before");
  });

  it("makes no loss from a survey that reports only what it did not find", async () => {
    const survey = ["2010-06-01", "2010-06-02", "2010-06-03"].map((date) => found("lucorum", date, { present: false }));
    await measureRows(database, [found("lucorum", "1995-06-01"), ...COVERING.slice(0, 2), ...survey], RULES);
    expect(await stateOf("lucorum")).toBe("not_comparable_before");
    expect(
      await database.rows("SELECT period, visits FROM square_effort WHERE resolution_m = 10000 ORDER BY period"),
    ).toEqual([
      { period: 0, visits: 2 },
      { period: 1, visits: 3 },
    ]);
  });

  it("takes a list of one party on one day in one kilometre for one visit, and two days or parties for two", async () => {
    const party = [
      found("lucorum", "2010-06-01"),
      found("pascuorum", "2010-06-01"),
      found("terrestris", "2010-06-01", { recorder: "bo" }),
      found("lucorum", "2010-06-03"),
    ];
    await measureRows(database, party, RULES);
    expect(await database.rows("SELECT visits, records FROM square_effort WHERE resolution_m = 2000")).toEqual([
      { visits: 3, records: 4 },
    ]);
  });

  it("counts a square that lies in two territories once", async () => {
    await measureRows(
      database,
      [found("lucorum", "2010-06-01"), found("lucorum", "2010-06-01", { ...(PLACES[5] as PlaceRow) })],
      RULES,
    );
    const counts = await database.rows(
      "SELECT DISTINCT territory, squares_to FROM change_counts WHERE taxon_id = 'lucorum' AND resolution_m = 10000 ORDER BY territory",
    );
    expect(counts).toEqual([
      { territory: "all", squares_to: 1 },
      { territory: "britain", squares_to: 1 },
    ]);
  });

  it("says nothing of change with one period", async () => {
    await measureRows(database, [found("lucorum", "2010-06-01"), ...COVERING], {
      ...RULES,
      periods: RULES.periods.slice(1),
      compared: null,
    });
    expect(await database.rows("SELECT DISTINCT state FROM all_states")).toEqual([{ state: null }]);
  });
});
