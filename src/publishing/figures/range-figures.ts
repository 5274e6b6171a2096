import type { Database } from "../../engine/database.ts";
import type { RangeRow } from "../contracts.ts";
import { rowsByTaxon } from "./rows-by-taxon.ts";

/** Ranges of every taxon: the latest period first, all dates last; in each the whole atlas first, then its territories. */
export async function rangeRows(database: Database): Promise<Map<string, RangeRow[]>> {
  const found = await rowsByTaxon<Omit<RangeRow, "grids"> & { grids: string }>(
    database,
    `SELECT r.taxon_id, r.territory, coalesce(p.id, 'all') AS period, r.grids, r.records, r.held_back AS records_not_shown, r.left_out AS records_left_out,
       r.tetrads, r.hectads, r.hectads_without_tetrad, r.occupancy_km2, r.occupancy_reason, r.occupancy_below_km2,
       r.extent_km2, r.extent_reason, r.extent_raised, r.extent_below_km2
     FROM ranges AS r LEFT JOIN periods AS p USING (period)
     ORDER BY r.taxon_id, r.period DESC, r.territory <> 'all', r.territory`,
  );
  const parted = (row: Omit<RangeRow, "grids"> & { grids: string }): RangeRow => ({
    ...row,
    grids: row.grids === "" ? [] : row.grids.split(" | "),
  });
  return new Map([...found].map(([taxon, rows]) => [taxon, rows.map(parted)]));
}
