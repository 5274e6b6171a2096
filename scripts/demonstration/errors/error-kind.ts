import type { Random } from "../random.ts";
import type { Row, Source } from "../source.ts";

/** One known kind of error. */
export interface ErrorKind {
  readonly kind: string;
  /** How many of its cards are in the deck; 0 for a kind that has a share of its own. */
  readonly cards: number;
  /** Share of a source's rows that get it after the deck is dealt, so that the others fall as they would without it. */
  readonly share?: number;
  /** Whether a source has the columns that the error needs. */
  readonly fits: (source: Source) => boolean;
  /** Spoils a row; returns the column and what was right there, or undefined where the row does not lend itself. */
  readonly spoil: (row: Row, random: Random) => Correction | undefined;
}

/** What a spoilt row should have said. */
export interface Correction {
  readonly column: string;
  readonly right: string;
}

/**
 * Writes a wrong value into one cell.
 *
 * @returns the correction, or undefined where the value is not wrong after all
 * @example put(row, "eventDate", "2011-02-30") // { column: "eventDate", right: "2011-07-12" }
 */
export function put(row: Row, column: string, wrong: string): Correction | undefined {
  const right = row.cells[column];
  if (right === undefined || right === wrong) {
    return undefined;
  }
  row.cells[column] = wrong;
  return { column, right };
}

/** True for sources that have a column. @example hasColumn("eventDate")(walks) // true */
export function hasColumn(...columns: readonly string[]): (source: Source) => boolean {
  return (source) => columns.some((column) => source.columns.includes(column));
}

/** The first of some columns that a row has. @example columnOf(row, "gridReference", "Grid ref") // "Grid ref" */
export function columnOf(row: Row, ...columns: readonly string[]): string {
  return columns.find((column) => row.cells[column] !== undefined) ?? (columns[0] as string);
}
