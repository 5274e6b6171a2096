import { readFileSync } from "node:fs";
import type { Grid, GridId } from "../../src/grids/grid.ts";
import { isRefusal } from "../../src/grids/grid.ts";
import { gridOf } from "./grids.ts";

/** Side of a 2 km square in metres. */
export const TETRAD = 2000;

/** The territories of the demonstration. */
export type Territory = "britain" | "ireland" | "channel-islands";

/** One 2 km square that touches land. */
export interface Tetrad {
  /** Its place in the list, from 0. */
  readonly index: number;
  readonly territory: Territory;
  readonly grid: GridId;
  readonly crs: string;
  readonly hectad: string;
  readonly letter: string;
  /** South-west corner, metres of its own grid. */
  readonly easting: number;
  readonly northing: number;
  /** Its middle in kilometres of one plane for all three grids, for the invented surfaces only. */
  readonly x: number;
  readonly y: number;
}

/** All 2 km squares that touch land, and a way to find the one at a point. */
export interface Land {
  readonly tetrads: readonly Tetrad[];
  /** The land square at a point in metres of a territory's grid; undefined at sea. */
  tetradAt(territory: Territory, easting: number, northing: number): Tetrad | undefined;
}

const LIST = new URL("../../content/land-squares.csv", import.meta.url);
const LETTERS = "ABCDEFGHIJKLMNPQRSTUVWXYZ";
const TERRITORIES: readonly Territory[] = ["britain", "ireland", "channel-islands"];

/**
 * Reads `content/land-squares.csv`.
 *
 * @returns about 84,000 squares, in the order of the list
 * @throws Error for a 10 km square that its grid refuses
 * @example readLand().tetrads[0]?.hectad // "HP40"
 */
export function readLand(): Land {
  const tetrads: Tetrad[] = [];
  const found = new Map<number, Tetrad>();
  for (const line of readFileSync(LIST, "utf8").trim().split("\n").slice(1)) {
    const [gridId, territory, hectad, letters] = line.split(",") as [GridId, Territory, string, string];
    const corner = cornerOf(gridOf(gridId), hectad);
    for (const letter of letters) {
      const tetrad = tetradOf(tetrads.length, territory, gridId, { hectad, letter, ...corner });
      tetrads.push(tetrad);
      found.set(keyOf(territory, tetrad.easting, tetrad.northing), tetrad);
    }
  }
  return {
    tetrads,
    tetradAt: (territory, easting, northing) => found.get(keyOf(territory, easting, northing)),
  };
}

function cornerOf(grid: Grid, hectad: string): { crs: string; east: number; north: number } {
  const square = grid.parse(hectad);
  if (isRefusal(square)) {
    throw new Error(`land-squares.csv: ${hectad} ${square.refused}`);
  }
  return { crs: square.crs, east: square.easting, north: square.northing };
}

function tetradOf(
  index: number,
  territory: Territory,
  grid: GridId,
  at: { hectad: string; letter: string; crs: string; east: number; north: number },
): Tetrad {
  const place = LETTERS.indexOf(at.letter);
  const easting = at.east + Math.floor(place / 5) * TETRAD;
  const northing = at.north + (place % 5) * TETRAD;
  const [x, y] = commonPlane(territory, (easting + TETRAD / 2) / 1000, (northing + TETRAD / 2) / 1000);
  return { index, territory, grid, crs: at.crs, hectad: at.hectad, letter: at.letter, easting, northing, x, y };
}

/** Kilometres of a grid to kilometres of the British grid's plane, a few kilometres off: good enough for a gradient. */
function commonPlane(territory: Territory, east: number, north: number): [x: number, y: number] {
  if (territory === "ireland") {
    const across = east - 200;
    const up = north - 250;
    return [2.3 + 0.9964 * across + 0.0849 * up, 417.1 - 0.0849 * across + 0.9964 * up];
  }
  return territory === "britain" ? [east, north] : [east - 173, north - 5528];
}

function keyOf(territory: Territory, easting: number, northing: number): number {
  const column = Math.floor(easting / TETRAD);
  return (TERRITORIES.indexOf(territory) * 1024 + column) * 8192 + Math.floor(northing / TETRAD);
}
