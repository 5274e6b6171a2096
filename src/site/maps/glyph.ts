import type { TaxonSquare } from "../../publishing/contracts.ts";
import { BOOK_INKS, BOOK_SHAPES, type BookClass, CELL, type CellShape, FOLD } from "./book-cell.ts";
import { shapesPath } from "./cell-paths.ts";
import { pathSvg } from "./map-shapes.ts";

/** One square drawn alone: the class of a recorded square or none, and the parts that are hatched. */
export interface Glyph {
  readonly kind: BookClass | undefined;
  readonly spineHatched: boolean;
  readonly pageHatched: boolean;
}

const LINES = {
  spine: "M0 1l1-1M0 2l1.5-1.5M0 3l1.5-1.5M0 4l1.5-1.5M1 4l.5-.5",
  page: "M1.5 1.5l1.5-1.5M1.5 3.5l2.5-2.5M3 4l1-1",
  whole: "M0 1l1-1M0 3l3-3M1 4l3-3M3 4l1-1",
};

/**
 * The book of one square, for words, tables and keys: a cell of 4 × 4 units on land.
 *
 * @param glyph class and hatched parts
 * @returns SVG to stand in an `<svg viewBox="0 0 4 4">`
 * @example glyphSvg({ kind: "both", spineHatched: false, pageHatched: false }) // '<path class="map-land" d="M0 0h4v4H0z"/><path class="map-both" d="M.25.25h3.5v3.5h-3.5z"/>'
 */
export function glyphSvg({ kind, spineHatched, pageHatched }: Glyph): string {
  const lines =
    spineHatched && pageHatched ? LINES.whole : (spineHatched ? LINES.spine : "") + (pageHatched ? LINES.page : "");
  const square =
    kind === undefined ? "" : pathSvg(`map-${BOOK_INKS[kind]}`, shapesPath([{ column: 0, row: 0 }], BOOK_SHAPES[kind]));
  return pathSvg("map-land", "M0 0h4v4H0z") + pathSvg("map-line", lines) + square;
}

/** A square of a number map alone; side 0 is hatched. */
export function numberGlyphSvg(side: number, shape: (side: number) => CellShape): string {
  if (side === 0) return glyphSvg({ kind: undefined, spineHatched: true, pageHatched: true });
  return pathSvg("map-land", "M0 0h4v4H0z") + pathSvg("map-both", shapesPath([{ column: 0, row: 0 }], shape(side)));
}

const CLASS_OF: Readonly<Record<Exclude<TaxonSquare["state"], "recorded">, BookClass>> = Object.freeze({
  retained: "both",
  gained: "new",
  lost: "gone",
  not_comparable_since: "since",
  not_comparable_before: "before",
});

/**
 * The book of a square's state. The part without a record is hatched unless the square was covered then.
 *
 * @param state of the square for a taxon
 * @param compared whether the atlas compares two periods; where it does, "recorded" means in other years only
 * @param covered whether the part without a record was covered, for the states that cannot be compared
 * @example glyphOf("not_comparable_since", true) // { kind: "since", spineHatched: true, pageHatched: false }
 */
export function glyphOf(state: TaxonSquare["state"], compared: boolean, covered = false): Glyph {
  const plain = compared ? "other" : "both";
  return {
    kind: state === "recorded" ? plain : CLASS_OF[state],
    spineHatched: state === "not_comparable_since" && !covered,
    pageHatched: state === "not_comparable_before" && !covered,
  };
}

/** The book enlarged, with its two parts named: spine hatched, page solid. For an `<svg viewBox="-.6 -.9 5.2 5.5">`. */
export function namedBookSvg(): string {
  return (
    `${pathSvg("map-land", "M0 0h4v4H0z")}${pathSvg("map-line", LINES.spine)}${pathSvg("map-both", "M1.5.25h2.25v3.5h-2.25z")}` +
    `<path class="map-fold" d="M${FOLD}-.1v4.3M0 0h${CELL}v${CELL}H0z"/>` +
    '<text x=".75" y="-.28" text-anchor="middle">spine</text><text x="2.85" y="-.28" text-anchor="middle">page</text>'
  );
}
