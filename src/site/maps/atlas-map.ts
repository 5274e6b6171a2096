import type { FeatureCollection } from "geojson";
import type { Grid } from "../../grids/grid.ts";
import type { AtlasFile } from "../../publishing/contracts.ts";
import type { Cell } from "./cell-paths.ts";
import { drawCoast, inUnits } from "./coast.ts";
import { type Box, boxAround, type Frame, frameAround, toUnits } from "./frame.ts";
import { type Furniture, furnish } from "./furniture.ts";
import { type Inset, type InsetRequest, placeInsets } from "./insets.ts";
import type { Outline } from "./outline.ts";
import {
  cellCorners,
  cellOf,
  type PlacedHectad,
  type Placement,
  placementKey,
  placeSquares,
  type Resolution,
  type Transform,
} from "./placement.ts";
import { readSquare } from "./tetrad-place.ts";

/** What of the atlas decides how its maps are laid out. */
export interface MapSource {
  readonly atlas: Pick<AtlasFile, "map">;
  readonly hectads: readonly PlacedHectad[];
  /** GeoJSON in longitude and latitude, where the scheme has it. */
  readonly land?: FeatureCollection | undefined;
  readonly lakes?: FeatureCollection | undefined;
  readonly borders?: FeatureCollection | undefined;
  readonly transform: Transform;
  /** The atlas's grids, to read codes of smaller squares. */
  readonly grids: readonly Grid[];
}

/** Everything of an atlas's maps that is the same for every species: made once, drawn many times. */
export interface AtlasMap {
  readonly frame: Frame;
  readonly placements: readonly Placement[];
  readonly insets: readonly Inset[];
  readonly furniture: Furniture;
  /** Paths in halves of a unit of the frame; "" where the scheme has none. */
  readonly land: string;
  readonly coarseLand: string;
  readonly lakes: string;
  readonly borders: string;
  /** Squares with land to paint one by one: where there is no coast, or the coast has land outside the atlas. */
  readonly landCells: boolean;
  readonly hectads: readonly PlacedHectad[];
  readonly onLand: ReadonlyMap<Placement, readonly Cell[]>;
  /** Outlines of a file of the base map, in units of the frame, for maps that draw them at another size. */
  outlines(collection: FeatureCollection | undefined): Outline[];
  /** Where a square lies, or undefined for a code that is on none of the atlas's grids. */
  locate(code: string, resolution: Resolution): { placement: Placement; cell: Cell } | undefined;
}

const HECTAD = 10_000;

/**
 * Lays out the maps of an atlas: projection, frame, insets, the place of every grid, the coast simplified for the
 * size it is drawn at.
 *
 * @param source settings, hectads, base map and the means to project
 * @returns the layout; with no hectads at all a frame of 100 × 100 km at the projection's origin
 * @example buildAtlasMap(source).frame.width // 346
 */
export function buildAtlasMap(source: MapSource): AtlasMap {
  const { atlas, hectads, transform } = source;
  const insetIds = atlas.map.insets.map((inset) => inset.territory);
  const onLand = hectads.filter((hectad) => hectad.on_land);
  const shown = onLand.length > 0 ? onLand : hectads;
  const main = shown.filter((hectad) => !insetIds.includes(hectad.territory));
  const first = frameAround(atlas.map.crs, extentOf(main, atlas.map.crs, transform));
  const groups = fitGroups(hectads, insetIds, (from, x, y) => toUnits(first, ...transform(from, atlas.map.crs, x, y)));
  const cornersWhere = (inset: string | undefined) =>
    groups
      .filter(({ placement }) => placement.inset === inset)
      .flatMap(({ placement, squares }) => cornersOf(placement, squares));
  const requests: InsetRequest[] = atlas.map.insets.flatMap(({ territory, corner }) => {
    const corners = cornersWhere(territory);
    return corners.length === 0 ? [] : [{ territory, corner, box: boxAround(corners) }];
  });
  const drawn = cornersWhere(undefined);
  const { insets, height } = placeInsets(first, requests, drawn);
  const furniture = furnish(
    { ...first, height },
    drawn,
    insets.map((inset) => inset.box),
  );
  const frame = { ...first, height: furniture.height };
  const placed = groups.map((group) => ({ ...group, placement: moved(group.placement, insets) }));
  const ground = { frame, insets, requests, transform };
  const coast = drawCoast(source, ground);
  return {
    frame,
    placements: placed.map(({ placement }) => placement),
    insets,
    furniture,
    ...coast,
    landCells: coast.area === 0 || coast.area > shown.length * (HECTAD / frame.metresPerUnit) ** 2,
    hectads,
    onLand: new Map(
      placed.map(({ placement, squares }) => [
        placement,
        squares.filter((hectad) => hectad.on_land).map((hectad) => cellAt(placement, hectad)),
      ]),
    ),
    outlines: (collection) => inUnits(collection, ground),
    locate: locator(source, insetIds, new Map(placed.map(({ key, placement }) => [key, placement]))),
  };
}

