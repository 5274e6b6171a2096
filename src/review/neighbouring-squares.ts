import { type Database, sqlBeside } from "../engine/database.ts";
import { type Grid, isRefusal } from "../grids/grid.ts";
import { centreOf } from "../grids/squares.ts";
import { placingTerritories } from "../records/record-stage.ts";
import type { Scheme } from "../scheme/scheme.ts";

/** Mean radius of the Earth in kilometres, (2a + b) / 3 of the WGS84 ellipsoid. */
const EARTH_KM = 6371.0088;

/**
 * Lays the tables `review_squares` (every 10 km square with records: square_id, grid, hectad, and its centre as x, y, z in
 * kilometres from the Earth's centre) and `neighbouring_squares` (square_id, other_id, km: pairs up to a distance, each
 * both ways, a square with itself too). Distances are between centres, along great circles of a sphere, so that squares of
 * different grids compare; they are within 0.6 % of the ellipsoid's.
 *
 * @param kilometres greatest distance of a pair
 */
export async function layNeighbours(database: Database, scheme: Scheme, kilometres: number): Promise<void> {
  const grids = new Map<string, Grid>(placingTerritories(scheme).map(({ grid }) => [grid.id, grid]));
  const squares = await database.rows<{ grid: string; hectad: string }>(
    "SELECT DISTINCT grid, hectad FROM places WHERE hectad IS NOT NULL ORDER BY grid, hectad",
  );
  const placed = squares.flatMap(({ grid, hectad }) => {
    const square = grids.get(grid)?.parse(hectad);
    if (square === undefined || isRefusal(square)) return [];
    const [longitude, latitude] = grids.get(grid)?.unproject(centreOf(square)) ?? [0, 0];
    return [{ grid, hectad, latitude, ...onSphere(longitude, latitude) }];
  });
  const column = <Name extends keyof (typeof placed)[number]>(name: Name) => placed.map((square) => square[name]);
  const filler = await database.fill("review_squares", {
    square_id: "integer",
    grid: "text",
    hectad: "text",
    latitude: "double",
    x: "double",
    y: "double",
    z: "double",
  });
  filler.add({
    square_id: placed.map((_, index) => index),
    grid: column("grid"),
    hectad: column("hectad"),
    latitude: column("latitude"),
    x: column("x"),
    y: column("y"),
    z: column("z"),
  });
  filler.done();
  await database.run(
    sqlBeside(import.meta.url, "neighbouring-squares.sql")
      .replaceAll("{kilometres}", String(kilometres))
      .replaceAll("{diameter}", String(2 * EARTH_KM)),
  );
}

/** A WGS84 position as a point on a sphere, in kilometres from its centre. */
function onSphere(longitude: number, latitude: number): { x: number; y: number; z: number } {
  const [east, north] = [(longitude * Math.PI) / 180, (latitude * Math.PI) / 180];
  return {
    x: EARTH_KM * Math.cos(north) * Math.cos(east),
    y: EARTH_KM * Math.cos(north) * Math.sin(east),
    z: EARTH_KM * Math.sin(north),
  };
}
