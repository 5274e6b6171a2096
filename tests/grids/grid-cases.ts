import type { Grid, GridId, Square, SquareSize } from "../../src/grids/grid.ts";
import { isRefusal } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { readReferenceFile } from "../support/reference.ts";

export interface ReferenceRow {
  ref: string;
  easting: number;
  northing: number;
  size: SquareSize;
}

interface GridReferences {
  british: ReferenceRow[];
  irish: ReferenceRow[];
  channel_islands: ReferenceRow[];
  british_100km: Record<string, [number, number]>;
  irish_100km: Record<string, [number, number]>;
  dinty: Record<string, [number, number]>;
  quarters: Record<string, [number, number]>;
  forward: {
    id: string;
    system: "bng" | "irish" | "ci";
    easting: number;
    northing: number;
    refs: Record<string, string>;
  }[];
  numeric: { system: "bng" | "irish" | "ci"; easting: number; northing: number; ref: string }[];
  mgrs: ({ name: string; lat: number; lon: number } & Record<string, string>)[];
  european: { size: number; sw: [number, number]; eea: string; inspire: string; E: number; N: number }[];
  invalid: string[];
}

/** Worked references of every grid; `source` says whence. */
export const REFERENCES = readReferenceFile<GridReferences>("grid-references.json");

/** Sizes in metres by the labels of the tables. */
export const SIZE_OF_LABEL: Readonly<Record<string, SquareSize>> = {
  "100km": 100_000,
  "10km": 10_000,
  "5km": 5_000,
  "2km": 2_000,
  "1km": 1_000,
  "100m": 100,
  "10m": 10,
  "1m": 1,
};

/** A grid with the code of its projection and a box of WGS84 degrees that lies wholly on it. */
export interface GridCase {
  readonly id: GridId;
  readonly grid: Grid;
  readonly sizes: readonly SquareSize[];
  readonly box: { readonly west: number; readonly south: number; readonly east: number; readonly north: number };
}

const NATIONAL: readonly SquareSize[] = [100_000, 10_000, 5_000, 2_000, 1_000, 100, 10, 1];

/** Every grid. The Irish box stays inside the polynomial's area, at whose line two shifts meet. */
export const GRID_CASES: readonly GridCase[] = [
  {
    id: "british",
    grid: gridNamed("british"),
    sizes: NATIONAL,
    box: { west: -7.4, south: 49.9, east: 1.7, north: 60.7 },
  },
  {
    id: "irish",
    grid: gridNamed("irish"),
    sizes: NATIONAL,
    box: { west: -10.3, south: 51.5, east: -5.5, north: 55.3 },
  },
  {
    id: "channel-islands",
    grid: gridNamed("channel-islands"),
    sizes: NATIONAL,
    box: { west: -2.9, south: 48.85, east: -1.75, north: 50.2 },
  },
  {
    id: "laea",
    grid: gridNamed("laea"),
    sizes: [100_000, 50_000, 10_000, 5_000, 2_000, 1_000, 500, 250, 100, 10, 1],
    box: { west: -10, south: 36, east: 30, north: 70 },
  },
  { id: "mgrs", grid: gridNamed("mgrs"), sizes: NATIONAL, box: { west: -180, south: -79.9, east: 179.9, north: 83.9 } },
];

/** Parses a reference that must be good. */
export function parseGood(grid: Grid, text: string): Square {
  const answer = grid.parse(text);
  if (isRefusal(answer)) throw new Error(`${text}: ${answer.refused}`);
  return answer;
}
