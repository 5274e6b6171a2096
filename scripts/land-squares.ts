/**
 * Makes `content/land-squares.csv`, the list of squares that touch land, from `content/basemap/land-detail.geojson`.
 * One row a 10 km square, with the letters of its 2 km squares that touch land.
 *
 *   node scripts/land-squares.ts
 */
import { readFileSync, writeFileSync } from "node:fs";
import type { MultiPolygon, Polygon, Position } from "geojson";
import type { Grid, GridId } from "../src/grids/grid.ts";
import { gridNamed } from "../src/grids/index.ts";
import { columnOf, type Metres, rowOf, squaresTouched } from "./squares-touched.ts";

const TETRAD = 2000;
const HECTAD = 10_000;
const LAND = new URL("../content/basemap/land-detail.geojson", import.meta.url);
const LIST = new URL("../content/land-squares.csv", import.meta.url);

/** Which grid each territory of the base map is recorded on. */
const GRIDS: Readonly<Record<string, GridId>> = {
  britain: "british",
  ireland: "irish",
  "channel-islands": "channel-islands",
};

/** Coordinate system of each of these grids. */
const CRS: Readonly<Partial<Record<GridId, string>>> = {
  british: "EPSG:27700",
  irish: "EPSG:29903",
  "channel-islands": "EPSG:23030",
};

interface Territory {
  properties: { territory: string };
  geometry: Polygon | MultiPolygon;
}

/** The rows of the list for one territory: grid, territory, 10 km square, letters of 2 km squares. */
function rowsOf({ properties, geometry }: Territory): string[] {
  const grid = gridNamed(GRIDS[properties.territory] as GridId);
  const polygons = geometry.type === "Polygon" ? [geometry.coordinates] : geometry.coordinates;
  const letters = new Map<string, string[]>();
  for (const polygon of polygons) {
    const rings = polygon.map((ring) => ring.map((point) => metresOf(grid, point)));
    for (const key of squaresTouched(rings, TETRAD)) {
      addTetrad(letters, grid, columnOf(key) * TETRAD, rowOf(key) * TETRAD);
    }
  }
  return [...letters]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([hectad, found]) => `${grid.id},${properties.territory},${hectad},${[...new Set(found)].sort().join("")}`);
}

function metresOf(grid: Grid, position: Position): Metres {
  const { easting, northing } = grid.project(position[0] as number, position[1] as number);
  return [easting, northing];
}

function addTetrad(letters: Map<string, string[]>, grid: Grid, easting: number, northing: number): void {
  const middle = { crs: CRS[grid.id] as string, easting: easting + TETRAD / 2, northing: northing + TETRAD / 2 };
  const tetrad = grid.squareAt(middle, TETRAD);
  const hectad = grid.squareAt(middle, HECTAD);
  if (!tetrad || !hectad) {
    throw new Error(`no ${grid.id} square at ${easting} ${northing}, where the base map has land`);
  }
  const name = grid.format(hectad);
  letters.set(name, [...(letters.get(name) ?? []), grid.format(tetrad).slice(-1)]);
}

const land = JSON.parse(readFileSync(LAND, "utf8")) as { features: Territory[] };
const rows = land.features.flatMap(rowsOf);
writeFileSync(LIST, `grid,territory,hectad,tetrads\n${rows.join("\n")}\n`);
console.log(`land-squares.csv → ${rows.length} squares of 10 km`);
