import { BOOK_INKS, type BookClass } from "../maps/book-cell.ts";
import type { RecordedSquare, TaxonOnMap } from "./map-data.ts";

/** How one part of a square is painted: ink, whole or as an open frame; hatched where it was not covered. */
export interface PartPaint {
  readonly ink?: "both" | "new" | "gone" | "part";
  readonly open?: boolean;
  readonly hatch?: boolean;
  /** Opacity of the ink; whole where absent. */
  readonly tint?: number;
}

/** Paint of the two parts of a square. */
export interface SquarePaint {
  readonly spine: PartPaint;
  readonly page: PartPaint;
}

/** What the reader chose: the two compared periods together, one of them by its place, any date (whole squares, no word of change), or the visits. */
export type View =
  | { readonly kind: "compared"; readonly earlier: number; readonly later: number }
  | { readonly kind: "single"; readonly period: number; readonly isEarlier: boolean }
  | { readonly kind: "any" }
  | { readonly kind: "visits" };

const CLASSES: Readonly<Record<RecordedSquare["state"], BookClass>> = Object.freeze({
  retained: "both",
  gained: "new",
  lost: "gone",
  not_comparable_since: "since",
  not_comparable_before: "before",
  recorded: "other",
});

const BLANK: SquarePaint = { spine: {}, page: {} };
const whole = (part: PartPaint): SquarePaint => ({ spine: part, page: part });

/**
 * Paint of a recorded square, in the same classes as the printed map.
 *
 * @param square state, cover and records by period
 * @param view compared periods, one period, or any date (whole squares, no word of change)
 * @returns paint of spine and page; a part without ink or hatch is blank
 * @example paintOf({ state: "gained", covered: [true, true], records: [0, 4] }, { kind: "compared", earlier: 0, later: 1 }).spine // { ink: "new", open: true }
 */
export function paintOf({ state, covered, records }: RecordedSquare, view: View): SquarePaint {
  if (view.kind === "any" || view.kind === "visits")
    return whole(records.some((number) => number > 0) ? { ink: "both" } : { ink: "part", open: true });
  if (view.kind === "single") {
    if ((records[view.period] ?? 0) > 0) return whole({ ink: "both" });
    return covered[view.period] === false ? whole({ hatch: true }) : BLANK;
  }
  const kind = CLASSES[state];
  const ink = BOOK_INKS[kind];
  const hatchOf = (period: number): PartPaint => (covered[period] === false ? { hatch: true } : {});
  switch (kind) {
    case "both":
      return whole({ ink });
    case "new":
      return { spine: { ink, open: true }, page: { ink } };
    case "gone":
      return { spine: { ink }, page: { ink, open: true } };
    case "since":
      return { spine: hatchOf(view.earlier), page: { ink } };
    case "before":
      return { spine: { ink }, page: hatchOf(view.later) };
    default:
      return {
        spine: { ink, open: true, ...hatchOf(view.earlier) },
        page: { ink, open: true, ...hatchOf(view.later) },
      };
  }
}

/** Paint of a hectad without a record. @example paintUncovered("later_only", { kind: "compared", earlier: 0, later: 1 }).spine // { hatch: true } */
export function paintUncovered(cover: "neither" | "later_only" | "earlier_only", view: View): SquarePaint {
  const [before, since] = [cover !== "earlier_only", cover !== "later_only"];
  const hatched = (yes: boolean): PartPaint => (yes ? { hatch: true } : {});
  if (view.kind === "compared") return { spine: hatched(before), page: hatched(since) };
  if (view.kind === "any" || view.kind === "visits") return whole(hatched(cover === "neither"));
  return whole(hatched(view.isEarlier ? before : since));
}

/** Least visits of each tint, the fullest first, as on the printed maps of coverage. */
const TINTS = [
  [10, 1],
  [3, 0.62],
  [1, 0.3],
] as const;

/**
 * Paint of visits: the spine those of the earlier compared period, the page those of the later; one number fills both.
 *
 * @param visits of the two compared periods, or one number
 * @returns hatched parts where there was none
 * @example paintVisits([0, 4]) // { spine: { hatch: true }, page: { ink: "both", tint: 0.62 } }
 */
export function paintVisits(visits: readonly [number, number] | readonly [number]): SquarePaint {
  const [spine, page = spine] = visits;
  return { spine: partOfVisits(spine), page: partOfVisits(page) };
}

function partOfVisits(number: number): PartPaint {
  const tint = TINTS.find(([least]) => number >= least)?.[1];
  return tint === undefined ? { hatch: true } : { ink: "both", tint };
}

/** The view of 2 km squares: change only where it is judged at that size. */
export function viewOfTetrads(view: View, { judgedAt2km }: Pick<TaxonOnMap, "judgedAt2km">): View {
  return view.kind === "compared" && !judgedAt2km ? { kind: "any" } : view;
}
