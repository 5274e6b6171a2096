import type { Database } from "../engine/database.ts";
import { isRefusal } from "../grids/grid.ts";
import { parentOf } from "../grids/squares.ts";
import { fewestTaxa } from "../names/fewest-taxa.ts";
import { placingTerritories } from "../records/record-stage.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { SquareFile } from "./contracts.ts";

type Tetrad = SquareFile["tetrads"][number];

/** Tetrads with records: their effort in all, and the names recorded there. */
const RECORDED = `
  WITH names AS (SELECT grid, square, list(DISTINCT taxon_id ORDER BY taxon_id) AS taxa FROM square_names WHERE resolution_m = 2000 GROUP BY grid, square)
  SELECT grid, square, sum(visits)::INTEGER AS visits, sum(records)::INTEGER AS records, coalesce(any_value(names.taxa), []) AS taxa
  FROM square_effort LEFT JOIN names USING (grid, square)
  WHERE resolution_m = 2000 GROUP BY grid, square`;

/**
 * Tetrads by hectad, sorted: those with records, with the fewest taxa that explain their names, and, where the scheme
 * lists them, all others with land.
 */
export async function tetradsOfHectads(database: Database, scheme: Scheme): Promise<Map<string, Tetrad[]>> {
  const gridOf = new Map(placingTerritories(scheme).map(({ grid }) => [grid.id as string, grid]));
  const graph = { descendants: scheme.checklist.descendants };
  const all = new Map<string, Map<string, Tetrad>>();
  const add = (hectad: string, square: string, counts: Pick<Tetrad, "visits" | "taxa" | "records">) => {
    const own = all.get(hectad) ?? new Map<string, Tetrad>();
    own.set(square, { square, letter: square.startsWith(hectad) ? square.slice(hectad.length) : "", ...counts });
    all.set(hectad, own);
  };
  for (const { hectad, tetrads } of scheme.landSquares ?? [])
    for (const letter of tetrads) add(hectad, `${hectad}${letter}`, { visits: 0, taxa: 0, records: 0 });
  const rows = await database.rows<{ grid: string; square: string; visits: number; records: number; taxa: string[] }>(
    RECORDED,
  );
  for (const { grid, square, visits, records, taxa } of rows) {
    const system = gridOf.get(grid);
    const parsed = system?.parse(square);
    if (system === undefined || parsed === undefined || isRefusal(parsed)) continue;
    const hectad = parentOf(system, parsed, 10_000);
    if (hectad !== undefined) add(system.format(hectad), square, { visits, taxa: fewestTaxa(taxa, graph), records });
  }
  return new Map(
    [...all].map(([hectad, own]) => [
      hectad,
      [...own.values()].sort((one, other) => (one.square < other.square ? -1 : 1)),
    ]),
  );
}
