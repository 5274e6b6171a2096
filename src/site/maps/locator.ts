import type { AtlasMap } from "./atlas-map.ts";
import { runsPath } from "./cell-paths.ts";
import { movedSvg, pathSvg } from "./map-shapes.ts";
import { matrixFor } from "./placement.ts";
import { hereSvg } from "./species-map.ts";
import { coarseLandSvg } from "./thumbnail.ts";

/** How far outside its cell the mark of a locator stands, in units: the map is small. */
const OUTSIDE = 7;

/**
 * The inside of a small map with one square marked: the square solid, an outline in the accent well round it.
 *
 * @param map layout of the atlas's maps
 * @param code of a hectad; a code on no grid of the atlas marks nothing
 * @returns SVG to stand between an `<svg>` of the frame's size
 * @example locatorSvg(map, "NZ27") // '<use href="#atlas-coast" class="map-coarse"/>…<path class="map-here" d="…"/>…'
 */
export function locatorSvg(map: AtlasMap, code: string): string {
  const at = map.locate(code, 10_000);
  const square = at
    ? movedSvg(matrixFor(at.placement, 10_000), pathSvg("map-ground map-ink", runsPath([at.cell])))
    : "";
  return coarseLandSvg(map) + square + hereSvg(map, code, OUTSIDE);
}
