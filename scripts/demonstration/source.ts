import type { Random } from "./random.ts";
import type { Sighting } from "./sightings.ts";
import type { World } from "./world.ts";

/** One row of a source: the cells as written, and the sighting behind it. */
export interface Row {
  readonly cells: Record<string, string>;
  readonly sighting: Sighting;
  /** A cell too many at the end of the row, as a broken export leaves. */
  surplus?: string;
}

/** One invented source: a file, its shape, and how its rows come about. */
export interface Source {
  readonly id: string;
  readonly file: string;
  /** The column that names a row. */
  readonly idColumn: string;
  readonly columns: readonly string[];
  readonly form: {
    readonly delimiter: "," | ";";
    readonly encoding: "utf-8" | "windows-1252";
    readonly newline: "\n" | "\r\n";
  };
  /** Share of the demonstration's rows. */
  readonly share: number;
  /** Share of rows with an error. */
  readonly errorShare: number;
  /**
   * Makes the rows, oldest first.
   *
   * @param count how many, give or take the last outing
   * @param before sources made before this one, for a source that copies
   */
  readonly rows: (world: World, count: number, random: Random, before: ReadonlyMap<string, readonly Row[]>) => Row[];
}

/** Comma, UTF-8, line feed. */
export const PLAIN_FORM = { delimiter: ",", encoding: "utf-8", newline: "\n" } as const;

/**
 * Numbers rows: `invented-` and a word, and six digits.
 *
 * @example numbered("walk", 0) // "invented-walk-000001"
 */
export function numbered(word: string, index: number): string {
  return `invented-${word}-${String(index + 1).padStart(6, "0")}`;
}

/**
 * Fills each year with the rows of outings until it has its number.
 *
 * @param years from `spreadOverYears`
 * @param outing rows of one outing in a year; may be none
 * @example fillYears(new Map([[1999, 3]]), () => [row]).length // 3
 */
export function fillYears(years: ReadonlyMap<number, number>, outing: (year: number) => Row[]): Row[] {
  const rows: Row[] = [];
  for (const [year, count] of years) {
    const wanted = rows.length + count;
    for (let i = 0; rows.length < wanted && i < 60 * count; i++) {
      rows.push(...outing(year));
    }
  }
  return rows;
}
