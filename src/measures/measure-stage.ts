import { type Database, sqlBeside } from "../engine/database.ts";
import { fillRows } from "../engine/fill-rows.ts";
import type { Grid } from "../grids/grid.ts";
import { isRefusal } from "../grids/grid.ts";
import { centreOf } from "../grids/squares.ts";
import type { PlacingTerritory } from "../records/place.ts";
import { reasonInWords } from "../records/reasons.ts";
import { placingTerritories } from "../records/record-stage.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { SourceSetting } from "../scheme/settings.ts";
import { comparedPeriods } from "../scheme/settings-agree.ts";
import { EVIDENCE_SETS, type EvidenceSet } from "./change/evidence-sets.ts";
import { measureLocalFrequencies } from "./change/local-frequency/measure-local-frequencies.ts";
import { pairsOfPeriods } from "./change/pairs-of-periods.ts";
import { tellTrends } from "./change/tell-trends.ts";
import { COVERAGE_TABLES, measureCoverage } from "./coverage/measure-coverage.ts";
import { generalise } from "./generalise.ts";
import { measureNeighbourhood, NEIGHBOURHOOD_TABLES } from "./neighbourhood/measure-neighbourhood.ts";
import { measureRange } from "./range/measure-range.ts";
import { measureRegions } from "./regions/measure-regions.ts";
import { measureSeason } from "./season/measure-season.ts";
import { measureUse } from "./surroundings/measure-use.ts";
import { fillVisitLists } from "./visit-lists.ts";

/** Tables the measures leave for publishing. */
export const MEASURE_TABLES = [
  "taxon_squares",
  ...COVERAGE_TABLES,
  "visited_squares",
  "square_states",
  "taxon_coverage",
  "change_counts",
  "taxon_season",
  "season_left_out",
  "season_all",
  "season_effort",
  "season_shares",
  "season_figures",
  "season_shifts",
  "taxon_years",
  "effort_years",
  "taxon_totals",
  "off_map",
  "squares_by_reason",
  "atlas_totals",
  "generalised",
  "square_names",
  "square_years",
  "square_places",
  "accounting",
  "tetrad_shares",
  "spread",
  "placing_counts",
  "periods",
  "compared",
  "surroundings_use",
  "ranges",
  "region_taxa",
  "region_totals",
  "region_bases",
  "region_names",
  "trends",
  "series",
  "square_recording_effort",
  "taxon_time_factors",
  "regions_touched",
  ...NEIGHBOURHOOD_TABLES,
] as const;

/**
 * Computes every measure from the judged records. Needs the tables of the record stage; leaves those of MEASURE_TABLES.
 *
 * @param unreadable rows of each source that could not be read at all: they are part of its accounting
 * @param sets sets of evidence that trends are told from, the headline one first
 */
export async function measure(
  database: Database,
  scheme: Scheme,
  unreadable: ReadonlyMap<string, number>,
  sets: readonly EvidenceSet[] = EVIDENCE_SETS,
): Promise<void> {
  const territories = placingTerritories(scheme);
  await fillSettings(database, scheme);
  await generalise(database, scheme, territories);
  await database.run(sqlBeside(import.meta.url, "sightings.sql"));
  await fillVisitLists(database, scheme);
  for (const file of [
    "taxon-squares",
    "coverage",
    "square-states",
    "change-counts",
    "tetrad-shares",
    "numbers",
    "spread",
    "years",
    "taxon-totals",
    "square-taxa",
  ])
    await database.run(sqlBeside(import.meta.url, `${file}.sql`));
  await fillSquarePlaces(database, scheme, territories);
  await measureSeason(database, scheme);
  await measureCoverage(database, scheme);
  await measureNeighbourhood(database, scheme);
  await measureUse(database, scheme);
  await measureRange(database, territories);
  await measureRegions(database, scheme, territories);
  await tellTrends(database, scheme, sets);
  await measureLocalFrequencies(database, scheme);
  await fillAccounting(database, unreadable);
}

