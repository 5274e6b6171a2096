import { type Database, sqlBeside } from "../../engine/database.ts";
import { fillColumns, fillRows } from "../../engine/fill-rows.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { fillExpected } from "./expected-taxa.ts";
import { nearSquares } from "./near-squares.ts";

/** Tables that `measureNeighbourhood` leaves for publishing. */
export const NEIGHBOURHOOD_TABLES = [
  "neighbourhood_effort",
  "neighbourhood_frequencies",
  "expected_taxa",
  "wanted_squares",
] as const;

/** How far a neighbourhood reaches, in km between centres: there the weight of a square has fallen to 0. */
export const REACH_KM = 40;
/** How far a nearest recorded square is looked for, in km between centres. */
export const NEAREST_KM = 150;
/** Covered squares around a square below which nothing is expected in it. */
export const LEAST_COVERED = 5;
/** Tetrads with land, of the 25 of a square, below which nothing is expected in it: the squares around have more room. */
export const LEAST_LAND_TETRADS = 5;

/**
 * Measures what is recorded around each 10 km square, what is expected in it and not yet found, and which squares want a
 * visit. Needs the sightings, visits, lists, coverage, season and `square_places`: all made from the public copy of the
 * records, so that nothing here depends on where a record shown coarser really is.
 *
 * @example await measureNeighbourhood(database, scheme) // leaves NEIGHBOURHOOD_TABLES
 */
export async function measureNeighbourhood(
  database: Database,
  scheme: Pick<Scheme, "settings" | "landSquares">,
): Promise<void> {
  await fillNearHectads(database, scheme);
  await database.run(sqlBeside(import.meta.url, "neighbourhood.sql"));
  await database.run(sqlBeside(import.meta.url, "expected.sql"));
  await fillExpected(database, scheme.settings);
}

/** Squares as numbers, and pairs of those that lie near each other, worked out once for all taxa. */
async function fillNearHectads(database: Database, { landSquares }: Pick<Scheme, "landSquares">): Promise<void> {
  const narrow = new Set(
    (landSquares ?? [])
      .filter(({ tetrads }) => tetrads.length < LEAST_LAND_TETRADS)
      .map(({ grid, hectad }) => `${grid} ${hectad}`),
  );
  const squares = await database.rows<{
    grid: string;
    square: string;
    on_land: boolean;
    latitude: number;
    longitude: number;
  }>(
    "SELECT grid, square, on_land, latitude, longitude FROM square_places WHERE resolution_m = 10000 ORDER BY grid, square",
  );
  const columns = { no: "integer", grid: "text", square: "text", enough_land: "boolean" } as const;
  await fillRows(
    database,
    "hectad_numbers",
    columns,
    squares.map(({ grid, square, on_land }, no) => ({
      ...{ no, grid, square },
      enough_land: on_land && !narrow.has(`${grid} ${square}`),
    })),
  );
  const { of, near, km } = nearSquares(squares, NEAREST_KM);
  const pairs = { of_square: "integer", near_square: "integer", km: "integer" } as const;
  await fillColumns(database, "near_hectads", pairs, { of_square: of, near_square: near, km });
  const rules = { reach_km: "integer", least_covered: "integer" } as const;
  await fillRows(database, "near_rules", rules, [{ reach_km: REACH_KM, least_covered: LEAST_COVERED }]);
}
