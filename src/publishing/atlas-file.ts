import type { Database } from "../engine/database.ts";
import { gridNamed } from "../grids/index.ts";
import { widerThan } from "../names/caste-classes.ts";
import { casteVocabulary } from "../scheme/caste-vocabulary.ts";
import { EVERY_TAXON } from "../scheme/outside-file.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { comparedPeriods } from "../scheme/settings-agree.ts";
import type { AtlasFile, TaxonSummary } from "./contracts.ts";
import { licenceOf } from "./licences.ts";
import { ableToDraw, coordinateSystemOfGrid } from "./map-frame.ts";
import { escapeHtml } from "./markdown.ts";
import type { VisitCounts } from "./methods/coverage-methods.ts";
import { type MethodCounts, methodStatements } from "./methods.ts";
import { charactersOf, outsideTaxa } from "./outside-taxa.ts";
import { periodLabel } from "./period-label.ts";
import { sendingOf } from "./sending.ts";
import type { TaxonNames } from "./taxon-names.ts";
import { thankedRecorders } from "./thanks.ts";

const INVENTED_NOTICE = "Invented records. The species are real; the scheme, places of recording and people are not.";

/** The atlas's own file: settings in force, totals, effort and the list of taxa. */
export async function atlasFile(
  database: Database,
  scheme: Scheme,
  {
    taxa,
    names,
    read,
    used,
  }: { taxa: TaxonSummary[]; names: ReadonlyMap<string, TaxonNames>; read: number; used: number },
): Promise<AtlasFile> {
  const { settings, territories } = scheme;
  const compared = comparedPeriods(settings);
  const periods = settings.periods.map((period) => ({ ...period, label: periodLabel(period) }));
  const [totals] = await database.rows<{
    hectads: number;
    tetrads: number;
    first_year: number | null;
    last_year: number | null;
  }>("SELECT hectads, tetrads, first_year, last_year FROM atlas_totals");
  const [visits] = await database.rows<{ visits: number }>(
    "SELECT coalesce(sum(visits), 0)::BIGINT AS visits FROM period_effort",
  );
  const season = await database.rows<{ third: number; visits: number }>("SELECT * FROM season_effort");
  return {
    title: settings.title,
    heading: settings.heading || settings.title,
    summary: settings.summary,
    language: settings.language,
    languages: settings.languages.filter((tag) => tag !== settings.language),
    address: settings.address ?? "",
    invented: settings.invented,
    invented_notice: settings.invented ? INVENTED_NOTICE : "",
    group: settings.group,
    accent: settings.accent,
    body_plan: settings.body_plan,
    edition: settings.edition,
    licence: licenceOf(settings.licence),
    citation:
      settings.citation || `${settings.title} (${settings.edition.date.slice(0, 4)}), edition ${settings.edition.id}.`,
    contact: settings.contact,
    sending: sendingOf(settings),
    periods,
    compared: compared === null ? null : [periods[compared[0]]?.id ?? "", periods[compared[1]]?.id ?? ""],
    provisional_years: settings.provisional_years,
    coverage_minimum_visits: settings.coverage.minimum_visits,
    status_years: settings.status_years,
    season_minimum_visits: settings.season.minimum_visits,
    castes: settings.castes.map(({ id, label }) => ({ id, label, within: widerThan(id, casteVocabulary(settings)) })),
    territories: territories.map(({ id, name, grid }) => ({
      id,
      name,
      grid,
      grid_name: gridNamed(grid).name,
      land_hectads: (scheme.landSquares ?? []).filter(({ territory }) => territory === id).length,
    })),
    map: {
      crs: await ableToDraw(database, settings.map.crs ?? (await coordinateSystemOfGrid(database, territories[0]))),
      insets: settings.territories.flatMap(({ id, inset }) =>
        inset === undefined ? [] : [{ territory: id, corner: inset }],
      ),
    },
    basemap:
      settings.basemap === undefined
        ? null
        : { files: basemapNames(settings.basemap), credit_html: creditHtml(settings.basemap) },
    taxa,
    outside: outsideTaxa(scheme, names),
    group_characters: charactersOf(scheme, EVERY_TAXON),
    first_seen_groups: settings.first_seen,
    pages: scheme.pages.map(({ slug, front }) => ({ slug, title: front.title, in_footer: front.footer })),
    totals: {
      records_read: read,
      records_used: used,
      hectads: totals?.hectads ?? 0,
      tetrads: totals?.tetrads ?? 0,
      visits: visits?.visits ?? 0,
      first_year: totals?.first_year ?? null,
      last_year: totals?.last_year ?? null,
    },
    effort_season: Array.from({ length: 36 }, (_, third) => season.find((row) => row.third === third)?.visits ?? 0),
    effort_years: await database.rows(
      "SELECT year, visits, records FROM effort_years WHERE year IS NOT NULL ORDER BY year",
    ),
    thanks: await thankedRecorders(database, scheme),
    methods: methodStatements(scheme, await methodCounts(database, taxa), names),
  };
}

async function methodCounts(database: Database, taxa: TaxonSummary[]): Promise<MethodCounts> {
  const [placing] =
    await database.rows<Omit<MethodCounts, keyof VisitCounts | "vague_dates" | "other_interval_end" | "aggregates">>(
      "SELECT * FROM placing_counts",
    );
  const [dates] = await database.rows<{ vague_dates: number; other_interval_end: number }>(
    `SELECT (SELECT count(*) FROM records WHERE status = 'used' AND present AND period IS NULL) AS vague_dates,
            (SELECT count(*) FROM record_keys JOIN dates USING (date_id) WHERE otherwise IS NOT NULL) AS other_interval_end`,
  );
  const [visits] = await database.rows<VisitCounts>(
    "SELECT coalesce(sum(visits), 0)::BIGINT AS visits, coalesce(sum(without_recorder), 0)::BIGINT AS visits_without_recorder FROM period_effort",
  );
  if (placing === undefined || dates === undefined || visits === undefined)
    throw new Error("the measures hold no counts for the methods page");
  return { ...placing, ...dates, ...visits, aggregates: taxa.filter((taxon) => taxon.is_aggregate).length };
}

/** Names of the base map's files in the published folder, each with the part of the settings it comes from. */
export function basemapNames(basemap: NonNullable<Scheme["settings"]["basemap"]>): string[] {
  return [
    "land",
    ...(basemap.lakes === undefined ? [] : ["lakes"]),
    ...(basemap.borders === undefined ? [] : ["borders"]),
    ...(basemap.detail === undefined ? [] : ["land-detail"]),
  ].map((name) => `${name}.geojson`);
}

function creditHtml({ credit, licence_file }: NonNullable<Scheme["settings"]["basemap"]>): string {
  const text = escapeHtml(credit);
  return licence_file === undefined
    ? text
    : text.replace(/L?GPL 3/, (name) => `<a href="data/basemap-licence.txt">${name}</a>`);
}
