import type { HectadSummary } from "../../../publishing/contracts.ts";

/** A neighbouring square with the side it lies on. */
export interface Neighbour {
  readonly side: "north" | "east" | "south" | "west";
  readonly square: string;
  readonly slug: string;
}

const SIDES = [
  ["north", 0, 1],
  ["east", 1, 0],
  ["south", 0, -1],
  ["west", -1, 0],
] as const;
const HECTAD = 10_000;

/**
 * Finds neighbours on one grid; across grids there are none, because their squares do not meet.
 *
 * @param all squares of the atlas
 * @returns a function from a square to its neighbours, clockwise from the north, without those that do not exist
 * @example neighboursOf(squares)(nz27).map(({ square }) => square) // ["NZ28", "NZ37", "NZ26", "NZ17"]
 */
export function neighboursOf(all: readonly HectadSummary[]): (square: HectadSummary) => Neighbour[] {
  const byPlace = new Map(all.map((square) => [placeKey(square.grid, square.easting, square.northing), square]));
  return ({ grid, easting, northing }) =>
    SIDES.flatMap(([side, east, north]) => {
      const found = byPlace.get(placeKey(grid, easting + east * HECTAD, northing + north * HECTAD));
      return found === undefined ? [] : [{ side, square: found.square, slug: found.slug }];
    });
}

function placeKey(grid: string, easting: number, northing: number): string {
  return `${grid} ${easting} ${northing}`;
}
