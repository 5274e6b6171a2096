import type { FeatureCollection } from "geojson";
import { transform } from "../../geodesy/transform.ts";
import type { Grid, GridId } from "../../grids/grid.ts";
import { GRID_IDS, gridNamed } from "../../grids/index.ts";
import type { SquaresFile } from "../../publishing/contracts.ts";
import { atlas, basemap, squares } from "../published.ts";
import { type AtlasMap, buildAtlasMap } from "./atlas-map.ts";

const made = new WeakMap<SquaresFile, AtlasMap>();

/**
 * The layout of the maps of the atlas being built: made once for all pages.
 *
 * @returns frame, placements, coast
 * @throws {Error} where a base map file is not GeoJSON, or the drawing projection is not known
 * @example atlasMap().frame.width // 346
 */
export function atlasMap(): AtlasMap {
  const published = squares();
  const known = made.get(published);
  if (known) return known;
  const map = buildAtlasMap({
    atlas: atlas(),
    hectads: published.squares,
    land: collection("land"),
    lakes: collection("lakes"),
    borders: collection("borders"),
    transform,
    grids: atlasGrids(),
  });
  made.set(published, map);
  return map;
}

function atlasGrids(): Grid[] {
  const ids = new Set(atlas().territories.map(({ grid }) => grid));
  return GRID_IDS.filter((id: GridId) => ids.has(id)).map((id) => gridNamed(id));
}

function collection(name: string): FeatureCollection | undefined {
  const text = basemap(name);
  return text === undefined ? undefined : (JSON.parse(text) as FeatureCollection);
}
