import { readFileSync } from "node:fs";
import type { Database } from "../engine/database.ts";
import { sqlBeside } from "../engine/database.ts";
import { openTables } from "../engine/saved-tables.ts";
import { readGridShift } from "../geodesy/grid-shift.ts";
import { resolveCrs } from "../geodesy/resolve-crs.ts";
import { inTerritory, makeTerritory } from "../geodesy/territory.ts";
import { gridNamed } from "../grids/index.ts";
import { casteVocabulary, possibleCastes } from "../scheme/caste-vocabulary.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { datingRules } from "./dating-rules.ts";
import { layDecisions, layStatedRecords } from "./decided-records.ts";
import { findTwins } from "./find-twins.ts";
import { interpretDates } from "./interpret-dates.ts";
import { interpretKinds } from "./interpret-kinds.ts";
import { interpretNames } from "./interpret-names.ts";
import { interpretPlaces } from "./interpret-places.ts";
import { interpretRecorders } from "./interpret-recorders.ts";
import { interpretRegions } from "./interpret-regions.ts";
import { interpretSurroundings } from "./interpret-surroundings.ts";
import { isOnGrid } from "./on-grid.ts";
import type { PlacingRules, PlacingTerritory } from "./place.ts";
import { layTogether, type ReadFile } from "./raw-records.ts";
import { sitePoints } from "./site-points.ts";

/** Tables the record stage leaves; `openRecords` lays the view `records` over the first five. */
export const RECORD_TABLES = [
  "record_keys",
  "places",
  "dates",
  "names",
  "kinds",
  "kind_castes",
  "record_surroundings",
  "record_regions",
  "twins",
  "findings",
] as const;

/** Tables nothing needs after this stage: they hold most of its memory. */
const PASSING_TABLES = [
  "place_texts",
  "date_texts",
  "name_texts",
  "kind_texts",
  "recorder_texts",
  "parties",
  "surrounding_texts",
  "surrounding_terms",
  "surrounding_unread",
  "keyed_records",
  "judged_records",
  "id_members",
  "id_pairs",
  "routes",
  "likely_twins",
];

/**
 * Interprets all records: places, dates, names and kinds once for each distinct value, then one status and one reason
 * for each record. Leaves the tables of RECORD_TABLES and the view `records` in the database.
 *
 * @param tell called with how many of the five parts are done
 */
export async function interpretRecords(
  database: Database,
  scheme: Scheme,
  files: readonly ReadFile[],
  tell: (done: number, of: number) => void = () => {},
): Promise<void> {
  const run = (file: string) => database.run(sqlBeside(import.meta.url, file));
  await layTogether(database, files);
  await layDecisions(database, scheme.decisions);
  await layStatedRecords(database, scheme.decisions, scheme.sites);
  await run("distinct-values.sql");
  tell(1, 6);
  const rules = placingRules(scheme);
  const [anyRules] = rules.values();
  await interpretPlaces(database, rules, anyRules === undefined ? new Map() : sitePoints(scheme.sites, anyRules));
  tell(2, 6);
  await interpretDates(database, datingRules(scheme));
  await interpretNames(database, scheme.checklist);
  await interpretKinds(database, scheme.settings);
  await interpretRecorders(database);
  await interpretSurroundings(database, scheme.settings);
  await interpretRegions(database, scheme.regions);
  await fillTaxonCastes(database, scheme);
  tell(3, 6);
  await run("keyed-records.sql");
  tell(4, 6);
  await run("judged-records.sql");
  await findTwins(database, scheme.decisions);
  await run("record-keys.sql");
  tell(5, 6);
  await run("findings.sql");
  await run("records.sql");
  for (const table of PASSING_TABLES) await database.run(`DROP TABLE ${table}`);
  tell(6, 6);
}

/**
 * Opens what an earlier `interpretRecords` left in a folder, for the measures and the review: the tables of
 * RECORD_TABLES and the view `records`, one row a record.
 *
 * @param folder where `saveTables` wrote them
 * @example await openRecords(database, ".build/scheme/interpreted/0123")
 */
export async function openRecords(database: Database, folder: string): Promise<void> {
  await openTables(database, folder, RECORD_TABLES);
  await database.run(sqlBeside(import.meta.url, "records.sql"));
}

/** Territories of a scheme ready for placing: each with its grid and its polygon's test. */
export function placingTerritories(scheme: Scheme): PlacingTerritory[] {
  return scheme.territories.map(({ id, grid, datum, polygon, gridShift }) => {
    const area = polygon === null ? null : makeTerritory(id, polygon);
    const own = gridNamed(grid, {
      channelIslandsDatum: datum,
      britishGridShift:
        gridShift === null
          ? undefined
          : readGridShift(readFileSync(gridShift.path), { ...gridShift, datum: "EPSG:4277" }),
    });
    return {
      id,
      grid: own,
      holds: (longitude, latitude) =>
        area === null ? isOnGrid(own, longitude, latitude) : inTerritory(longitude, latitude, area),
    };
  });
}

/** What the settings say about placing, for each source by its id. */
export function placingRules(scheme: Scheme): Map<string, PlacingRules> {
  const territories = placingTerritories(scheme);
  const { placing, sources } = scheme.settings;
  return new Map(
    sources.map((source) => [
      source.id,
      {
        territories,
        minimumOverlap: placing.minimum_overlap,
        datum: resolveCrs(source.datum ?? ""),
        crs: resolveCrs(source.crs ?? ""),
        sourceUncertainty: source.default_uncertainty_m,
        defaultUncertainty: placing.default_uncertainty_m,
      },
    ]),
  );
}

async function fillTaxonCastes(database: Database, scheme: Scheme): Promise<void> {
  const vocabulary = casteVocabulary(scheme.settings);
  const pairs = scheme.taxa.flatMap((taxon) =>
    possibleCastes(taxon.castes, vocabulary).map((caste) => [taxon.taxonID, caste] as const),
  );
  const filler = await database.fill("taxon_castes", { taxon_id: "text", caste: "text" });
  filler.add({ taxon_id: pairs.map(([taxon]) => taxon), caste: pairs.map(([, caste]) => caste) });
  filler.done();
}
