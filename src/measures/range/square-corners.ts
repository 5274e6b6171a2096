import { gnomonicAbout } from "../../geodesy/gnomonic.ts";
import type { Grid } from "../../grids/grid.ts";
import { isRefusal } from "../../grids/grid.ts";
import { cornersOf } from "../../grids/squares.ts";
import type { PlacedPosition } from "./extent-of-occurrence.ts";

/**
 * The four corners of each square, in degrees and in the gnomonic plane about the middle of all of them: one plane for the
 * whole atlas, whatever grids its squares are of.
 *
 * @param squares codes with their grids
 * @param grids of the atlas, by id
 * @returns for each square its corners; undefined for a square 80° from the middle, or of no such grid
 * @example placeCorners([{ grid: "british", square: "SK12" }], grids)[0]?.length // => 4
 */
export function placeCorners(
  squares: readonly { grid: string; square: string }[],
  grids: ReadonlyMap<string, Grid>,
): (PlacedPosition[] | undefined)[] {
  const known = new Map<string, [longitude: number, latitude: number]>();
  const corners = squares.map(({ grid: id, square }) => {
    const grid = grids.get(id);
    const parsed = grid?.parse(square);
    if (grid === undefined || parsed === undefined || isRefusal(parsed)) return undefined;
    return cornersOf(parsed).map((point) => {
      const key = `${point.crs} ${point.easting} ${point.northing}`;
      const position = known.get(key) ?? grid.unproject(point);
      known.set(key, position);
      return position;
    });
  });
  const plane = gnomonicAbout([...known.values()]);
  return corners.map((own) => {
    const placed = own?.flatMap(([longitude, latitude]) => {
      const point = plane(longitude, latitude);
      return point === undefined ? [] : [{ ...point, longitude, latitude }];
    });
    return placed?.length === 4 ? placed : undefined;
  });
}
