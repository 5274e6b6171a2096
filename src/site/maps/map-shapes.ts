import type { Affine } from "./affine.ts";
import type { AtlasMap } from "./atlas-map.ts";
import { CELL } from "./book-cell.ts";
import { type Cell, runsPath } from "./cell-paths.ts";
import { furnitureSvg } from "./furniture.ts";
import { HALVES } from "./outline.ts";
import { numbersText } from "./path-text.ts";
import { matrixFor, type Placement, type Resolution } from "./placement.ts";

/** Ids of what the maps of one page share; defined once, used by reference. */
export const SHARED = Object.freeze({
  land: "atlas-land",
  clip: "atlas-land-clip",
  hatch: "atlas-hatch",
  coarse: "atlas-coast",
});

/** Outlines of the base map are whole halves of a unit. */
const FROM_HALVES = ` transform="scale(${1 / HALVES})"`;

/** A text made safe to stand in SVG. @example escaped("a < b") // "a &lt; b" */
export function escaped(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}

/**
 * A path, or nothing where there is nothing to draw.
 *
 * @param name class of the path, "" for none
 * @param d text of the path
 * @example pathSvg("map-both", "M0 0h4") // '<path class="map-both" d="M0 0h4"/>'
 */
export function pathSvg(name: string, d: string): string {
  if (d === "") return "";
  return `<path${name === "" ? "" : ` class="${name}"`} d="${d}"/>`;
}

/**
 * A group moved by a matrix; without one where the matrix changes nothing, and gone where it is empty.
 *
 * @param matrix six numbers
 * @param body SVG
 * @example moved([1, 0, 0, 1, 8, 12], "<path/>") // '<g transform="translate(8 12)"><path/></g>'
 */
export function movedSvg(matrix: Affine, body: string): string {
  if (body === "") return "";
  const [a, b, c, d, e, f] = matrix;
  const upright = a === 1 && b === 0 && c === 0 && d === 1;
  if (upright && e === 0 && f === 0) return body;
  const text = upright
    ? `translate(${numbersText([e, f], 3)})`
    : `matrix(${[a, b, c, d].map((value) => Number(value.toFixed(5))).join(" ")} ${Number(e.toFixed(3))} ${Number(f.toFixed(3))})`;
  return `<g transform="${text}">${body}</g>`;
}

/** The path of each placement, in that placement's cells of a resolution, four units to a cell. */
export function placedSvg(map: AtlasMap, resolution: Resolution, draw: (placement: Placement) => string): string {
  return map.placements.map((placement) => movedSvg(matrixFor(placement, resolution), draw(placement))).join("");
}

/** Runs of cells of each placement, one unit to a cell: whole numbers are short. */
export function placedRunsSvg(
  map: AtlasMap,
  resolution: Resolution,
  cellsOf: (placement: Placement) => readonly Cell[],
): string {
  return map.placements
    .map((placement) => {
      const [a, b, c, d, e, f] = matrixFor(placement, resolution);
      return movedSvg([a * CELL, b * CELL, c * CELL, d * CELL, e, f], pathSvg("", runsPath(cellsOf(placement), 1)));
    })
    .join("");
}

/**
 * Definitions of a full map: land, the clip to it, the hatch of two lines a cell at 45°; more lines where a
 * small atlas has large cells. The hatch repeats a whole number of times in a cell, so it is aligned to the cells.
 *
 * @param map layout
 * @returns content of a `<defs>`
 */
export function mapDefs(map: AtlasMap): string {
  const land =
    map.land === ""
      ? ""
      : `<path id="${SHARED.land}"${FROM_HALVES} d="${map.land}"/><clipPath id="${SHARED.clip}"><use href="#${SHARED.land}"/></clipPath>`;
  const times = Math.max(1, Math.round(10_000 / map.frame.metresPerUnit / CELL / 2.5));
  const inCells = ` patternTransform="scale(${numbersText([1 / (CELL * times)], 5)})"`;
  return `${land}<pattern id="${SHARED.hatch}" width="2" height="2" patternUnits="userSpaceOnUse"${inCells}><path class="map-line" d="M-.5.5l1-1M0 2l2-2M1.5 2.5l1-1"/></pattern>`;
}

/** Definition of the coarse coast for thumbnails: content of a `<defs>`, "" without a coast. */
export function coarseDefs(map: AtlasMap): string {
  return map.coarseLand === "" ? "" : `<path id="${SHARED.coarse}"${FROM_HALVES} d="${map.coarseLand}"/>`;
}

/** Land under everything: the coast's area, or the squares with land where the coast cannot say what is the atlas's. */
export function landSvg(map: AtlasMap): string {
  if (!map.landCells) return `<use href="#${SHARED.land}" class="map-land"/>`;
  const cells = placedSvg(map, 10_000, (placement) => pathSvg("map-ground", runsPath(map.onLand.get(placement) ?? [])));
  return map.land === "" ? cells : `<g clip-path="url(#${SHARED.clip})">${cells}</g>`;
}

/** Runs of cells painted with the hatch, one unit to a cell, clipped to land where there is a coast. */
export function hatchedSvg(map: AtlasMap, body: string): string {
  if (body === "") return "";
  return `<g class="map-hatch" stroke="url(#${SHARED.hatch})"${map.land === "" ? "" : ` clip-path="url(#${SHARED.clip})"`}>${body}</g>`;
}

/** Lakes, border and coast, over the hatch and under the squares. */
export function waterSvg(map: AtlasMap): string {
  const coast = map.land === "" ? "" : `<use href="#${SHARED.land}" class="map-coast"/>`;
  const drawn = pathSvg("map-lake", map.lakes) + pathSvg("map-border", map.borders);
  return (drawn === "" ? "" : `<g${FROM_HALVES}>${drawn}</g>`) + coast;
}

/** Ticks, arrow, bar, and the lines round insets. */
export function furnishingsSvg(map: AtlasMap): string {
  const boxes = map.insets
    .map(
      ({ box }) =>
        `M${numbersText([box.left, box.top], 1)}h${box.right - box.left}v${box.bottom - box.top}H${box.left}z`,
    )
    .join("");
  return pathSvg("map-tick", map.furniture.ticks + boxes) + furnitureSvg(map.furniture);
}

/** An outline round one 10 km square, 1.4 units outside it, in units of its placement's cells. */
export function outlineRound(column: number, row: number, outside: number): string {
  const side = CELL + 2 * outside;
  return `M${numbersText([column * CELL - outside, row * CELL - outside], 2)}h${side}v${side}h${-side}z`;
}
