import type { AtlasFile, Period, TaxonFile, TaxonSquare } from "../../publishing/contracts.ts";
import type { AtlasMap } from "./atlas-map.ts";
import type { BookClass, HatchPart } from "./book-cell.ts";
import type { Cell } from "./cell-paths.ts";
import type { Placement, Resolution } from "./placement.ts";

/** The two periods a map compares, or the one it shows. */
export interface ShownPeriods {
  /** The earlier of two; undefined where the map compares nothing. */
  readonly earlier: Period | undefined;
  readonly later: Period | undefined;
  readonly earlierIndex: number;
  readonly laterIndex: number;
}

/** How many squares fall in each class; those of a 10 km map add up to `total`. */
export interface SquareCounts extends Record<BookClass, number> {
  /** Of those found in both periods, the ones covered in both. */
  readonly bothCovered: number;
  readonly coveredBoth: number;
  readonly coveredOne: number;
  readonly coveredNeither: number;
  readonly total: number;
}

/** The squares of one taxon, sorted for drawing. */
export interface TaxonSquares {
  readonly resolution: Resolution;
  /** True where spine and page stand for two periods; else whole squares say "recorded" and nothing about change. */
  readonly compared: boolean;
  readonly periods: ShownPeriods;
  readonly counts: SquareCounts;
  /** Classes by territory id; hectads only. */
  readonly byTerritory: ReadonlyMap<string, Readonly<Record<BookClass, number>>>;
  readonly cells: ReadonlyMap<Placement, Readonly<Record<BookClass, readonly Cell[]>>>;
  /** Always hectads: nothing smaller is judged for cover. */
  readonly hatch: ReadonlyMap<Placement, Readonly<Record<HatchPart, readonly Cell[]>>>;
  /** Codes the atlas's grids cannot place: published but not drawn. */
  readonly unplaced: readonly string[];
}

/** The class of a square of a taxon; `compared` false gives the one-period form. */
export function bookClass(
  square: Pick<TaxonSquare, "state" | "records">,
  compared: boolean,
  { laterIndex }: Pick<ShownPeriods, "laterIndex">,
): BookClass {
  if (!compared) return square.state !== "recorded" || (square.records[laterIndex] ?? 1) > 0 ? "both" : "other";
  switch (square.state) {
    case "retained":
      return "both";
    case "gained":
      return "new";
    case "lost":
      return "gone";
    case "not_comparable_since":
      return "since";
    case "not_comparable_before":
      return "before";
    default:
      return "other";
  }
}

/** The periods an atlas's maps show: the two compared, else the last alone. @example shownPeriods(atlas).later?.label // "2006–2024" */
export function shownPeriods({ periods, compared }: Pick<AtlasFile, "periods" | "compared">): ShownPeriods {
  const earlierIndex = compared ? periods.findIndex(({ id }) => id === compared[0]) : -1;
  const laterIndex = compared ? periods.findIndex(({ id }) => id === compared[1]) : periods.length - 1;
  return { earlier: periods[earlierIndex], later: periods[laterIndex], earlierIndex, laterIndex };
}

/** True where the maps of a resolution may speak of change. */
export function canCompare(
  atlas: Pick<AtlasFile, "compared">,
  taxon: Pick<TaxonFile, "change">,
  resolution: Resolution,
): boolean {
  if (atlas.compared === null) return false;
  if (resolution === 10_000) return true;
  return taxon.change.find((row) => row.resolution_m === 2_000 && row.territory === "all")?.judged ?? false;
}

const empty = <K extends string, V>(keys: readonly K[], make: () => V) =>
  Object.fromEntries(keys.map((key) => [key, make()])) as Record<K, V>;
const CLASSES: readonly BookClass[] = ["both", "new", "gone", "since", "before", "other"];
const PARTS: readonly HatchPart[] = ["whole", "spine", "page"];

/**
 * Sorts the squares of a taxon into the classes that are drawn, places them, and counts them.
 *
 * @param map layout of the atlas's maps
 * @param atlas periods and what is compared
 * @param taxon its squares, the uncovered hectads and the change rows
 * @param resolution 10,000 or 2,000 metres
 * @returns cells by placement and class, and counts; at 10 km the counts of all classes add up to the hectads of the atlas
 * @example sortSquares(map, atlas, taxon, 10_000).counts.new // 189
 */
