import type { AtlasMap } from "./atlas-map.ts";
import { centredSquare } from "./book-cell.ts";
import { type Cell, shapesPath } from "./cell-paths.ts";
import { furnishingsSvg, hatchedSvg, landSvg, pathSvg, placedRunsSvg, placedSvg, waterSvg } from "./map-shapes.ts";
import type { Placement } from "./placement.ts";

/** One class of a number map: from `least` to `most`, both inclusive, drawn as a square of a side; side 0 is hatched. */
export interface NumberClass {
  readonly least: number;
  readonly most: number;
  /** Side of the square in a cell of 4 units; 0 for the hatch. */
  readonly side: number;
}

/** Visits: none is hatched, then squares that grow. */
export const VISIT_CLASSES: readonly NumberClass[] = Object.freeze([
  { least: 0, most: 0, side: 0 },
  { least: 1, most: 2, side: 1.6 },
  { least: 3, most: 9, side: 2.3 },
  { least: 10, most: Number.POSITIVE_INFINITY, side: 3.5 },
]);

const SIDES = [0.9, 1.6, 2.3, 2.95, 3.5];

/**
 * Classes for numbers of taxa: none is hatched, then up to five equal steps from 1 to the largest number.
 *
 * @param largest at least 0
 * @returns classes from none upwards
 * @example taxonClasses(18)[1] // { least: 1, most: 4, side: 0.9 }
 */
export function taxonClasses(largest: number): NumberClass[] {
  const steps = Math.max(1, Math.min(SIDES.length, largest));
  const bounds = Array.from({ length: steps }, (_, i) => Math.ceil((largest * (i + 1)) / steps));
  const sides = SIDES.slice(SIDES.length - steps);
  return [
    { least: 0, most: 0, side: 0 },
    ...bounds.map((most, i) => ({ least: (bounds[i - 1] ?? 0) + 1, most, side: sides[i] ?? 3.5 })),
  ];
}

/** The class a number falls in. @example classOf(4, VISIT_CLASSES)?.side // 2.3 */
export function classOf(value: number, classes: readonly NumberClass[]): NumberClass | undefined {
  return classes.find(({ least, most }) => value >= least && value <= most);
}

/** How many squares fall in each class, in the classes' order. @example countByClass([0, 1, 12], VISIT_CLASSES) // [1, 1, 0, 1] */
export function countByClass(values: readonly number[], classes: readonly NumberClass[]): number[] {
  return classes.map(({ least, most }) => values.filter((value) => value >= least && value <= most).length);
}

/**
 * The inside of a number map: one ink, the side of the square grows with the number.
 *
 * @param map layout of the atlas's maps
 * @param values one number a hectad, by code; hectads without one are left as land
 * @param classes from none upwards
 * @returns SVG to stand between an `<svg>` of the frame's size; it refers to the shared definitions
 * @example numberMapSvg(map, new Map([["NZ27", 4]]), VISIT_CLASSES) // '<use href="#atlas-land" …'
 */
export function numberMapSvg(
  map: AtlasMap,
  values: ReadonlyMap<string, number>,
  classes: readonly NumberClass[],
): string {
  const cells = new Map<Placement, Map<NumberClass, Cell[]>>();
  for (const [code, value] of values) {
    const [at, kind] = [map.locate(code, 10_000), classOf(value, classes)];
    if (!at || !kind) continue;
    const byClass = cells.get(at.placement) ?? new Map<NumberClass, Cell[]>();
    const group = byClass.get(kind);
    if (group) group.push(at.cell);
    else byClass.set(kind, [at.cell]);
    cells.set(at.placement, byClass);
  }
  const cellsOf = (placement: Placement, wanted: (side: number) => boolean) =>
    classes.filter(({ side }) => wanted(side)).map((kind) => ({ kind, cells: cells.get(placement)?.get(kind) ?? [] }));
  const hatch = hatchedSvg(
    map,
    placedRunsSvg(map, 10_000, (placement) => cellsOf(placement, (side) => side === 0).flatMap((group) => group.cells)),
  );
  const squares = placedSvg(map, 10_000, (placement) =>
    pathSvg(
      "map-both",
      cellsOf(placement, (side) => side > 0)
        .map((group) => shapesPath(group.cells, centredSquare(group.kind.side)))
        .join(""),
    ),
  );
  return landSvg(map) + hatch + waterSvg(map) + squares + furnishingsSvg(map);
}
