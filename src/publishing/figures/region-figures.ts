import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import type { RegionRow } from "../contracts.ts";
import { regionsById } from "../regions-file.ts";
import { rowsByTaxon } from "./rows-by-taxon.ts";

type Counted = Omit<RegionRow, "slug" | "name"> & { region_id: string };

/** Regions of every taxon by layer, in the order of the scheme's file; records in none last. */
export async function regionRows(database: Database, { regions }: Scheme): Promise<Map<string, RegionRow[]>> {
  const known = regionsById(regions);
  const order = [...known.keys()];
  const place = (id: string) => (known.has(id) ? order.indexOf(id) : order.length);
  const found = await rowsByTaxon<Counted>(
    database,
    "SELECT taxon_id, field, region_id, records, hectads, tetrads, first_year, last_year FROM region_taxa ORDER BY taxon_id, field, region_id",
  );
  const named = ({ region_id, field, ...counts }: Counted): RegionRow => {
    const region = known.get(region_id);
    return { field, slug: region?.id ?? "", name: region?.name ?? "", ...counts };
  };
  const byLayer = (rows: readonly Counted[]) => [...Map.groupBy(rows, ({ field }) => field).values()];
  return new Map(
    [...found].map(([taxon, rows]) => [
      taxon,
      byLayer(rows).flatMap((own) =>
        own.toSorted((one, other) => place(one.region_id) - place(other.region_id)).map(named),
      ),
    ]),
  );
}
