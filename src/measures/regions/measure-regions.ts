import { type Database, sqlBeside } from "../../engine/database.ts";
import { fillColumns } from "../../engine/fill-rows.ts";
import type { PlacingTerritory } from "../../records/place.ts";
import type { Region, RegionField } from "../../scheme/regions-file.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { regionsOfSquares } from "./regions-of-squares.ts";

/** What stands for a region's id where a record is in none, or in one of several. */
export const NOT_ASSIGNED = "not_assigned";

/**
 * Fills `region_taxa`, `region_totals`, `region_bases` and `region_names`: what was recorded in each region of the scheme, by
 * layer (the field of a record that states such regions). Needs `sightings`, `record_regions`, `closure` and `land_hectads`.
 * Without regions all stay empty.
 *
 * @param territories of the scheme, with their grids
 */
export async function measureRegions(
  database: Database,
  { regions = [] }: Pick<Scheme, "regions">,
  territories: readonly PlacingTerritory[],
): Promise<void> {
  const layers = [...Map.groupBy(regions, ({ field }) => field)];
  const squares = await database.rows<{ grid: string; square: string }>(
    layers.length === 0
      ? "SELECT '' AS grid, '' AS square WHERE false"
      : `SELECT grid, tetrad AS square FROM sightings WHERE tetrad IS NOT NULL
         UNION SELECT grid, hectad FROM sightings WHERE hectad IS NOT NULL
         UNION SELECT grid, square FROM land_hectads ORDER BY ALL`,
  );
  await fillLayers(database, layers);
  await fillSquares(database, layers, { squares, territories });
  await database.run(`CREATE OR REPLACE TEMP TABLE stated_regions AS ${layers.length === 0 ? NONE_STATED : STATED}`);
  await database.run(sqlBeside(import.meta.url, "regions.sql"));
}

const STATED = "SELECT record_no, field, region_id FROM record_regions";
/** Without regions no record was asked which it states. */
const NONE_STATED = "SELECT 0 AS record_no, '' AS field, '' AS region_id WHERE false";

type Layers = readonly [field: RegionField, regions: Region[]][];

async function fillLayers(database: Database, layers: Layers): Promise<void> {
  const ids = layers.flatMap(([field, regions]) =>
    [...new Set(regions.map(({ id }) => id)), NOT_ASSIGNED].map((id) => [field, id] as const),
  );
  await fillColumns(database, "region_layers", { field: "text" }, { field: layers.map(([field]) => field) });
  await fillColumns(
    database,
    "all_regions",
    { field: "text", region_id: "text" },
    { field: ids.map(([field]) => field), region_id: ids.map(([, id]) => id) },
  );
}

/** `square_regions`, one row a layer and square that touches a region, and `regions_touched`, one a region that it touches. */
async function fillSquares(
  database: Database,
  layers: Layers,
  {
    squares,
    territories,
  }: {
    squares: readonly { grid: string; square: string }[];
    territories: readonly PlacingTerritory[];
  },
): Promise<void> {
  const grids = new Map<string, PlacingTerritory["grid"]>(territories.map(({ grid }) => [grid.id, grid]));
  const found = layers.flatMap(([field, regions]) => {
    const touched = regionsOfSquares(squares, regions, grids);
    return squares.flatMap(({ grid, square }, index) => {
      const own = touched[index] ?? [];
      return own.length === 0 ? [] : [{ field, grid, square, own }];
    });
  });
  await fillColumns(
    database,
    "square_regions",
    { field: "text", grid: "text", square: "text", regions: "integer", region_id: "text" },
    {
      field: found.map(({ field }) => field),
      grid: found.map(({ grid }) => grid),
      square: found.map(({ square }) => square),
      regions: found.map(({ own }) => own.length),
      region_id: found.map(({ own }) => (own.length === 1 ? (own[0] ?? null) : null)),
    },
  );
  const each = found.flatMap(({ own, ...square }) => own.map((region_id) => ({ ...square, region_id })));
  await fillColumns(
    database,
    "regions_touched",
    { field: "text", grid: "text", square: "text", region_id: "text" },
    {
      field: each.map(({ field }) => field),
      grid: each.map(({ grid }) => grid),
      square: each.map(({ square }) => square),
      region_id: each.map(({ region_id }) => region_id),
    },
  );
}