async function fillSettings(database: Database, { checklist, settings, taxa, landSquares }: Scheme): Promise<void> {
  const pairs = (of: (taxonId: string) => readonly string[]) =>
    taxa.flatMap(({ taxonID }) => of(taxonID).map((other) => [taxonID, other] as const));
  const closure = pairs((taxonId) => [taxonId, ...checklist.ancestors(taxonId)]);
  const lineage = pairs((taxonId) => checklist.lineage(taxonId));
  await fillColumns(database, "closure", {
    taxon_id: closure.map(([id]) => id),
    counts_for: closure.map(([, other]) => other),
  });
  await fillColumns(database, "lineage", {
    of_taxon: lineage.map(([id]) => id),
    taxon_id: lineage.map(([, other]) => other),
  });
  await fillColumns(database, "taxon_ids", { taxon_id: taxa.map(({ taxonID }) => taxonID) });
  await fillColumns(database, "periods", {
    period: settings.periods.map((_, index) => index),
    id: settings.periods.map(({ id }) => id),
  });
  const [from, to] = comparedPeriods(settings) ?? [-1, settings.periods.length - 1];
  await fillColumns(database, "compared", { from_period: [from], to_period: [to] });
  await fillColumns(database, "latest", { period: [settings.periods.length - 1] });
  await fillColumns(database, "land_hectads", {
    territory: (landSquares ?? []).map(({ territory }) => territory),
    grid: (landSquares ?? []).map(({ grid }) => grid),
    square: (landSquares ?? []).map(({ hectad }) => hectad),
  });
  await fillColumns(database, "source_classes", {
    source: settings.sources.map(({ id }) => id),
    class: settings.sources.map(classOf),
  });
  const provisional = await database.fill("provisional", { year: "integer" });
  provisional.add({ year: [...settings.provisional_years] });
  provisional.done();
  const { minimum_visits, stricter_minimum_visits } = settings.coverage;
  await fillColumns(database, "rules", {
    minimum_visits: [minimum_visits],
    stricter_minimum_visits: [stricter_minimum_visits ?? 2 * minimum_visits],
  });
  const compared = await database.fill("pairs", { from_period: "integer", to_period: "integer" });
  const both = pairsOfPeriods({ settings });
  compared.add({ from_period: both.map(([earlier]) => earlier), to_period: both.map(([, later]) => later) });
  compared.done();
}

/** Class of a source's records: how they came about, as far as it bears on what was not recorded. */
function classOf({ kind, aim, mass_event }: SourceSetting): string {
  if (kind === "specimen" || kind === "literature") return "lot";
  if (aim === "target species") return "targeted";
  return mass_event ? "mass_event" : "everyday";
}

async function fillColumns(
  database: Database,
  table: string,
  columns: Record<string, (string | number)[]>,
): Promise<void> {
  const types = Object.fromEntries(
    Object.entries(columns).map(([name, values]) => [
      name,
      typeof values[0] === "number" ? ("integer" as const) : ("text" as const),
    ]),
  );
  const filler = await database.fill(table, types);
  filler.add(columns);
  filler.done();
}

const PLACE_COLUMNS = {
  territory: "text",
  grid: "text",
  resolution_m: "integer",
  square: "text",
  crs: "text",
  easting: "integer",
  northing: "integer",
  latitude: "double",
  longitude: "double",
  on_land: "boolean",
} as const;

/** Every square with records, and every land hectad, with corner and centre: code in, geometry out, once a square. */
async function fillSquarePlaces(
  database: Database,
  scheme: Scheme,
  territories: readonly PlacingTerritory[],
): Promise<void> {
  const gridOf = new Map<string, Grid>(territories.map(({ grid }) => [grid.id, grid]));
  const recorded = await database.rows<{ territory: string; grid: string; resolution_m: number; square: string }>(
    "SELECT territory, grid, resolution_m, square FROM square_territories ORDER BY grid, resolution_m, square",
  );
  const land = (scheme.landSquares ?? []).map(({ grid, territory, hectad }) => ({
    territory,
    grid,
    resolution_m: 10_000,
    square: hectad,
  }));
  const landTetrads = new Set(
    (scheme.landSquares ?? []).flatMap(({ grid, hectad, tetrads }) => [
      `${grid} ${hectad}`,
      ...[...tetrads].map((letter) => `${grid} ${hectad}${letter}`),
    ]),
  );
  const all = new Map([...land, ...recorded].map((square) => [`${square.grid} ${square.square}`, square]));
  const rows = [...all].flatMap(([key, { territory, grid, resolution_m, square }]) => {
    const parsed = gridOf.get(grid)?.parse(square);
    if (parsed === undefined || isRefusal(parsed)) return [];
    const [longitude, latitude] = gridOf.get(grid)?.unproject(centreOf(parsed)) ?? [0, 0];
    return [
      {
        territory,
        grid,
        resolution_m,
        square,
        crs: parsed.crs,
        easting: parsed.easting,
        northing: parsed.northing,
        latitude,
        longitude,
        on_land: scheme.landSquares === null || landTetrads.has(key),
      },
    ];
  });
  await fillRows(database, "square_places", PLACE_COLUMNS, rows);
}

/** The accounting: records by source, status and reason, with the rows no reader could read. */
async function fillAccounting(database: Database, unreadable: ReadonlyMap<string, number>): Promise<void> {
  const counted = await database.rows<{ source: string; status: string; reason: string; records: number }>(
    "SELECT source, status, reason, count(*) AS records FROM records GROUP BY ALL ORDER BY ALL",
  );
  const missed = [...unreadable]
    .filter(([, records]) => records > 0)
    .map(([source, records]) => ({ source, status: "not used", reason: "unreadable_row", records }));
  const columns = {
    source: "text",
    status: "text",
    reason: "text",
    reason_in_words: "text",
    records: "integer",
  } as const;
  const rows = [...counted, ...missed].map((row) => ({ ...row, reason_in_words: reasonInWords(row.reason) }));
  await fillRows(database, "accounting", columns, rows);
}
