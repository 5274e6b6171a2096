import type { Database } from "../engine/database.ts";
import { fewestTaxa } from "../names/fewest-taxa.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { HectadSummary, SquareFile, SquareState } from "./contracts.ts";
import { type Expected, squareKey } from "./expected.ts";
import type { Measured } from "./measured.ts";
import { slugOf } from "./slug.ts";
import type { TaxonNames } from "./taxon-names.ts";
import { tetradsOfHectads } from "./tetrads-of-hectads.ts";

interface NameRow {
  square: string;
  period: number | null;
  taxon_id: string;
  records: number;
  first_year: number | null;
  last_year: number | null;
}
interface EffortRow {
  square: string;
  period: number | null;
  records: number;
  visits: number;
}
interface PlaceRow {
  territory: string;
  grid: string;
  square: string;
  crs: string;
  easting: number;
  northing: number;
  latitude: number;
  longitude: number;
  on_land: boolean;
}

/** The files of all hectads, sorted by reference: those with land, and those with records. */
export async function squareFiles(
  database: Database,
  scheme: Scheme,
  names: ReadonlyMap<string, TaxonNames>,
  measured: ReadonlyMap<string, Measured>,
  expected: Expected,
): Promise<SquareFile[]> {
  const graph = { descendants: scheme.checklist.descendants };
  const places = await database.rows<PlaceRow>(
    "SELECT * EXCLUDE (resolution_m) FROM square_places WHERE resolution_m = 10000 ORDER BY square, grid",
  );
  const effort = grouped(
    await database.rows<EffortRow>(
      "SELECT square, period, records, visits FROM square_effort WHERE resolution_m = 10000",
    ),
    ({ square }) => square,
  );
  const recorded = grouped(
    await database.rows<NameRow>(
      "SELECT square, period, taxon_id, records, first_year, last_year FROM square_names WHERE resolution_m = 10000 ORDER BY square, period, taxon_id",
    ),
    ({ square }) => square,
  );
  const tetrads = await tetradsOfHectads(database, scheme);
  const years = grouped(
    await database.rows<{ square: string; year: number; records: number; visits: number }>(
      "SELECT square, year, records, visits FROM square_years ORDER BY square, year",
    ),
    ({ square }) => square,
  );
  const land = new Map((scheme.landSquares ?? []).map((square) => [`${square.grid} ${square.hectad}`, square.tetrads]));
  const states = statesBySquare(measured);
  return places.map((place) => {
    const seen = recorded.get(place.square) ?? [];
    const visited = effort.get(place.square) ?? [];
    return {
      ...summaryOf(place, { seen, visited, periods: scheme.settings.periods.length, graph }),
      taxa_list: taxaOf(seen, names, states.get(place.square)),
      tetrads: tetrads.get(place.square) ?? [],
      years: (years.get(place.square) ?? []).map(({ year, records, visits }) => ({ year, records, visits })),
      land_tetrads: scheme.landSquares === null ? null : (land.get(squareKey(place)) ?? ""),
      ...expectedOf(place, expected),
    };
  });
}

function summaryOf(
  place: PlaceRow,
  {
    seen,
    visited,
    periods,
    graph,
  }: { seen: NameRow[]; visited: EffortRow[]; periods: number; graph: Parameters<typeof fewestTaxa>[1] },
): HectadSummary {
  const inPeriod = <T>(count: (period: number) => T) => Array.from({ length: periods }, (_, period) => count(period));
  return {
    ...place,
    slug: slugOf(place.square),
    latitude: Math.round(place.latitude * 1e5) / 1e5,
    longitude: Math.round(place.longitude * 1e5) / 1e5,
    visits: inPeriod((period) =>
      sum(
        visited.filter((row) => row.period === period),
        ({ visits }) => visits,
      ),
    ),
    taxa: inPeriod((period) => fewestTaxa(distinct(seen.filter((row) => row.period === period)), graph)),
    taxa_all: fewestTaxa(distinct(seen), graph),
    records: sum(visited, ({ records }) => records),
  };
}

function expectedOf(
  place: PlaceRow,
  { taxa, regions, wantedOf }: Expected,
): Pick<SquareFile, "regions" | "expected" | "wanted_rank" | "wanted_gain" | "wanted_third"> {
  const wanted = wantedOf.get(squareKey(place));
  return {
    regions: [...(regions.get(squareKey(place)) ?? [])],
    expected: [...(taxa.get(squareKey(place)) ?? [])],
    wanted_rank: wanted?.rank ?? null,
    wanted_gain: wanted?.gain ?? 0,
    wanted_third: wanted?.best_third ?? null,
  };
}

function taxaOf(
  seen: NameRow[],
  names: ReadonlyMap<string, TaxonNames>,
  states: ReadonlyMap<string, SquareState> | undefined,
): SquareFile["taxa_list"] {
  return [...grouped(seen, ({ taxon_id }) => taxon_id)]
    .map(([taxon, rows]) => ({
      slug: names.get(taxon)?.slug ?? "",
      state: states?.get(taxon) ?? ("recorded" as const),
      records: sum(rows, ({ records }) => records),
      first_year: extreme(rows, ({ first_year }) => first_year, Math.min),
      last_year: extreme(rows, ({ last_year }) => last_year, Math.max),
    }))
    .sort((one, other) => other.records - one.records || (one.slug < other.slug ? -1 : 1));
}

function statesBySquare(measured: ReadonlyMap<string, Measured>): Map<string, Map<string, SquareState>> {
  const states = new Map<string, Map<string, SquareState>>();
  for (const [taxon, { squares }] of measured)
    for (const { square, state } of squares["10000"]) {
      const own = states.get(square) ?? new Map<string, SquareState>();
      own.set(taxon, state);
      states.set(square, own);
    }
  return states;
}

function grouped<Row>(rows: readonly Row[], key: (row: Row) => string): Map<string, Row[]> {
  return Map.groupBy(rows, key);
}

function distinct(rows: readonly NameRow[]): string[] {
  return [...new Set(rows.map(({ taxon_id }) => taxon_id))];
}

function sum<Row>(rows: readonly Row[], of: (row: Row) => number): number {
  return rows.reduce((total, row) => total + of(row), 0);
}

function extreme<Row>(
  rows: readonly Row[],
  of: (row: Row) => number | null,
  pick: (...values: number[]) => number,
): number | null {
  const values = rows.flatMap((row) => of(row) ?? []);
  return values.length === 0 ? null : pick(...values);
}
