/**
 * The square as a small book, in a cell of 4 × 4 units: the narrow left part, the spine, is the earlier period,
 * the wide right part, the page, the recent one. Each part is solid (recorded), blank (covered, not recorded)
 * or hatched (not covered).
 */

/** How a square with a record is drawn. */
export type BookClass = "both" | "new" | "gone" | "since" | "before" | "other";

/** Which part of a cell is hatched because it was not covered. */
export type HatchPart = "whole" | "spine" | "page";

/** A rectangle inside a cell, in units from the cell's upper left corner. */
export interface CellBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A rectangle, and the window cut out of it. */
export interface CellShape extends CellBox {
  readonly hole?: CellBox;
}

/** Side of a cell in units. */
export const CELL = 4;

/** Where the spine ends and the page begins. */
export const FOLD = 1.5;

const WHOLE: CellBox = { x: 0.25, y: 0.25, width: 3.5, height: 3.5 };

/** Shape of each class; units of a cell of 4 × 4. */
export const BOOK_SHAPES: Readonly<Record<BookClass, CellShape>> = Object.freeze({
  both: WHOLE,
  new: { ...WHOLE, hole: { x: 0.65, y: 0.65, width: 0.75, height: 2.7 } },
  gone: { ...WHOLE, hole: { x: 1.5, y: 0.55, width: 1.95, height: 2.9 } },
  since: { x: 1.5, y: 0.25, width: 2.25, height: 3.5 },
  before: { x: 0.25, y: 0.25, width: 1.25, height: 3.5 },
  other: { ...WHOLE, hole: { x: 0.65, y: 0.65, width: 2.7, height: 2.7 } },
});

/** Ink of each class: the token of the styles. */
export const BOOK_INKS: Readonly<Record<BookClass, "both" | "new" | "gone" | "part">> = Object.freeze({
  both: "both",
  new: "new",
  gone: "gone",
  since: "part",
  before: "part",
  other: "part",
});

/** From where to where each hatched part reaches across a cell, in units. */
export const HATCH_PARTS: Readonly<Record<HatchPart, readonly [from: number, to: number]>> = Object.freeze({
  whole: [0, CELL],
  spine: [0, FOLD],
  page: [FOLD, CELL],
});

/**
 * The dashes that draw one part of every cell along a run of cells: a run is one stroke from cell to cell in units
 * of a cell, and its dashes begin anew at each run.
 *
 * @param from where the part begins across a cell, in units, 0 ≤ from < 4
 * @param to where it ends, from < to ≤ 4
 * @returns attributes of a stroke, with a space before each; "" where the part is the whole cell
 * @example dashes(1.5, 3.5) // ' stroke-dasharray="0.5 0.5" stroke-dashoffset="-0.375"'
 */
export function dashes(from: number, to: number): string {
  if (to - from >= CELL) return "";
  const share = (to - from) / CELL;
  const offset = from === 0 ? "" : ` stroke-dashoffset="-${from / CELL}"`;
  return ` stroke-dasharray="${share} ${1 - share}"${offset}`;
}

/**
 * A centred square of a number map.
 *
 * @param side 0 < side ≤ 4, in units
 * @example centredSquare(1.6) // { x: 1.2, y: 1.2, width: 1.6, height: 1.6 }
 */
export function centredSquare(side: number): CellShape {
  const edge = Number(((CELL - side) / 2).toFixed(3));
  return { x: edge, y: edge, width: side, height: side };
}