interface PlacedGroup {
  readonly key: string;
  readonly placement: Placement;
  readonly squares: readonly PlacedHectad[];
}

function fitGroups(
  hectads: readonly PlacedHectad[],
  insetIds: readonly string[],
  place: (crs: string, easting: number, northing: number) => readonly [number, number],
): PlacedGroup[] {
  return [...Map.groupBy(hectads, (hectad) => placementKey(hectad, insetIds))]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, squares]) => ({
      key,
      squares,
      placement: placeSquares(
        squares,
        insetIds.find((id) => id === squares[0]?.territory),
        place,
      ),
    }));
}

/** Finds squares by code: hectads from the list, smaller squares by reading the code on the atlas's grids. */
function locator(
  { hectads, grids }: MapSource,
  insetIds: readonly string[],
  placements: ReadonlyMap<string, Placement>,
): AtlasMap["locate"] {
  const byCode = new Map(hectads.map((hectad) => [hectad.square, hectad]));
  const byCorner = new Map(hectads.map((hectad) => [cornerKey(hectad.grid, hectad.easting, hectad.northing), hectad]));
  return (code, resolution) => {
    const known = byCode.get(code);
    const square =
      known ?? readSquare(code, grids, (grid, easting, northing) => byCorner.has(cornerKey(grid, easting, northing)));
    if (!square) return undefined;
    const hectad = known ?? byCorner.get(cornerKey(square.grid, floorTo(square.easting), floorTo(square.northing)));
    const placement = hectad && placements.get(placementKey(hectad, insetIds));
    return placement && { placement, cell: cellOf(placement, square.easting, square.northing, resolution) };
  };
}

function cellAt(placement: Placement, { easting, northing }: PlacedHectad): Cell {
  return cellOf(placement, easting, northing, HECTAD);
}

function cornerKey(grid: string, easting: number, northing: number): string {
  return `${grid} ${easting} ${northing}`;
}

function floorTo(value: number): number {
  return Math.floor(value / 10_000) * 10_000;
}

function cornersOf(placement: Placement, hectads: readonly PlacedHectad[]): [number, number][] {
  return hectads.flatMap((hectad) => cellCorners(placement, cellAt(placement, hectad)));
}

/** Extent in metres of the drawing projection, of all corners of the squares. */
function extentOf(hectads: readonly PlacedHectad[], crs: string, transform: Transform): Box {
  if (hectads.length === 0) return { left: 0, top: 100_000, right: 100_000, bottom: 0 };
  const corners = hectads.flatMap((hectad) =>
    [0, 10_000].flatMap((dx) =>
      [0, 10_000].map((dy) => transform(hectad.crs, crs, hectad.easting + dx, hectad.northing + dy)),
    ),
  );
  const { left, top, right, bottom } = boxAround(corners);
  return { left, right, top: bottom, bottom: top };
}

function moved(placement: Placement, insets: readonly Inset[]): Placement {
  const inset = insets.find(({ territory }) => territory === placement.inset);
  if (!inset) return placement;
  const [a, b, c, d, e, f] = placement.matrix;
  return { ...placement, matrix: [a, b, c, d, e + inset.dx, f + inset.dy] };
}
