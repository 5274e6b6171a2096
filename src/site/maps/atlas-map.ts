import type { FeatureCollection } from "geojson";
import type { Grid } from "../../grids/grid.ts";
import type { AtlasFile } from "../../publishing/contracts.ts";
import type { Cell } from "./cell-paths.ts";
import { type Box, boxAround, type Frame, frameAround, overlap, toUnits } from "./frame.ts";
import { type Furniture, furnish } from "./furniture.ts";
import { type Inset, type InsetRequest, placeInsets } from "./insets.ts";
import { type Outline, outlinesOf, outlinesPath, ringArea, simplify } from "./outline.ts";
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
  /** Paths in units of the frame; "" where the scheme has none. */
  readonly land: string;
  readonly coarseLand: string;
  readonly lakes: string;
  readonly borders: string;
  /** Squares with land to paint one by one: where there is no coast, or the coast has land outside the atlas. */
  readonly landCells: boolean;
  readonly hectads: readonly PlacedHectad[];
  readonly onLand: ReadonlyMap<Placement, readonly Cell[]>;
  /** Where a square lies, or undefined for a code that is on none of the atlas's grids. */
  locate(code: string, resolution: Resolution): { placement: Placement; cell: Cell } | undefined;
}

const FINE = 2.2;
const COARSE = 9;
/** Smallest island and lake drawn, in square units: an island of half a pixel. */
const SMALLEST_ISLAND = 0.5;
const SMALLEST_LAKE = 10;

/**
 * Lays out the maps of an atlas: projection, frame, insets, the place of every grid, the coast simplified for the
 * size it is drawn at.
 *
 * @param source settings, hectads, base map and the means to project
 * @returns the layout; with no hectads at all a frame of 100 × 100 km at the projection's origin
 * @example buildAtlasMap(source).frame.width // 346
 */
export function buildAtlasMap({ atlas, hectads, land, lakes, borders, transform, grids }: MapSource): AtlasMap {
  const { crs } = atlas.map;
  const insetIds = atlas.map.insets.map((inset) => inset.territory);
  const shown = hectads.some((hectad) => hectad.on_land) ? hectads.filter((hectad) => hectad.on_land) : hectads;
  const landMetres = metres(land, crs, transform);
  const first = frameAround(
    crs,
    extentOf(
      shown.filter((hectad) => !insetIds.includes(hectad.territory)),
      crs,
      transform,
    ),
  );
  const place = (from: string, x: number, y: number) => toUnits(first, ...transform(from, crs, x, y));

  const groups = Map.groupBy(hectads, (hectad) => placementKey(hectad, insetIds));
  const fitted = [...groups]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, squares]) => {
      const territory = squares[0]?.territory;
      return {
        key,
        placement: placeSquares(
          squares,
          territory !== undefined && insetIds.includes(territory) ? territory : undefined,
          place,
        ),
      };
    });
  const requests: InsetRequest[] = atlas.map.insets.flatMap(({ territory, corner }) => {
    const corners = fitted
      .filter(({ placement }) => placement.inset === territory)
      .flatMap(({ key, placement }) => cornersOf(placement, groups.get(key) ?? []));
    return corners.length === 0 ? [] : [{ territory, corner, box: boxAround(corners) }];
  });
  const main = fitted
    .filter(({ placement }) => placement.inset === undefined)
    .flatMap(({ key, placement }) => cornersOf(placement, groups.get(key) ?? []));
  const { insets, height } = placeInsets(first, requests, main);
  const furniture = furnish(
    { ...first, height },
    main,
    insets.map((inset) => inset.box),
  );
  const frame = { ...first, height: furniture.height };

  const placed = new Map(fitted.map(({ key, placement }) => [key, moved(placement, insets)]));
  const onMap = (outlines: readonly Outline[]) =>
    outlines.map((outline) => intoInset(outline, requests, insets)).filter((outline) => inFrame(outline, frame));
  const unitsOf = (collection: FeatureCollection | undefined) =>
    onMap(inUnits(collection === land ? landMetres : metres(collection, crs, transform), first));
  const coast = unitsOf(land);
  const byCode = new Map(hectads.map((hectad) => [hectad.square, hectad]));
  const byCorner = new Map(hectads.map((hectad) => [cornerKey(hectad.grid, hectad.easting, hectad.northing), hectad]));
  const cellsOf = (squares: readonly PlacedHectad[], placement: Placement) =>
    squares.map((hectad) => cellOf(placement, hectad.easting, hectad.northing, 10_000));
  return {
    frame,
    placements: [...placed.values()],
    insets,
    furniture,
    land: outlinesPath(largerThan(SMALLEST_ISLAND, coast).map((outline) => simplify(outline, FINE))),
    coarseLand: outlinesPath(largerThan(4, coast).map((outline) => simplify(outline, COARSE))),
    lakes: outlinesPath(largerThan(SMALLEST_LAKE, unitsOf(lakes)).map((outline) => simplify(outline, 0.7))),
    borders: outlinesPath(unitsOf(borders).map((outline) => simplify(outline, FINE))),
    landCells: landOutsideSquares(coast, shown.length, frame),
    hectads,
    onLand: new Map(
      [...placed].map(([key, placement]) => [
        placement,
        cellsOf(
          (groups.get(key) ?? []).filter((hectad) => hectad.on_land),
          placement,
        ),
      ]),
    ),
    locate(code, resolution) {
      const known = byCode.get(code);
      const square =
        known ?? readSquare(code, grids, (grid, easting, northing) => byCorner.has(cornerKey(grid, easting, northing)));
      if (!square) return undefined;
      const hectad = known ?? byCorner.get(cornerKey(square.grid, floorTo(square.easting), floorTo(square.northing)));
      const placement = hectad && placed.get(placementKey(hectad, insetIds));
      return placement && { placement, cell: cellOf(placement, square.easting, square.northing, resolution) };
    },
  };
}

