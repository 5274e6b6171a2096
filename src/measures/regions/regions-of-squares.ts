import { boundsOf, clipRing, overlap, type Rectangle, ringArea } from "../../geodesy/clip-ring.ts";
import { transform } from "../../geodesy/transform.ts";
import type { Grid, Square } from "../../grids/grid.ts";
import { isRefusal } from "../../grids/grid.ts";
import type { Region } from "../../scheme/regions-file.ts";
import { projectRegions, type RegionRing } from "./projected-regions.ts";

/** Square metres that a region must have in a square to touch it: 0.1 % of a 2 km square. Less is the drawing of a line. */
export const LEAST_TOUCH_M2 = 4_000;
/** Side of the blocks that rings are cut to before they are cut to finer squares. */
const BLOCK = 10_000;
/** Degrees round the squares that regions are kept for: more than a block's side. */
const MARGIN = 0.2;

type Placed = Square & { readonly index: number };

/**
 * Which regions touch each square: those that have at least 4,000 m² in it, by cutting their polygons to the square in the
 * plane of its grid. What of a square is in no region, the sea as a rule, counts for none.
 *
 * @param squares codes with their grids; a code its grid does not know touches none
 * @param regions with polygons; several of one id are one region
 * @param grids by id
 * @returns for each square the ids of the regions, in the order of the regions
 * @example regionsOfSquares([{ grid: "british", square: "SK12" }], regions, grids) // => [["trent-valley"]]
 */
export function regionsOfSquares(
  squares: readonly { grid: string; square: string }[],
  regions: readonly Region[],
  grids: ReadonlyMap<string, Grid>,
): string[][] {
  const touched: string[][] = squares.map(() => []);
  const placed = squares.flatMap(({ grid, square }, index): Placed[] => {
    const parsed = grids.get(grid)?.parse(square);
    return parsed === undefined || isRefusal(parsed) ? [] : [{ ...parsed, index }];
  });
  const ids = [...new Set(regions.map(({ id }) => id))];
  const order = regions.map(({ id }) => ids.indexOf(id));
  for (const [key, own] of Map.groupBy(placed, ({ grid, crs }) => `${grid} ${crs}`)) {
    const grid = grids.get(key.split(" ")[0] ?? "");
    if (grid === undefined) continue;
    const blocks = [
      ...Map.groupBy(own, ({ easting, northing }) => `${blockOf(easting)} ${blockOf(northing)}`).values(),
    ];
    const crs = own[0]?.crs ?? "";
    const rings = projectRegions(regions, degreesOf(grid, crs, blocks), planeOf(grid, crs));
    for (const block of blocks)
      for (const [index, areas] of areasOfBlock(block, rings, order))
        touched[index] = ids.filter((_, region) => (areas[region] ?? 0) >= LEAST_TOUCH_M2);
  }
  return touched;
}

/** Square metres of each region in each square of one block. */
function areasOfBlock(
  squares: readonly Placed[],
  rings: readonly RegionRing[],
  order: readonly number[],
): [index: number, areas: number[]][] {
  const [first] = squares;
  if (first === undefined) return [];
  const [west, south] = [blockOf(first.easting), blockOf(first.northing)];
  const block = { west, south, east: west + BLOCK, north: south + BLOCK };
  const near = rings.flatMap(({ region, sign, ring, bounds }) => {
    const part = overlap(bounds, block) ? clipRing(ring, block) : [];
    return part.length === 0 ? [] : [{ region: order[region] ?? 0, sign, part }];
  });
  return squares.map(({ index, easting, northing, size }) => {
    const areas: number[] = [];
    const square: Rectangle = { west: easting, south: northing, east: easting + size, north: northing + size };
    for (const { region, sign, part } of near) {
      const own = size === BLOCK ? part : clipRing(part, square);
      areas[region] = (areas[region] ?? 0) + sign * ringArea(own);
    }
    return [index, areas];
  });
}

function blockOf(metres: number): number {
  return Math.floor(metres / BLOCK) * BLOCK;
}

/** Bounds of all blocks in degrees, with a margin. */
function degreesOf(grid: Grid, crs: string, blocks: readonly (readonly Placed[])[]): Rectangle {
  const corners = blocks.flatMap(([square]) =>
    [0, BLOCK].flatMap((across) =>
      [0, BLOCK].map((up) =>
        grid.unproject({
          crs,
          easting: blockOf(square?.easting ?? 0) + across,
          northing: blockOf(square?.northing ?? 0) + up,
        }),
      ),
    ),
  );
  const { west, south, east, north } = boundsOf(corners.flat());
  return { west: west - MARGIN, south: south - MARGIN, east: east + MARGIN, north: north + MARGIN };
}

/** Longitude and latitude to metres of the squares' own system: a grid of zones would give those of the point's zone. */
function planeOf(grid: Grid, crs: string): (longitude: number, latitude: number) => readonly [number, number] {
  if (grid.id === "mgrs") return (longitude, latitude) => transform("EPSG:4326", crs, longitude, latitude);
  return (longitude, latitude) => {
    const { easting, northing } = grid.project(longitude, latitude);
    return [easting, northing];
  };
}
