import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../engine/database.ts";
import { NEAREST_KM, REACH_KM } from "../measures/neighbourhood/measure-neighbourhood.ts";
import { NeighbourhoodBlock, NeighbourhoodIndex } from "./contracts/neighbourhoods.ts";
import type { TaxonNames } from "./taxon-names.ts";

/** Side of a block in units of 10 km. */
const BLOCK = 10;

interface PlaceRow {
  grid: string;
  square: string;
  easting: number;
  northing: number;
  weighted_visits: number;
}
interface AroundRow {
  grid: string;
  square: string;
  taxon_id: string;
  frequency: number;
  here: number;
  last_year: number | null;
  nearest_km: number | null;
}

/**
 * Name of the file a 10 km square is in, without its ending.
 *
 * @param grid its id
 * @param easting of the square's south-west corner, in units of 10 km
 * @param northing the same
 * @example blockOf("british", 42, 57) // "british-4-5"
 */
export function blockOf(grid: string, easting: number, northing: number): string {
  return `${grid}-${Math.floor(easting / BLOCK)}-${Math.floor(northing / BLOCK)}`;
}

/**
 * Writes what is recorded around each 10 km square into a folder that is copied to the site's `/identify/`: one small
 * file for each 100 km block with land or records, and `places/index.json`. From the measured neighbourhoods alone, so
 * that a taxon whose places are withheld has no row in it.
 *
 * @param database with the neighbourhood tables and `square_places`
 * @param names of all taxa, in the checklist's order
 * @param options folder, usually `identify` of the published folder; number of the latest period; whether records are invented
 * @example await writeNeighbourhoods(database, names, { folder: "published/identify", latest: 1, invented: false })
 */
export async function writeNeighbourhoods(
  database: Database,
  names: ReadonlyMap<string, TaxonNames>,
  { folder, latest, invented }: { folder: string; latest: number; invented: boolean },
): Promise<void> {
  const squares = await database.rows<PlaceRow>(
    `SELECT e.grid, e.square, (p.easting // 10000)::INTEGER AS easting, (p.northing // 10000)::INTEGER AS northing, e.weighted_visits
     FROM neighbourhood_effort AS e
     JOIN square_places AS p ON p.grid = e.grid AND p.square = e.square AND p.resolution_m = 10000
     ORDER BY e.grid, e.square`,
  );
  const around = await database.rows<AroundRow>(
    "SELECT grid, square, taxon_id, frequency, here, last_year, nearest_km FROM neighbourhood_frequencies ORDER BY grid, square, taxon_id",
  );
  const [total] = await database.rows<{ visits: number | null }>(
    "SELECT sum(visits)::BIGINT AS visits FROM square_effort WHERE resolution_m = 10000 AND period = $latest",
    { latest },
  );
  const places = join(folder, "places");
  mkdirSync(places, { recursive: true });
  const write = (name: string, value: unknown) =>
    writeFileSync(join(places, `${name}.json`), `${JSON.stringify(value)}\n`);
  const told = new Set(around.map(({ taxon_id }) => taxon_id));
  const blocks = blocksOf(squares, around, [...names.keys()]);
  const mark = invented ? { invented } : {};
  for (const [name, block] of blocks) write(name, NeighbourhoodBlock.parse({ ...mark, ...block }));
  const index = {
    ...mark,
    taxa: [...names.values()].map(({ slug }) => slug),
    blocks: [...blocks.keys()],
    squares: [...blocks.values()].map((block) => block.squares.map(([code]) => code).join(" ")),
    grids: [...new Set(squares.map(({ grid }) => grid))],
    untold: [...names].filter(([id]) => !told.has(id)).map(([, { slug }]) => slug),
    full_weight: REACH_KM,
    near_km: REACH_KM,
    nearest_km: NEAREST_KM,
    visits: total?.visits ?? 0,
    everywhere: everywhere(squares, around, [...names.keys()]),
  };
  write("index", NeighbourhoodIndex.parse(index));
}

function blocksOf(
  squares: readonly PlaceRow[],
  around: readonly AroundRow[],
  taxa: readonly string[],
): Map<string, NeighbourhoodBlock> {
  const place = new Map(taxa.map((taxon, i) => [taxon, i]));
  const ofSquare = Map.groupBy(around, keyOf);
  const byBlock = Map.groupBy(squares, ({ grid, easting, northing }) => blockOf(grid, easting, northing));
  return new Map(
    [...byBlock]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, own]) => [
        name,
        {
          squares: own.map((one): NeighbourhoodBlock["squares"][number] => [
            one.square,
            one.easting,
            one.northing,
            one.weighted_visits,
            (ofSquare.get(keyOf(one)) ?? [])
              .map((row): NeighbourhoodBlock["squares"][number][4][number] => [
                place.get(row.taxon_id) ?? 0,
                row.frequency,
                row.here,
                row.last_year ?? 0,
                row.nearest_km ?? -1,
              ])
              .sort(([a], [b]) => a - b),
          ]),
        },
      ]),
  );
}

/** Whole numbers are summed in squares' order: the same everywhere. */
function everywhere(squares: readonly PlaceRow[], around: readonly AroundRow[], taxa: readonly string[]): number[] {
  const weight = new Map(squares.map((one) => [keyOf(one), one.weighted_visits]));
  const all = [...weight.values()].reduce((sum, one) => sum + one, 0);
  const sums = new Map<string, number>();
  for (const row of around)
    sums.set(row.taxon_id, (sums.get(row.taxon_id) ?? 0) + row.frequency * (weight.get(keyOf(row)) ?? 0));
  return taxa.map((taxon) => (all === 0 ? 0 : Math.round((sums.get(taxon) ?? 0) / all)));
}

function keyOf({ grid, square }: { grid: string; square: string }): string {
  return `${grid} ${square}`;
}
