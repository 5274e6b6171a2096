import type { Database } from "../engine/database.ts";
import { FURTHER_VISITS } from "../measures/neighbourhood/expected-taxa.ts";
import { LEAST_COVERED, REACH_KM } from "../measures/neighbourhood/measure-neighbourhood.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { ExpectedTaxon, RegionFile, WantedFile, WantedSquare } from "./contracts.ts";
import type { Measured } from "./measured.ts";
import { seasonSpan } from "./season-span.ts";
import { slugOf } from "./slug.ts";
import type { TaxonNames } from "./taxon-names.ts";

/** Chance, of 1,000, from which a taxon is listed on a page; the downloads have more. */
export const LISTED_CHANCE = 100;
/** Taxa named beside a square that wants a visit. */
const LIKELY = 3;

/** What is expected, by square ("grid code"), and squares by what they could gain. */
export interface Expected {
  readonly taxa: ReadonlyMap<string, readonly ExpectedTaxon[]>;
  readonly regions: ReadonlyMap<string, readonly string[]>;
  readonly wanted: WantedFile;
  readonly wantedOf: ReadonlyMap<string, WantedSquare>;
}

interface ExpectedRow extends Omit<ExpectedTaxon, "slug" | "months"> {
  grid: string;
  square: string;
  taxon_id: string;
  frequency: number;
}
interface WantedRow {
  grid: string;
  square: string;
  territory: string;
  gain: number;
  best_third: number | null;
  rank: number;
}
type RegionTaxon = RegionFile["expected"][number];

/** A square's key over all grids. @example squareKey({ grid: "irish", square: "O12" }) // => "irish O12" */
export function squareKey({ grid, square }: { grid: string; square: string }): string {
  return `${grid} ${square}`;
}

/** Gathers what is expected in each square and not yet found, and which squares want a visit. */
export async function gatherExpected(
  database: Database,
  names: ReadonlyMap<string, TaxonNames>,
  measured: ReadonlyMap<string, Measured>,
): Promise<Expected> {
  const rows = Map.groupBy(
    await database.rows<ExpectedRow>(
      "SELECT grid, square, taxon_id, chance, frequency, squares_near, squares_with, visits_here, last_year FROM expected_taxa ORDER BY grid, square, chance DESC, taxon_id",
    ),
    squareKey,
  );
  const regions = new Map(
    (
      await database.rows<{ grid: string; square: string; regions: string[] }>(
        "SELECT grid, square, list(region_id ORDER BY region_id) AS regions FROM regions_touched GROUP BY grid, square",
      )
    ).map((row) => [squareKey(row), row.regions]),
  );
  const wantedRows = await database.rows<WantedRow>(
    `SELECT w.grid, w.square, p.territory, w.gain, w.best_third, w.rank
     FROM wanted_squares AS w JOIN square_places AS p ON p.grid = w.grid AND p.square = w.square AND p.resolution_m = 10000 ORDER BY w.rank`,
  );
  const slug = (id: string) => names.get(id)?.slug ?? "";
  const wanted = wantedRows.map((row): [string, WantedSquare] => {
    const own = rows.get(squareKey(row)) ?? [];
    const { grid: _, ...told } = row;
    const likely = own.toSorted((one, other) => gainOf(other) - gainOf(one)).slice(0, LIKELY);
    return [
      squareKey(row),
      {
        ...told,
        ...{ slug: slugOf(row.square), regions: [...(regions.get(squareKey(row)) ?? [])] },
        ...{ visits: own[0]?.visits_here ?? 0, likely: likely.map(({ taxon_id }) => slug(taxon_id)) },
      },
    ];
  });
  const months = new Map([...measured].map(([id, { seasonAll }]) => [id, seasonSpan(seasonAll)]));
  const listed = ({ grid: _, square: __, taxon_id, frequency: ___, ...told }: ExpectedRow): ExpectedTaxon => ({
    ...{ slug: slug(taxon_id), ...told, months: months.get(taxon_id) ?? null },
  });
  return {
    taxa: new Map(
      [...rows].map(([key, own]) => [key, own.filter(({ chance }) => chance >= LISTED_CHANCE).map(listed)]),
    ),
    regions,
    wanted: {
      further_visits: FURTHER_VISITS,
      reach_km: REACH_KM,
      least_covered: LEAST_COVERED,
      squares: wanted.map(([, square]) => square),
    },
    wantedOf: new Map(wanted),
  };
}

function gainOf({ chance, frequency }: ExpectedRow): number {
  return chance * (1 - (1 - frequency / 1000) ** FURTHER_VISITS);
}

/**
 * Taxa expected in a region: those no record of the latest period has from it, each where it is likeliest. Chances of
 * several squares are not put together: squares beside each other hold the same taxa or lack them together.
 *
 * @param recorded slugs of taxa recorded in the region in the latest period
 * @example expectedInRegion(expected, "trent-valley", new Set(["red-tailed"]))[0]?.square // "SK12"
 */
export function expectedInRegion(
  { taxa, regions }: Pick<Expected, "taxa" | "regions">,
  region: string,
  recorded: ReadonlySet<string>,
): RegionTaxon[] {
  const best = new Map<string, RegionTaxon>();
  for (const [key, own] of taxa) {
    if (regions.get(key)?.includes(region) !== true) continue;
    const square = key.slice(key.indexOf(" ") + 1);
    for (const taxon of own)
      if (!recorded.has(taxon.slug) && taxon.chance > (best.get(taxon.slug)?.chance ?? 0))
        best.set(taxon.slug, { ...taxon, square, square_slug: slugOf(square) });
  }
  return [...best.values()].sort((one, other) => other.chance - one.chance || (one.slug < other.slug ? -1 : 1));
}

/** Slugs of the taxa a region has records of from the latest period on. */
export function recordedLately(
  taxa: RegionFile["taxa_list"],
  { settings: { periods } }: Pick<Scheme, "settings">,
): Set<string> {
  const from = periods.at(-1)?.from ?? Number.NEGATIVE_INFINITY;
  return new Set(
    taxa.filter(({ last_year }) => (last_year ?? Number.NEGATIVE_INFINITY) >= from).map(({ slug }) => slug),
  );
}
