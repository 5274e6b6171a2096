import { writeFileSync } from "node:fs";
import type { Grid } from "../grids/grid.ts";
import { isRefusal } from "../grids/grid.ts";
import { cornersOf } from "../grids/squares.ts";

/** A square to draw: its grid, reference, size and properties. */
export interface SquareToDraw {
  grid: string;
  square: string;
  resolution_m: number;
  properties: Record<string, string | number | boolean | null>;
}

/** Corners of a square as [longitude, latitude], counter-clockwise from the south-west, rounded to about 10 cm. */
export function cornersInDegrees(grid: Grid, square: string): [number, number][] | undefined {
  const parsed = grid.parse(square);
  if (isRefusal(parsed)) return undefined;
  return cornersOf(parsed).map((corner) => {
    const [longitude, latitude] = grid.unproject(corner);
    return [Math.round(longitude * 1e6) / 1e6, Math.round(latitude * 1e6) / 1e6];
  });
}

/**
 * Writes squares as GeoJSON (RFC 7946): one polygon a square with its four corners, exterior ring counter-clockwise.
 * A square's sides are straight on its own grid; as straight lines between longitudes and latitudes they are off by metres.
 *
 * @returns how many features were written
 */
export function writeSquaresGeojson(
  file: string,
  squares: readonly SquareToDraw[],
  gridOf: ReadonlyMap<string, Grid>,
): number {
  const features = squares.flatMap(({ grid, square, properties }) => {
    const system = gridOf.get(grid);
    const corners = system === undefined ? undefined : cornersInDegrees(system, square);
    const [first] = corners ?? [];
    if (corners === undefined || first === undefined) return [];
    return [
      { type: "Feature", id: square, geometry: { type: "Polygon", coordinates: [[...corners, first]] }, properties },
    ];
  });
  writeFileSync(
    file,
    `{"type":"FeatureCollection","features":[\n${features.map((feature) => JSON.stringify(feature)).join(",\n")}\n]}\n`,
  );
  return features.length;
}
