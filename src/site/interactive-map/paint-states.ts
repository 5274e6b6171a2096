import type { Map as MapLibre } from "maplibre-gl";
import type { MapVisits } from "../../publishing/map-folder.ts";
import type { RecordedSquare, TaxonOnMap } from "./map-data.ts";
import { HECTAD_PARTS, TETRAD_ZOOM } from "./map-style.ts";
import {
  type PartPaint,
  paintOf,
  paintUncovered,
  paintVisits,
  type SquarePaint,
  type View,
  viewOfTetrads,
} from "./square-paint.ts";

const LAYERS = ["hectad_cell", "hectad_spine", "hectad_page", "tetrad_spine", "tetrad_page"] as const;

/**
 * Paints a taxon: clears every state, then sets those of its squares.
 *
 * @param map with the source "squares"
 * @param taxon on the map
 * @param view what the reader chose
 */
export function paintStates(map: MapLibre, taxon: TaxonOnMap, view: View): void {
  for (const layer of HECTAD_PARTS) map.setLayerZoomRange(layer, 0, taxon.shownAt10km ? 24 : TETRAD_ZOOM);
  for (const sourceLayer of LAYERS) map.removeFeatureState({ source: "squares", sourceLayer });
  for (const [id, cover] of taxon.uncovered) set(map, "hectad", id, paintUncovered(cover, view));
  paintAll(map, "hectad", taxon.hectads, view);
  paintAll(map, "tetrad", taxon.tetrads, viewOfTetrads(view, taxon));
}

/**
 * Paints the visits in the place of a taxon.
 *
 * @param compared places of the compared periods; null where the atlas compares nothing
 * @param firstTetrad id of the first 2 km square
 */
export function paintAllVisits(
  map: MapLibre,
  { hectads, tetrads }: MapVisits,
  compared: readonly [number, number] | null,
  firstTetrad: number,
): void {
  for (const layer of HECTAD_PARTS) map.setLayerZoomRange(layer, 0, TETRAD_ZOOM);
  for (const sourceLayer of LAYERS) map.removeFeatureState({ source: "squares", sourceLayer });
  const of = (period: number, id: number) => hectads[period]?.[id] ?? 0;
  const count = hectads[0]?.length ?? 0;
  for (let id = 0; id < count; id++) {
    const total = hectads.reduce((sum, period) => sum + (period[id] ?? 0), 0);
    set(map, "hectad", id, paintVisits(compared === null ? [total] : [of(compared[0], id), of(compared[1], id)]));
  }
  tetrads.forEach((number, place) => {
    if (number > 0) set(map, "tetrad", firstTetrad + place, paintVisits([number]));
  });
}

function paintAll(
  map: MapLibre,
  size: "hectad" | "tetrad",
  squares: ReadonlyMap<number, RecordedSquare>,
  view: View,
): void {
  for (const [id, square] of squares) set(map, size, id, paintOf(square, view));
}

function set(map: MapLibre, size: "hectad" | "tetrad", id: number, { spine, page }: SquarePaint): void {
  setPart(map, `${size}_spine`, id, spine);
  setPart(map, `${size}_page`, id, page);
}

function setPart(
  map: MapLibre,
  sourceLayer: string,
  id: number,
  { ink, open = false, hatch = false, tint = 1 }: PartPaint,
): void {
  if (ink === undefined && !hatch) return;
  map.setFeatureState(
    { source: "squares", sourceLayer, id },
    { ink: ink ?? "", solid: ink !== undefined && !open, open: ink !== undefined && open, hatch, tint },
  );
}
