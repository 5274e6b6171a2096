/**
 * 10 km squares of a reference or a position, by the grids' own mathematics. Loaded only where a text looks like one:
 * projections are most of what a page would otherwise load.
 */
import { isRefusal } from "../../../grids/grid.ts";
import { GRID_IDS, gridNamed } from "../../../grids/index.ts";
import type { Degrees } from "./degrees-of-text.ts";

function gridsOf(ids: readonly string[]) {
  return GRID_IDS.filter((id) => ids.includes(id)).map((id) => gridNamed(id));
}

/**
 * The 10 km squares a written reference lies in: one for each grid that reads it.
 *
 * @param text a reference of any precision from 10 km
 * @param grids identifiers of the atlas's grids
 * @returns none where no grid reads it, or it is coarser than 10 km
 * @example squaresOfReference("30UXE 1234 5678", ["mgrs"]) // ["30UXE15"]
 */
export function squaresOfReference(text: string, grids: readonly string[]): string[] {
  return gridsOf(grids).flatMap((grid) => {
    const square = grid.parse(text);
    if (isRefusal(square) || square.size > 10_000) return [];
    const hectad = grid.squareAt(square, 10_000);
    return hectad === undefined ? [] : [grid.format(hectad)];
  });
}

/**
 * The 10 km squares that hold a position: one for each grid that reaches there.
 *
 * @param degrees WGS84
 * @param grids identifiers of the atlas's grids
 * @example squaresAt({ latitude: 54.978, longitude: -1.617 }, ["british"]) // ["NZ26"]
 */
export function squaresAt({ latitude, longitude }: Degrees, grids: readonly string[]): string[] {
  return gridsOf(grids).flatMap((grid) => {
    try {
      const hectad = grid.squareAt(grid.project(longitude, latitude), 10_000);
      return hectad === undefined ? [] : [grid.format(hectad)];
    } catch {
      return []; // The position is outside what the projection can hold.
    }
  });
}
