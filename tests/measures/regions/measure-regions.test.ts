import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { gridNamed } from "../../../src/grids/index.ts";
import type { Region } from "../../../src/scheme/regions-file.ts";
import { measureRows, PLACES, type PlaceRow, type RecordRow, type Rules, time } from "../judged-records.ts";
import { upwards } from "../plain-records.ts";

let database: Database;

beforeAll(async () => {
  const spillFolder = join(tmpdir(), `atlaswright-regions-${process.pid}`);
  mkdirSync(spillFolder, { recursive: true });
  database = await openDatabase({ spillFolder, threads: 2 });
});
afterAll(() => database.close());

/** A region from west to east in metres of the British grid, through SK12, whose tetrad A is west of 412000 and Z east of 418000. */
function strip(id: string, west: number, east: number): Region {
  const corner = (easting: number, northing: number) =>
    gridNamed("british").unproject({ crs: "EPSG:27700", easting, northing });
  const ring = [corner(west, 300_000), corner(east, 300_000), corner(east, 350_000), corner(west, 350_000)];
  const polygon = { type: "Polygon" as const, coordinates: [[...ring, ring[0] as [number, number]]] };
  return { id, name: id, code: "", territory: "", field: "county", polygon };
}
const rules: Rules = {
  within: { a: ["ab"], b: ["ab"], ab: [], secret: ["ab"] },
  periods: [{ id: "all", from: 1990, to: 2020 }],
  compared: null,
  minimumVisits: 1,
  regions: [strip("west", 390_000, 415_000), strip("east", 415_000, 440_000)],
};
const [inWest, , , inEast, inHectad] = PLACES as [PlaceRow, PlaceRow, PlaceRow, PlaceRow, PlaceRow];
const [far, nowhere] = [PLACES[7] as PlaceRow, PLACES[8] as PlaceRow];
const eastern = { ...inEast, tetrad: "SK12Z", tetrad_reason: null };

function record(taxon_id: string, place: PlaceRow, more: Partial<RecordRow> = {}, date = "2013-05-31"): RecordRow {
  return {
    ...place,
    ...time(rules, date),
    taxon_id,
    present: true,
    kind_id: 0,
    recorder: "ann",
    status: "used",
    ...more,
  };
}
const told = (taxon: string) =>
  database.rows(
    "SELECT region_id, records, hectads, tetrads, first_year FROM region_taxa WHERE taxon_id = $taxon ORDER BY region_id",
    { taxon },
  );

describe("measureRegions", () => {
  it("assigns a 2 km square to the region it lies in, and a 10 km square of two regions to none", async () => {
    const records = [
      record("a", inWest),
      record("a", eastern, {}, "2001-06-01"),
      record("a", inHectad, {}, "1995-06-01"),
    ];
    await measureRows(database, records, rules);
    // The oldest record is of the split square: it makes no first year in either region, and counts once in all.
    expect(await told("a")).toEqual([
      { region_id: "east", records: 1, hectads: 1, tetrads: 1, first_year: 2001 },
      { region_id: "not_assigned", records: 1, hectads: 1, tetrads: 0, first_year: 1995 },
      { region_id: "west", records: 1, hectads: 1, tetrads: 1, first_year: 2013 },
    ]);
    expect(await told("ab")).toEqual(await told("a"));
    expect(await database.rows("SELECT basis, records FROM region_bases ORDER BY basis")).toEqual([
      { basis: "boundary", records: 1 },
      { basis: "square", records: 2 },
    ]);
  });

  it("lets the stated region beat the square, and count where there is no square", async () => {
    const stated = { stated: { county: "east" } };
    await measureRows(database, [record("a", inHectad, stated), record("b", nowhere, stated), record("b", far)], rules);
    expect(await told("a")).toEqual([{ region_id: "east", records: 1, hectads: 1, tetrads: 0, first_year: 2013 }]);
    expect(await told("b")).toEqual([
      { region_id: "east", records: 1, hectads: 0, tetrads: 0, first_year: 2013 },
      { region_id: "not_assigned", records: 1, hectads: 1, tetrads: 1, first_year: 2013 },
    ]);
  });

  it("never uses the stated region of a record shown coarser: only the square that is shown counts", async () => {
    const hidden = [{ taxonID: "secret", level: "10 km" as const, territories: [], castes: [], months: [] }];
    const everything = async (county: string, place: PlaceRow) => {
      await measureRows(
        database,
        [record("secret", place, { stated: { county } }), record("a", inWest)],
        rules,
        hidden,
      );
      return [
        await database.rows("SELECT * FROM region_taxa ORDER BY ALL"),
        await database.rows("SELECT * FROM region_totals ORDER BY ALL"),
        await database.rows("SELECT * FROM region_bases ORDER BY ALL"),
      ];
    };
    const first = await everything("west", inWest);
    expect(await everything("east", eastern)).toEqual(first);
    expect(await told("secret")).toEqual([
      { region_id: "not_assigned", records: 1, hectads: 1, tetrads: 0, first_year: 2013 },
    ]);
    // Without the list the two differ, so that the test could see it.
    await measureRows(database, [record("secret", inWest, { stated: { county: "west" } })], rules);
    expect(await told("secret")).toMatchObject([{ region_id: "west" }]);
  });

  it("has a row for each region, and nothing without regions", async () => {
    await measureRows(database, [record("a", inWest)], rules);
    expect(
      await database.rows("SELECT region_id, records, records_stated FROM region_totals ORDER BY region_id"),
    ).toEqual([
      { region_id: "east", records: 0, records_stated: 0 },
      { region_id: "not_assigned", records: 0, records_stated: 0 },
      { region_id: "west", records: 1, records_stated: 0 },
    ]);
    await measureRows(database, [record("a", inWest, { stated: { county: "west" } })], { ...rules, regions: [] });
    for (const table of ["region_taxa", "region_totals", "region_bases", "region_names"])
      expect(await database.rows(`SELECT * FROM ${table}`)).toEqual([]);
  });

  it("counts every record once in each layer, worked out record by record", async () => {
    const any: fc.Arbitrary<RecordRow> = fc
      .record({
        place: fc.constantFrom(inWest, eastern, inHectad, far, nowhere),
        county: fc.constantFrom("", "", "west", "east"),
        taxon: fc.constantFrom("a", "b", "ab"),
        present: fc.constantFrom(true, true, false),
        status: fc.constantFrom("used" as const, "used" as const, "held" as const),
      })
      .map(({ place, county, taxon, ...more }) =>
        record(taxon, place, { ...more, ...(county === "" ? {} : { stated: { county } }) }),
      );
    const regionOf = ({ stated, tetrad }: RecordRow) =>
      stated?.["county"] ?? (tetrad === "SK12A" ? "west" : tetrad === "SK12Z" ? "east" : "not_assigned");
    await fc.assert(
      fc.asyncProperty(fc.array(any, { maxLength: 40 }), async (records) => {
        await measureRows(database, records, rules);
        const used = records.filter(({ present, status }) => present && status === "used");
        for (const taxon of ["a", "b", "ab"]) {
          const own = used.filter(({ taxon_id }) => upwards(taxon_id, rules).has(taxon)).map(regionOf);
          const counts = [...new Set(own)]
            .sort()
            .map((region_id) => ({ region_id, records: own.filter((one) => one === region_id).length }));
          expect(
            (await told(taxon)).map((row) => {
              const { region_id, records: n } = row as { region_id: string; records: number };
              return { region_id, records: n };
            }),
          ).toEqual(counts);
        }
      }),
      { numRuns: 10 },
    );
  });
});
