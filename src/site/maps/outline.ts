import type { Feature, Geometry, Position } from "geojson";
import { numbersText } from "./path-text.ts";

/** A line or ring in units of the map; a ring's last point is not its first again. */
export interface Outline {
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly closed: boolean;
}

/**
 * The lines and rings of a feature, each point moved by `place`.
 *
 * @param feature of lines or areas; points and empty geometries give nothing
 * @param place longitude and latitude to units of the map
 * @returns the outlines, outer rings and holes alike
 * @example outlinesOf({ type: "Feature", properties: {}, geometry: { type: "LineString", coordinates: [[0, 1], [2, 3]] } }, (x, y) => [x, y]) // [{ points: [[0, 1], [2, 3]], closed: false }]
 */
export function outlinesOf(
  feature: Feature,
  place: (longitude: number, latitude: number) => readonly [number, number],
): Outline[] {
  return linesOf(feature.geometry).map(({ line, closed }) => ({
    points: (closed ? line.slice(0, -1) : line).map((position) =>
      place(position[0] ?? Number.NaN, position[1] ?? Number.NaN),
    ),
    closed,
  }));
}

function linesOf(geometry: Geometry | null): { line: Position[]; closed: boolean }[] {
  switch (geometry?.type) {
    case "Polygon":
      return geometry.coordinates.map((line) => ({ line, closed: true }));
    case "MultiPolygon":
      return geometry.coordinates.flat().map((line) => ({ line, closed: true }));
    case "LineString":
      return [{ line: geometry.coordinates, closed: false }];
    case "MultiLineString":
      return geometry.coordinates.map((line) => ({ line, closed: false }));
    default:
      return [];
  }
}

/**
 * Simplifies an outline: points whose triangle with their neighbours is smaller than a limit go, the smallest of
 * a neighbourhood first, until none is left (after Visvalingam and Whyatt 1993, "Line generalisation by repeated
 * elimination of points", Cartographic Journal 30, 46–51). Islets keep more: the limit is at most a sixth of
 * the ring's own area.
 *
 * @param outline in units of the map
 * @param limit smallest triangle kept, in square units
 * @returns the outline with at least three points (ring) or its two ends (line)
 * @example simplify({ points: [[0, 0], [5, 0.1], [10, 0], [10, 10]], closed: true }, 1).points // [[0, 0], [10, 0], [10, 10]]
 */
export function simplify({ points, closed }: Outline, limit: number): Outline {
  const least = closed ? 3 : 2;
  const gentle = closed ? Math.min(limit, Math.abs(ringArea(points)) / 6) : limit;
  let kept = [...points];
  while (kept.length > least) {
    const areas = kept.map((point, i) => cornerArea(kept, i, point, closed));
    const size = (i: number) => areas[(i + kept.length) % kept.length] ?? Number.POSITIVE_INFINITY;
    const goes = (i: number) => size(i) < gentle && size(i) <= size(i - 1) && size(i) < size(i + 1);
    const next = kept.filter((_, i) => !goes(i));
    if (next.length === kept.length || next.length < least) break;
    kept = next;
  }
  return { points: kept, closed };
}

function cornerArea(points: Outline["points"], i: number, [x, y]: readonly [number, number], closed: boolean): number {
  const n = points.length;
  const before = closed ? points[(i + n - 1) % n] : points[i - 1];
  const after = closed ? points[(i + 1) % n] : points[i + 1];
  if (!before || !after) return Number.POSITIVE_INFINITY;
  return Math.abs((before[0] - x) * (after[1] - y) - (after[0] - x) * (before[1] - y)) / 2;
}

/** Area of a ring in square units, positive where it turns one way and negative where it turns the other. */
export function ringArea(points: Outline["points"]): number {
  return points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** Outlines are drawn in halves of a unit, as whole numbers: a pixel at the widest a map is drawn. */
export const HALVES = 2;

/**
 * Path of outlines, relative and in whole halves of a unit; points that fall on the one before are left out, and
 * so are rings of fewer than three points left.
 *
 * @param outlines in units of the map
 * @param perUnit steps a unit; maps that are enlarged want finer ones
 * @returns the path's text, to be drawn with a scale of 1/2, or of one step
 * @example outlinesPath([{ points: [[0, 0], [10, 0], [10, 10]], closed: true }]) // "M0 0l40 0 0 40z"
 */
export function outlinesPath(outlines: readonly Outline[], perUnit: number = HALVES): string {
  return outlines.map((outline) => outlinePath(outline, perUnit)).join("");
}

function outlinePath({ points, closed }: Outline, perUnit: number): string {
  const placed = points
    .map(([x, y]) => [Math.round(x * perUnit), Math.round(y * perUnit)] as const)
    .filter(([x, y], i, all) => i === 0 || x !== all[i - 1]?.[0] || y !== all[i - 1]?.[1]);
  const [first, ...rest] = placed;
  if (!first || rest.length < (closed ? 2 : 1)) return "";
  let [penX, penY] = first;
  const steps = rest.flatMap(([x, y]) => {
    const step = [x - penX, y - penY];
    [penX, penY] = [x, y];
    return step;
  });
  return `M${numbersText(first, 0)}l${numbersText(steps, 0)}${closed ? "z" : ""}`;
}