export function sortSquares(
  map: AtlasMap,
  atlas: Pick<AtlasFile, "periods" | "compared">,
  taxon: Pick<TaxonFile, "squares" | "uncovered" | "change">,
  resolution: Resolution,
): TaxonSquares {
  const compared = canCompare(atlas, taxon, resolution);
  const periods = shownPeriods(atlas);
  const squares = taxon.squares[`${resolution}`];
  const cells = new Map(map.placements.map((placement) => [placement, empty<BookClass, Cell[]>(CLASSES, () => [])]));
  const territoryOf = new Map(map.hectads.map((hectad) => [hectad.square, hectad.territory]));
  const byTerritory = new Map<string, Record<BookClass, number>>();
  const tally = empty(CLASSES, () => 0);
  const unplaced: string[] = [];
  for (const square of squares) {
    const kind = bookClass(square, compared, periods);
    tally[kind] += 1;
    const at = map.locate(square.square, resolution);
    if (at) cells.get(at.placement)?.[kind].push(at.cell);
    else unplaced.push(square.square);
    const territory = territoryOf.get(square.square);
    if (territory === undefined) continue;
    const row = byTerritory.get(territory) ?? empty(CLASSES, () => 0);
    row[kind] += 1;
    byTerritory.set(territory, row);
  }
  const counts = { ...tally, ...coverCounts(map, compared, taxon, periods) };
  return {
    resolution,
    compared,
    periods,
    counts,
    byTerritory,
    cells,
    hatch: hatchCells(map, compared, taxon, periods),
    unplaced,
  };
}

function coverCounts(
  map: AtlasMap,
  compared: boolean,
  taxon: Pick<TaxonFile, "squares" | "uncovered">,
  { earlierIndex, laterIndex }: ShownPeriods,
): Omit<SquareCounts, BookClass> {
  const hectads = taxon.squares["10000"];
  const { neither, later_only, earlier_only } = taxon.uncovered;
  const coveredNeither = neither.length;
  const coveredOne = compared ? later_only.length + earlier_only.length : 0;
  return {
    bothCovered: hectads.filter(
      ({ state, covered }) => state === "retained" && covered[earlierIndex] === true && covered[laterIndex] === true,
    ).length,
    coveredNeither,
    coveredOne,
    coveredBoth: map.hectads.length - hectads.length - coveredNeither - coveredOne,
    total: map.hectads.length,
  };
}

/** Hatch by 10 km square: those without a record, and the part of a recorded square that was not covered. Without a comparison only squares covered in no period. */
function hatchCells(
  map: AtlasMap,
  compared: boolean,
  taxon: Pick<TaxonFile, "squares" | "uncovered">,
  { earlierIndex, laterIndex }: ShownPeriods,
): TaxonSquares["hatch"] {
  const hatch = new Map(map.placements.map((placement) => [placement, empty<HatchPart, Cell[]>(PARTS, () => [])]));
  const add = (code: string, part: HatchPart) => {
    const at = map.locate(code, 10_000);
    if (at) hatch.get(at.placement)?.[part].push(at.cell);
  };
  const { neither, later_only, earlier_only } = taxon.uncovered;
  for (const code of neither) add(code, "whole");
  if (!compared) return hatch;
  for (const code of later_only) add(code, "spine");
  for (const code of earlier_only) add(code, "page");
  for (const { square, state, covered } of taxon.squares["10000"]) {
    const open = { spine: covered[earlierIndex] === false, page: covered[laterIndex] === false };
    if (state === "not_comparable_since" && open.spine) add(square, "spine");
    if (state === "not_comparable_before" && open.page) add(square, "page");
    if (state === "recorded" && open.spine && open.page) add(square, "whole");
    else if (state === "recorded" && open.spine) add(square, "spine");
    else if (state === "recorded" && open.page) add(square, "page");
  }
  return hatch;
}
