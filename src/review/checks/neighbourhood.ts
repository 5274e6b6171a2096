import type { Database } from "../../engine/database.ts";

/** Something counted in one square and block of years, the two as one number that `cellOf` gives. */
export interface Cell {
  readonly at: number;
  readonly records: number;
}
export type Cells = Cell[];

/** Squares and blocks of years as one line of cells, in which sums over what is around are quick. */
export interface Neighbourhood {
  /** The cell of a square and a block of years. */
  cellOf(squareId: number, slab: number): number;
  /** For each cell the sum of what the cells around it hold: neighbouring squares, same block of years or one beside it. */
  sums<Held extends Cell>(cells: readonly Held[], value: (cell: Held) => number): Float64Array;
}

/**
 * Reads `neighbouring_squares`, whose pairs stand both ways.
 *
 * @param counts name of a table whose blocks of years, `slab`, are all that will be asked about
 * @example (await neighbourhood(database, "all_counts")).sums(cells, ({ records }) => records)
 */
export async function neighbourhood(database: Database, counts: string): Promise<Neighbourhood> {
  const [years] = await database.rows<{ first: number | null; last: number | null }>(
    `SELECT min(slab) AS first, max(slab) AS last FROM ${counts}`,
  );
  // One block of years to spare at either end, so that what is beside the first and the last is there too.
  const first = (years?.first ?? 0) - 1;
  const slabs = (years?.last ?? 0) + 2 - first;
  const others = await othersOf(database);
  return {
    cellOf: (squareId, slab) => squareId * slabs + slab - first,
    sums(cells, value) {
      const sums = new Float64Array(others.length * slabs);
      for (const cell of cells) {
        const [amount, slab] = [value(cell), cell.at % slabs];
        for (const other of others[(cell.at - slab) / slabs] ?? []) {
          const at = other * slabs + slab;
          for (let near = at - 1; near <= at + 1; near += 1) sums[near] = (sums[near] ?? 0) + amount;
        }
      }
      return sums;
    },
  };
}

/** Every square's neighbours, itself among them, by its number. */
async function othersOf(database: Database): Promise<number[][]> {
  const others: number[][] = [];
  await database.batches(
    "SELECT square_id, other_id FROM neighbouring_squares ORDER BY square_id, other_id",
    (columns, size) => {
      for (let index = 0; index < size; index += 1) {
        const square = Number(columns["square_id"]?.[index]);
        while (others.length <= square) others.push([]);
        others[square]?.push(Number(columns["other_id"]?.[index]));
      }
    },
  );
  return others;
}
