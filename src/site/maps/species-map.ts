import type { AtlasMap } from "./atlas-map.ts";
import { BOOK_INKS, BOOK_SHAPES, dashes, HATCH_PARTS, type HatchPart } from "./book-cell.ts";
import { type Cell, shapesPath } from "./cell-paths.ts";
import {
  furnishingsSvg,
  hatchedSvg,
  landSvg,
  movedSvg,
  outlineRound,
  pathSvg,
  placedRunsSvg,
  placedSvg,
  waterSvg,
} from "./map-shapes.ts";
import { matrixFor, type Placement } from "./placement.ts";
import type { TaxonSquares } from "./taxon-squares.ts";

/** Groups of cells drawn as runs, in the order they are painted; `hatched` is the part that is not covered in all of them. */
const RUNS = [
  { id: "since", kind: "since", hatched: "spine" },
  { id: "since-covered", kind: "since", hatched: undefined },
  { id: "before", kind: "before", hatched: "page" },
  { id: "before-covered", kind: "before", hatched: undefined },
  { id: "both", kind: "both", hatched: undefined },
] as const;
/** Classes with a window cut out, drawn shape by shape: between the runs of parts and those of whole squares. */
const WINDOWED = ["other", "gone", "new"] as const;

/**
 * The inside of a species map: land, hatch, water, the squares on their own grids, ticks and furniture. Squares
 * whose drawing is one bar are strokes from cell to cell, dashed; the hatch beside them is the same strokes again.
 *
 * @param map layout of the atlas's maps
 * @param taxon its squares, sorted
 * @param id stem of the ids of the runs, one a map of a page
 * @param here code of a square to outline, if any
 * @returns SVG to stand between an `<svg>` of the frame's size; it refers to the shared definitions
 * @example speciesMapSvg(map, sortSquares(map, atlas, taxon, 10_000), "map") // '<use href="#atlas-land" class="map-land"/><g class="map-hatch" …'
 */
export function speciesMapSvg(map: AtlasMap, taxon: TaxonSquares, id: string, here?: string): string {
  return (
    landSvg(map) +
    hatchedSvg(map, hatchSvg(map, taxon, id)) +
    waterSvg(map) +
    squaresSvg(map, taxon, id) +
    hereSvg(map, here) +
    furnishingsSvg(map)
  );
}

/** The squares of a taxon, each class on its own grid. */
export function squaresSvg(map: AtlasMap, taxon: TaxonSquares, id: string): string {
  const runs = RUNS.map((group) => {
    const { x, width } = BOOK_SHAPES[group.kind];
    const body = runsSvg(map, taxon, group);
    const ink = BOOK_INKS[group.kind];
    return body === ""
      ? ""
      : `<g class="map-runs runs-${ink}"${dashes(x, x + width)}><g id="${id}-${group.id}">${body}</g></g>`;
  });
  const windows = WINDOWED.map((kind) =>
    placedSvg(map, taxon.resolution, (placement) =>
      pathSvg(`map-${BOOK_INKS[kind]}`, shapesPath(taxon.cells.get(placement)?.[kind] ?? [], BOOK_SHAPES[kind])),
    ),
  );
  return [...runs.slice(0, -1), ...windows, ...runs.slice(-1)].join("");
}

type RunGroup = (typeof RUNS)[number];

function runsSvg(map: AtlasMap, taxon: TaxonSquares, group: RunGroup): string {
  return placedRunsSvg(map, taxon.resolution, (placement) => cellsOf(taxon, placement, group));
}

/** Cells of a group of runs: those of its class whose other part is hatched, or those whose is not. */
function cellsOf(taxon: TaxonSquares, placement: Placement, { kind, hatched }: RunGroup): readonly Cell[] {
  const cells = taxon.cells.get(placement)?.[kind] ?? [];
  if (kind === "both") return cells;
  const open = openCells(taxon, placement, kind === "since" ? "spine" : "page");
  return cells.filter((cell) => open.has(keyOf(cell)) === (hatched !== undefined));
}

/** Keys of the cells hatched in a part; none at 2 km, whose hatch is that of hectads. */
function openCells(taxon: TaxonSquares, placement: Placement, part: HatchPart): ReadonlySet<string> {
  return new Set(taxon.resolution === 10_000 ? taxon.hatch.get(placement)?.[part].map(keyOf) : []);
}

function keyOf({ column, row }: Cell): string {
  return `${column} ${row}`;
}

/** The hatched cells of a taxon; those beside a bar are the strokes of the bars again, by reference. */
export function hatchSvg(map: AtlasMap, taxon: TaxonSquares, id: string): string {
  return (["whole", "spine", "page"] as const)
    .map((part) => {
      const shared = RUNS.find(({ hatched }) => hatched === part);
      const drawnAgain = (placement: Placement) =>
        new Set(shared && taxon.resolution === 10_000 ? cellsOf(taxon, placement, shared).map(keyOf) : []);
      const own = placedRunsSvg(map, 10_000, (placement) => {
        const again = drawnAgain(placement);
        return (taxon.hatch.get(placement)?.[part] ?? []).filter((cell) => !again.has(keyOf(cell)));
      });
      const again =
        shared && map.placements.some((placement) => drawnAgain(placement).size > 0)
          ? `<use href="#${id}-${shared.id}"/>`
          : "";
      return own + again === "" ? "" : `<g${dashes(...HATCH_PARTS[part])}>${own}${again}</g>`;
    })
    .join("");
}

/**
 * The runs of a species map that are also whole squares of a smaller map of the same page: those of classes found
 * in the later period.
 *
 * @param map layout of the atlas's maps
 * @param taxon its squares, sorted
 * @param id stem of the ids, as given to the species map
 * @returns one `<use>` a group of runs that is drawn
 * @example laterRunsSvg(map, taxon, "map") // '<use href="#map-since"/><use href="#map-both"/>'
 */
export function laterRunsSvg(map: AtlasMap, taxon: TaxonSquares, id: string): string {
  return RUNS.filter(({ kind }) => kind !== "before")
    .filter((group) => runsSvg(map, taxon, group) !== "")
    .map((group) => `<use href="#${id}-${group.id}"/>`)
    .join("");
}

/** The current square: an outline in the accent, 1.4 units of the frame outside its cell. */
export function hereSvg(map: AtlasMap, code: string | undefined, outside = 1.4): string {
  const at = code === undefined ? undefined : map.locate(code, 10_000);
  if (!at) return "";
  const matrix = matrixFor(at.placement, 10_000);
  const scale = Math.hypot(matrix[0], matrix[1]);
  return movedSvg(matrix, pathSvg("map-here", outlineRound(at.cell.column, at.cell.row, outside / scale)));
}
