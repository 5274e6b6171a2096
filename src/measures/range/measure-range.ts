import { type ColumnType, type Database, sqlBeside } from "../../engine/database.ts";
import { fillRows } from "../../engine/fill-rows.ts";
import type { PlacingTerritory } from "../../records/place.ts";
import { extentOfOccurrence, type PlacedPosition } from "./extent-of-occurrence.ts";
import { type RangeCounts, rangeFigures } from "./range-figures.ts";
import { placeCorners } from "./square-corners.ts";

type CountRow = RangeCounts & {
  scope: number;
  taxon_id: string;
  territory: string;
  period: number;
  left_out: number;
  grids: string;
};

const COLUMNS: Readonly<Record<string, ColumnType>> = {
  taxon_id: "text",
  territory: "text",
  period: "integer",
  grids: "text",
  records: "integer",
  held_back: "integer",
  left_out: "integer",
  tetrads: "integer",
  hectads: "integer",
  hectads_without_tetrad: "integer",
  occupancy_km2: "double",
  occupancy_reason: "text",
  occupancy_below_km2: "integer",
  extent_km2: "double",
  extent_reason: "text",
  extent_raised: "boolean",
  extent_below_km2: "integer",
};

/**
 * Fills `ranges`: area of occupancy and extent of occurrence of each taxon, by period (−1 for all dates) and by territory
 * (all for the whole atlas), with the numbers they rest on. Needs the view `evidence` and `closure`. The convex polygon goes
 * round the corners of the occupied 2 km squares, and of the 10 km squares in which no record reaches 2 km.
 *
 * @param territories of the scheme, with their grids
 */
export async function measureRange(database: Database, territories: readonly PlacingTerritory[]): Promise<void> {
  await database.run(sqlBeside(import.meta.url, "range.sql"));
  const polygons = await polygonAreas(database, territories);
  const counts = await database.rows<CountRow>("SELECT * FROM range_counts ORDER BY scope");
  const rows = counts.map((row) => ({ ...row, ...rangeFigures(row, polygons.get(row.scope) ?? null) }));
  await fillRows(database, "ranges", COLUMNS, rows);
}

/** Area of the convex polygon of every taxon, unit and period; null where its squares do not fit one plane. */
async function polygonAreas(
  database: Database,
  territories: readonly PlacingTerritory[],
): Promise<Map<number, number | null>> {
  const grids = new Map<string, PlacingTerritory["grid"]>(territories.map(({ grid }) => [grid.id, grid]));
  const squares = await database.rows<{ grid: string; square: string }>(
    "SELECT grid, square FROM range_places ORDER BY place",
  );
  const corners = placeCorners(squares, grids);
  const areas = new Map<number, number | null>();
  let [current, points, whole] = [-1, [] as PlacedPosition[], true];
  const close = () => {
    if (current >= 0) areas.set(current, whole ? extentOfOccurrence(points) : null);
  };
  await database.batches("SELECT scope, place FROM range_squares ORDER BY scope, place", ({ scope, place }, size) => {
    for (let index = 0; index < size; index += 1) {
      if (scope?.[index] !== current) {
        close();
        [current, points, whole] = [Number(scope?.[index]), [], true];
      }
      const own = corners[Number(place?.[index])];
      if (own === undefined) whole = false;
      else points.push(...own);
    }
  });
  close();
  return areas;
}
