import type { AtlasMap } from "./atlas-map.ts";
import { BOOK_INKS, BOOK_SHAPES, type BookClass } from "./book-cell.ts";
import { hatchPath, shapesPath } from "./cell-paths.ts";
import {
  furnishingsSvg,
  hatchSvg,
  landSvg,
  movedSvg,
  outlineRound,
  pathSvg,
  placedSvg,
  waterSvg,
} from "./map-shapes.ts";
import { matrixFor, type Placement } from "./placement.ts";
import type { TaxonSquares } from "./taxon-squares.ts";

/** Classes painted with one ink, in the order they are painted. */
const PAINT_ORDER: readonly (readonly BookClass[])[] = [["since", "before", "other"], ["gone"], ["new"], ["both"]];

/**
 * The inside of a species map: land, hatch, water, the squares on their own grids, ticks and furniture.
 *
 * @param map layout of the atlas's maps
 * @param taxon its squares, sorted
 * @param here code of a square to outline, if any
 * @returns SVG to stand between an `<svg>` of the frame's size; it refers to the shared definitions
 * @example speciesMapSvg(map, sortSquares(map, atlas, taxon, 10_000)) // '<use href="#atlas-land" class="map-land"/><g class="map-hatch" …'
 */
export function speciesMapSvg(map: AtlasMap, taxon: TaxonSquares, here?: string): string {
  const hatch = hatchSvg(map, (placement) => {
    const parts = taxon.hatch.get(placement);
    return parts ? hatchPath(parts) : "";
  });
  const squares = placedSvg(map, taxon.resolution, (placement) =>
    PAINT_ORDER.map((classes) => inkPath(taxon, placement, classes)).join(""),
  );
  return landSvg(map) + hatch + waterSvg(map) + squares + hereSvg(map, here) + furnishingsSvg(map);
}

function inkPath({ cells }: TaxonSquares, placement: Placement, classes: readonly BookClass[]): string {
  const of = cells.get(placement);
  const first = classes[0];
  if (!of || !first) return "";
  return pathSvg(`map-${BOOK_INKS[first]}`, classes.map((kind) => shapesPath(of[kind], BOOK_SHAPES[kind])).join(""));
}

/** The current square: an outline in the accent, 1.4 units outside its cell. */
export function hereSvg(map: AtlasMap, code: string | undefined, outside = 1.4): string {
  const at = code === undefined ? undefined : map.locate(code, 10_000);
  return at
    ? movedSvg(matrixFor(at.placement, 10_000), pathSvg("map-here", outlineRound(at.cell.column, at.cell.row, outside)))
    : "";
}