function largerThan(least: number, outlines: readonly Outline[]): Outline[] {
  return outlines.filter((outline) => Math.abs(ringArea(outline.points)) >= least);
}

function cornerKey(grid: string, easting: number, northing: number): string {
  return `${grid} ${easting} ${northing}`;
}

function floorTo(value: number): number {
  return Math.floor(value / 10_000) * 10_000;
}

function cornersOf(placement: Placement, hectads: readonly PlacedHectad[]): [number, number][] {
  return hectads.flatMap((hectad) =>
    cellCorners(placement, cellOf(placement, hectad.easting, hectad.northing, 10_000)),
  );
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

/** Outlines in metres of the drawing projection; a ring the projection cannot hold is left out. */
function metres(collection: FeatureCollection | undefined, crs: string, transform: Transform): Outline[] {
  return (collection?.features ?? []).flatMap((feature) =>
    outlinesOf(feature, (longitude, latitude) => [longitude, latitude]).flatMap(({ points, closed }) => {
      try {
        return [
          { points: points.map(([longitude, latitude]) => transform("EPSG:4326", crs, longitude, latitude)), closed },
        ];
      } catch {
        return [];
      }
    }),
  );
}

function inUnits(outlines: readonly Outline[], frame: Frame): Outline[] {
  return outlines.map(({ points, closed }) => ({ points: points.map(([x, y]) => toUnits(frame, x, y)), closed }));
}

/** Moves an outline that lies within an inset's own ground into the inset. */
function intoInset(outline: Outline, requests: readonly InsetRequest[], insets: readonly Inset[]): Outline {
  const box = boxAround(outline.points);
  const request = requests.find(
    ({ box: ground }) =>
      box.left >= ground.left - 4 &&
      box.right <= ground.right + 4 &&
      box.top >= ground.top - 4 &&
      box.bottom <= ground.bottom + 4,
  );
  const inset = request && insets.find(({ territory }) => territory === request.territory);
  if (!inset) return outline;
  return { points: outline.points.map(([x, y]) => [x + inset.dx, y + inset.dy] as const), closed: outline.closed };
}

function inFrame(outline: Outline, { width, height }: Frame): boolean {
  return overlap(boxAround(outline.points), { left: 0, top: 0, right: width, bottom: height });
}

/** True without a coast, or where there is more land than the atlas's squares could hold. */
function landOutsideSquares(coast: readonly Outline[], squares: number, { metresPerUnit }: Frame): boolean {
  const area = Math.abs(coast.reduce((sum, { points }) => sum + ringArea(points), 0));
  return area === 0 || area > squares * (10_000 / metresPerUnit) ** 2;
}

function moved(placement: Placement, insets: readonly Inset[]): Placement {
  const inset = insets.find(({ territory }) => territory === placement.inset);
  if (!inset) return placement;
  const [a, b, c, d, e, f] = placement.matrix;
  return { ...placement, matrix: [a, b, c, d, e + inset.dx, f + inset.dy] };
}
