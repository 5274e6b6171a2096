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
import { upwards } from "../plain-records.ts";

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-range-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
});
afterAll(() => database.close());

const distinct = (values: readonly string[]) => new Set(values).size;

/** Rows of `ranges` from their definition, one record at a time; without the polygon. */
function plainRanges(records: readonly RecordRow[], rules: Rules): object[] {
  const used = records.filter(({ status, present }) => status === "used" && present);
  const territories = ["all", "britain", "man", "ireland"];
  const periods = [-1, ...rules.periods.keys()];
  return Object.keys(rules.within).flatMap((taxon_id) =>
    territories.flatMap((territory) =>
      periods.flatMap((period) => {
        const own = used.filter(
          (record) =>
            upwards(record.taxon_id, rules).has(taxon_id) &&
            (territory === "all" || record.territory === territory) &&
            (period === -1 || record.period === period),
        );
        if (own.length === 0) return [];
        const settled = own.filter(({ established = true }) => established);
        const hectads = settled.flatMap(({ grid, hectad }) => (hectad === null ? [] : `${grid} ${hectad}`));
        const finer = settled.flatMap(({ grid, hectad, tetrad }) => (tetrad === null ? [] : `${grid} ${hectad}`));
        const tetrads = distinct(settled.flatMap(({ grid, tetrad }) => (tetrad === null ? [] : `${grid} ${tetrad}`)));
        return {
          ...{ taxon_id, territory, period, tetrads, records: settled.length, left_out: own.length - settled.length },
          hectads: distinct(hectads),
          hectads_without_tetrad: distinct(hectads.filter((hectad) => !finer.includes(hectad))),
          occupancy_km2: tetrads === 0 ? null : 4 * tetrads,
        };
      }),
    ),
  );
}

const ASKED =
  "SELECT taxon_id, territory, period, tetrads, records, left_out, hectads, hectads_without_tetrad, occupancy_km2 FROM ranges ORDER BY ALL";
const inOrder = (rows: readonly object[]) => rows.map((row) => JSON.stringify(Object.entries(row).sort())).sort();

describe("measureRange", () => {
  it("counts squares, by period and territory, as the definitions do, record by record", async () => {
    const input = anyRules.chain((rules) => fc.tuple(fc.constant(rules), anyRecords(rules, 60)));
    await fc.assert(
      fc.asyncProperty(input, async ([rules, records]) => {
        await measureRows(database, records, rules);
        expect(inOrder(await database.rows<object>(ASKED))).toEqual(inOrder(plainRanges(records, rules)));
        const smaller = await database.rows("SELECT * FROM ranges WHERE extent_km2 < occupancy_km2");
        expect(smaller).toEqual([]);
      }),
      { numRuns: 15 },
    );
  });

  const rules: Rules = {
    within: { a: [], secret: ["a"] },
    periods: [{ id: "all", from: 1990, to: 2020 }],
    compared: null,
    minimumVisits: 1,
  };
  const record = (taxon_id: string, place: PlaceRow, more: Partial<RecordRow> = {}): RecordRow => ({
    ...place,
    ...time(rules, "2013-05-31"),
    ...{ taxon_id, present: true, kind_id: 0, recorder: "ann", status: "used" },
    ...more,
  });
  const at = (index: number) => PLACES[index] as PlaceRow;
  const figures = (taxon: string, territory: string) =>
    database.rows(
      "SELECT tetrads, hectads_without_tetrad AS coarse, occupancy_km2, extent_km2, extent_raised, grids FROM ranges WHERE taxon_id = $taxon AND territory = $territory AND period = -1",
      { taxon, territory },
    );

  it("draws an extent over the sea between two territories for both together alone", async () => {
    await measureRows(database, [record("a", at(0)), record("a", at(7))], rules);
    const [own] = await figures("a", "britain");
    // One square of 2 km: near Rugeley the grid's scale is 0.9996, so its area on the ground is a little over 4 km².
    expect(own).toEqual({
      tetrads: 1,
      coarse: 0,
      occupancy_km2: 4,
      extent_km2: 4,
      extent_raised: false,
      grids: "british",
    });
    const [both] = (await figures("a", "all")) as { extent_km2: number; grids: string }[];
    expect(both?.grids).toBe("british | irish");
    expect(both?.extent_km2).toBeGreaterThan(300);
  });

  it("draws the polygon round a 10 km square where no record reaches 2 km, and counts none of it as occupied", async () => {
    await measureRows(database, [record("a", at(4))], rules);
    const [own] = (await figures("a", "all")) as { extent_km2: number }[];
    expect(own).toMatchObject({ tetrads: 0, coarse: 1, occupancy_km2: null });
    // 100 km² over the scale squared, 0.9996² at the least: 100 to 100.1.
    expect(own?.extent_km2).toBeGreaterThanOrEqual(100);
    expect(own?.extent_km2).toBeLessThanOrEqual(100.1);
  });

  it("leaves out what is not established, and counts provisional years", async () => {
    const records = [record("a", at(0)), record("a", at(7), { established: false })];
    await measureRows(database, records, { ...rules, provisionalYears: [2013] });
    const [row] = await database.rows(
      "SELECT records, left_out, tetrads FROM ranges WHERE taxon_id = 'a' AND territory = 'all' AND period = 0",
    );
    expect(row).toEqual({ records: 1, left_out: 1, tetrads: 1 });
  });

  it("is the same wherever in its 10 km square a record shown at 10 km was made", async () => {
    const told = async (place: number) => {
      await measureRows(database, [record("a", at(1)), record("secret", at(place))], rules, [
        { taxonID: "secret", level: "10 km", territories: [], castes: [], months: [] },
      ]);
      return database.rows("SELECT * FROM ranges ORDER BY taxon_id, territory, period");
    };
    const first = await told(0);
    expect(await told(2)).toEqual(first);
    expect(first.find((row) => (row as { taxon_id: string }).taxon_id === "secret")).toMatchObject({
      ...{
        tetrads: 0,
        held_back: 1,
        occupancy_km2: null,
        occupancy_reason: "its 2 km squares are not shown on purpose",
      },
      extent_km2: expect.closeTo(100, 0) as number,
    });
  });
});
