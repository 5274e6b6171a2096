import type { AtlasMap } from "./atlas-map.ts";
import { type Cell, runsPath } from "./cell-paths.ts";
import { movedSvg, pathSvg, SHARED } from "./map-shapes.ts";
import { matrixFor, type Placement } from "./placement.ts";

/** What a small map shows: whole squares, no hatch, no spine. */
export interface ThumbnailSquares {
  /** Hectads recorded in the latest period. */
  readonly latest: readonly string[];
  /** Hectads not refound, where the atlas compares two periods. */
  readonly gone?: readonly string[];
}

/**
 * The inside of a small map for lists.
 *
 * @param map layout of the atlas's maps
 * @param squares codes of hectads; codes on no grid of the atlas are left out
 * @returns SVG to stand between an `<svg>` of the frame's size; it refers to the shared coarse coast
 * @example thumbnailSvg(map, { latest: ["NZ27"] }) // '<use href="#atlas-coast" class="map-coarse"/><g transform="…"><path class="map-recorded" d="…"/></g>'
 */
export function thumbnailSvg(map: AtlasMap, { latest, gone = [] }: ThumbnailSquares): string {
  const [latestCells, goneCells] = [cellsByPlacement(map, latest), cellsByPlacement(map, gone)];
  const squares = map.placements.map((placement) => {
    const paths =
      pathSvg("map-notrefound", runsPath(goneCells.get(placement) ?? [], 1)) +
      pathSvg("map-recorded", runsPath(latestCells.get(placement) ?? [], 1));
    const [a, b, c, d, e, f] = matrixFor(placement, 10_000);
    return movedSvg([a * 4, b * 4, c * 4, d * 4, e, f], paths);
  });
  return coarseLandSvg(map) + squares.join("");
}

/** The coarse coast, or without one the squares with land. */
export function coarseLandSvg(map: AtlasMap): string {
  if (map.coarseLand !== "") return `<use href="#${SHARED.coarse}" class="map-coarse"/>`;
  return map.placements
    .map((placement) => movedSvg(placement.matrix, pathSvg("map-ground", runsPath(map.onLand.get(placement) ?? []))))
    .join("");
}

function cellsByPlacement(map: AtlasMap, codes: readonly string[]): Map<Placement, Cell[]> {
  const cells = new Map<Placement, Cell[]>();
  for (const code of codes) {
    const at = map.locate(code, 10_000);
    if (!at) continue;
    const group = cells.get(at.placement);
    if (group) group.push(at.cell);
    else cells.set(at.placement, [at.cell]);
  }
  return cells;
}
