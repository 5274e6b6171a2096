import type { Refusal, SquareSize } from "./grid.ts";
import { quarterName, quarterOffset } from "./quarter.ts";
import { tetradLetter, tetradOffset } from "./tetrad.ts";

/** What follows the letters of a reference: metres east and north inside the 100 km square, and the side in metres. */
export interface Figures {
  readonly east: number;
  readonly north: number;
  readonly size: SquareSize;
}

/** Side in metres by the number of figures. */
const SIZE_BY_FIGURES: Readonly<Record<number, SquareSize>> = Object.freeze({
  0: 100_000,
  2: 10_000,
  4: 1_000,
  6: 100,
  8: 10,
  10: 1,
});
const FIGURES_BY_SIZE: ReadonlyMap<SquareSize, number> = new Map(
  Object.entries(SIZE_BY_FIGURES).map(([figures, size]) => [size, Number(figures) / 2]),
);

/** More characters than any reference has; a longer text is a remark in the wrong column. */
const LONGEST = 60;
/** Spaces of every kind, and the marks without width that copying from other programs leaves. */
const BLANKS = /[\s\u00AD\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069]+/g;
/** A beginning that ends in a letter, the last run of figures with spaces, dots and commas among them, and an ending. */
const PARTS = /^([A-Z0-9 ]*?[A-Z]) ?[.,/]? ?([\d .,]*)((?:[A-Z] ?){0,2})[.,]?$/;

/**
 * A reference in upper-case ASCII without spaces: full-width characters narrowed, spaces of every kind dropped, one
 * stray dot or comma dropped where it cannot be mistaken. Figures written together are never parted: where the half
 * of "388 7" falls inside a group, or a dot or comma stands anywhere but at the half, the figures keep their spaces
 * and marks. What is left is for the reader of figures to refuse.
 *
 * @param text as written; beyond 60 characters it is cut and ends in "…"
 * @returns for example "TQ388773"
 * @example tidyReference("ｔｑ 388, 773"); // => "TQ388773"
 * @example tidyReference("TQ 388 7"); // => "TQ388 7"
 */
export function tidyReference(text: string): string {
  const plain = text
    .replace(/[\uFF01-\uFF5E]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(BLANKS, " ")
    .trim()
    // Other letters have upper-case forms in ASCII that nobody wrote: ß is SS.
    .replace(/[a-z]/g, (letter) => letter.toUpperCase());
  const tidy = plain.replaceAll(" ", "");
  if (tidy.length > LONGEST) return `${tidy.slice(0, LONGEST)}…`;
  const parts = PARTS.exec(plain);
  if (parts === null) return tidy;
  const [, letters = "", run = "", ending = ""] = parts;
  const figures = run.replaceAll(/[ .,]/g, "");
  const middle = isCutAtHalf(run, figures.length) ? figures : run.trim();
  return letters.replaceAll(" ", "") + middle + ending.replaceAll(" ", "");
}

/** Whether the half of the figures falls between two groups, and a dot or comma only there, before or after them. */
function isCutAtHalf(run: string, count: number): boolean {
  const groups = run.match(/\d+/g) ?? [];
  let before = 0;
  let fallsBetween = groups.length < 2 || count % 2 === 1;
  for (const [part] of run.matchAll(/\d+|[.,]/g)) {
    if (/\d/.test(part)) before += part.length;
    else if (![0, count / 2, count].includes(before)) return false;
    fallsBetween ||= before * 2 === count;
  }
  return fallsBetween && !/[.,] ?[.,]/.test(run);
}

/**
 * Reads the figures of a reference, with the tetrad letter or 5 km quarter that may follow two of them.
 *
 * @param text tidied, without the letters of the 100 km square: "", "38", "3877", "38A", "38SW" … "3888077340"
 * @returns the figures, or why they name no square
 * @example readFigures("38SW"); // => { east: 30000, north: 80000, size: 5000 }
 */
export function readFigures(text: string): Figures | Refusal {
  const parts = /^(\d*)([A-Z]*)$/.exec(text);
  if (parts === null) {
    return /^[\d ]+[A-Z]*$/.test(text)
      ? refusal(
          `the figures ${text} stand in unequal groups`,
          "check whether a figure is missing; write both halves alike",
        )
      : refusal(`“${text}” is not figures`, "write figures only after the letters, as in 3877");
  }
  const [, digits = "", ending = ""] = parts;
  const size = SIZE_BY_FIGURES[digits.length];
  if (size === undefined) return refuseCount(digits);
  const half = digits.length / 2;
  const unit = 10 ** (5 - half);
  const east = Number(digits.slice(0, half)) * unit;
  const north = Number(digits.slice(half)) * unit;
  return ending === "" ? { east, north, size } : readEnding(east, north, size, ending);
}

function refuseCount(digits: string): Refusal {
  if (digits.length % 2 === 1) {
    const count = digits.length === 1 ? "1 figure" : `${digits.length} figures`;
    return refusal(`${count} (${digits}) cannot be halved`, "give as many figures for the easting as for the northing");
  }
  return refusal(
    `${digits.length} figures (${digits}) are more than the ten that name a metre`,
    "give ten figures at most",
  );
}

function readEnding(east: number, north: number, size: SquareSize, ending: string): Figures | Refusal {
  if (size !== 10_000) {
    return refusal(
      `“${ending}” after ${size === 100_000 ? "no" : "more than two"} figures`,
      "a tetrad letter or a 5 km quarter follows exactly two figures",
    );
  }
  const offset = ending.length === 1 ? tetradOffset(ending) : quarterOffset(ending);
  if (offset !== undefined)
    return { east: east + offset[0], north: north + offset[1], size: ending.length === 1 ? 2_000 : 5_000 };
  if (ending === "O")
    return refusal("O is no tetrad letter", "the letters run A to Z without O; check whether 0 was meant");
  return refusal(
    `“${ending}” is neither a tetrad letter nor a 5 km quarter`,
    "use one letter A to Z without O, or SW, NW, SE, NE",
  );
}

function refusal(refused: string, wayOut: string): Refusal {
  return { refused, wayOut };
}

/**
 * Writes the figures of a square: digits by truncation, with the tetrad letter or the 5 km quarter for those sizes.
 *
 * @param east metres east of the 100 km square's corner, 0 to under 100,000
 * @param north metres north of it
 * @param size side in metres
 * @returns "" for 100 km, "38", "38A", "38SW", "3877" …
 * @throws {RangeError} for a size that is not written this way
 * @example writeFigures(38880, 77340, 100); // => "388773"
 */
export function writeFigures(east: number, north: number, size: SquareSize): string {
  if (size === 2_000) return digitsOf(east, north, 1) + tetradLetter(east % 10_000, north % 10_000);
  if (size === 5_000) return digitsOf(east, north, 1) + quarterName(east % 10_000, north % 10_000);
  const figures = FIGURES_BY_SIZE.get(size);
  if (figures === undefined) throw new RangeError(`a square of ${size} m is not written with figures`);
  return digitsOf(east, north, figures);
}

function digitsOf(east: number, north: number, figures: number): string {
  if (figures === 0) return "";
  const unit = 10 ** (5 - figures);
  const digits = (value: number) => String(Math.floor(value / unit)).padStart(figures, "0");
  return digits(east) + digits(north);
}
