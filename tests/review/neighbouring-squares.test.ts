import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { type Database, openDatabase } from "../../src/engine/database.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { layNeighbours } from "../../src/review/neighbouring-squares.ts";
import { schemeOf } from "../records/interpreting.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

let database: Database;
beforeEach(async () => {
  database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
});
afterEach(() => database.close());

async function pairs(squares: readonly [grid: string, hectad: string][], kilometres: number) {
  const filler = await database.fill("places", { grid: "text", hectad: "text" });
  filler.add({ grid: squares.map(([grid]) => grid), hectad: squares.map(([, hectad]) => hectad) });
  filler.done();
  await layNeighbours(database, schemeOf([{ id: "walks", files: "walks.csv" }]), kilometres);
  return database.rows<{ here: string; there: string; km: number }>(
    `SELECT a.hectad AS here, b.hectad AS there, n.km FROM neighbouring_squares AS n
     JOIN review_squares AS a ON a.square_id = n.square_id JOIN review_squares AS b ON b.square_id = n.other_id ORDER BY here, there`,
  );
}

it("finds every pair of squares within the distance and no other, each both ways", async () => {
  const found = await pairs(
    [
      ["british", "SP50"],
      ["british", "SP60"],
      ["british", "SP61"],
      ["british", "TQ28"],
    ],
    60,
  );
  // SP50 and SP60 are neighbours, 10 km apart on the grid, SP50 and SP61 √200 km; TQ28 is 20 km south and 70 km
  // east of SP50, √(70² + 20²) = 72.8 km. The grid's scale there is within 0.04 % of 1, the sphere within 0.6 %.
  const km = (here: string, there: string) => found.find((pair) => pair.here === here && pair.there === there)?.km;
  expect(km("SP50", "SP60")).toBeGreaterThan(9.9);
  expect(km("SP50", "SP60")).toBeLessThan(10.1);
  expect(km("SP61", "SP50")).toBeGreaterThan(14.0);
  expect(km("SP61", "SP50")).toBeLessThan(14.3);
  expect(km("SP50", "SP50")).toBe(0);
  expect(km("SP50", "TQ28")).toBeUndefined();
  expect(found).toHaveLength(3 * 3 + 1);
});

it("measures across grids, as the haversine formula does", async () => {
  const found = await pairs(
    [
      ["british", "NX05"],
      ["irish", "J48"],
    ],
    60,
  );
  // Centres by the grids' own inverse projections, which their tests hold against outside values; the distance by another
  // formula (haversine) than the chord of the code.
  const [a, b] = [
    gridNamed("british").unproject({ crs: "EPSG:27700", easting: 205_000, northing: 555_000 }),
    gridNamed("irish").unproject({ crs: "EPSG:29903", easting: 345_000, northing: 385_000 }),
  ];
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  const half = (from: number, to: number) => Math.sin(radians(to - from) / 2) ** 2;
  const haversine = half(a[1], b[1]) + Math.cos(radians(a[1])) * Math.cos(radians(b[1])) * half(a[0], b[0]);
  const km = 2 * 6371.0088 * Math.asin(Math.sqrt(haversine));
  expect(km).toBeGreaterThan(20);
  expect(found.find(({ here, there }) => here === "J48" && there === "NX05")?.km).toBeCloseTo(km, 6);
});
