import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../engine/database.ts";
import { placingTerritories } from "../records/record-stage.ts";
import { scopeInWords } from "../scheme/generalisations.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { dataPackage } from "./data-package.ts";
import { fillChangeFigures } from "./fill-change-figures.ts";
import { generalisedTo } from "./generalisations.ts";
import { licenceOf } from "./licences.ts";
import { PUBLISHED_TABLES } from "./published-tables.ts";
import { fillRegionFacts } from "./regions-file.ts";
import { writeSpeciesTables } from "./species-tables.ts";
import { type SquareToDraw, writeSquaresGeojson } from "./squares-geojson.ts";
import type { TaxonNames } from "./taxon-names.ts";
import { type DownloadEntry, describeFile, writeTable } from "./write-tables.ts";

/**
 * Writes everything a researcher downloads into one folder: tables as CSV and Parquet, 10 km squares as GeoJSON, one
 * CSV a species, the Data Package, a README and checksums.
 *
 * @returns the files, tables first
 */
export async function writeDownloads(
  database: Database,
  scheme: Scheme,
  names: ReadonlyMap<string, TaxonNames>,
  folder: string,
): Promise<DownloadEntry[]> {
  const { invented } = scheme.settings;
  await fillTaxonNames(database, scheme, names);
  await fillGeneralisations(database, scheme);
  await fillChangeFigures(database, scheme);
  const files: DownloadEntry[] = [];
  await fillRegionFacts(database, scheme);
  const hasNeeded = {
    regions: scheme.regions.length > 0,
    surroundings: scheme.settings.surroundings.kinds.length > 0,
    "large group": scheme.taxa.length >= scheme.settings.change.local_frequency.minimum_taxa,
  };
  const tables = PUBLISHED_TABLES.filter(({ needs }) => needs === undefined || hasNeeded[needs]);
  for (const table of tables) files.push(...(await writeTable(database, table, { folder, invented })));
  files.push(await writeGeojson(database, scheme, folder));
  files.push(...(await writeSpeciesTables(database, names, { folder, invented })));
  writeFileSync(
    join(folder, "datapackage.json"),
    `${JSON.stringify(
      dataPackage(
        scheme,
        files.filter(({ path }) => !path.includes("/")),
      ),
      null,
      2,
    )}\n`,
  );
  writeFileSync(join(folder, "README.txt"), readme(scheme, names));
  const described = [
    ["datapackage.json", "Description of the tables (Data Package 2.0)"],
    ["README.txt", "Read this first"],
  ].map(([path = "", title = ""]) =>
    describeFile(folder, path, {
      table: "",
      title,
      format: path.endsWith("json") ? "json" : "text",
      rows: null,
      fields: [],
    }),
  );
  const all = [...files, ...described];
  writeFileSync(join(folder, "SHA256SUMS"), all.map(({ sha256, path }) => `${sha256}  ${path}\n`).join(""));
  return all;
}

async function fillTaxonNames(
  database: Database,
  scheme: Scheme,
  names: ReadonlyMap<string, TaxonNames>,
): Promise<void> {
  const filler = await database.fill("taxon_names", {
    taxon_id: "text",
    scientific_name: "text",
    authorship: "text",
    rank: "text",
    vernacular_name: "text",
    within: "text",
    generalised_to: "text",
  });
  filler.add({
    taxon_id: scheme.taxa.map(({ taxonID }) => taxonID),
    scientific_name: scheme.taxa.map(({ scientificName }) => scientificName),
    authorship: scheme.taxa.map(({ scientificNameAuthorship }) => scientificNameAuthorship),
    rank: scheme.taxa.map(({ taxonRank }) => taxonRank),
    vernacular_name: scheme.taxa.map(({ taxonID }) => names.get(taxonID)?.vernacularName ?? ""),
    within: scheme.taxa.map(({ within }) => within.join(" | ")),
    generalised_to: scheme.taxa.map(({ taxonID }) => generalisedTo(taxonID, scheme)),
  });
  filler.done();
}

async function fillGeneralisations(database: Database, { sensitive, settings }: Scheme): Promise<void> {
  const filler = await database.fill("listed_generalisations", {
    taxon_id: "text",
    generalised_to: "text",
    records: "text",
    reason: "text",
    review_date: "text",
  });
  filler.add({
    taxon_id: sensitive.map(({ taxonID }) => taxonID),
    generalised_to: sensitive.map(({ level }) => level),
    records: sensitive.map((entry) => scopeInWords(entry, settings) || "all"),
    reason: sensitive.map(({ reason }) => reason),
    review_date: sensitive.map(({ reviewDate }) => reviewDate),
  });
  filler.done();
}

async function writeGeojson(database: Database, scheme: Scheme, folder: string): Promise<DownloadEntry> {
  const { invented, periods } = scheme.settings;
  const rows = await database.rows<{
    grid: string;
    square: string;
    territory: string;
    period: number | null;
    visits: number;
    records: number;
  }>(
    `SELECT p.grid, p.square, p.territory, e.period, coalesce(e.visits, 0) AS visits, coalesce(e.records, 0) AS records
     FROM square_places AS p LEFT JOIN square_effort AS e ON e.grid = p.grid AND e.resolution_m = p.resolution_m AND e.square = p.square
     WHERE p.resolution_m = 10000 ORDER BY p.grid, p.square, e.period`,
  );
  const squares: SquareToDraw[] = [...Map.groupBy(rows, ({ grid, square }) => `${grid} ${square}`).values()].map(
    (own) => {
      const first = own[0] ?? { grid: "", square: "", territory: "" };
      const visits = Object.fromEntries(
        periods.map(({ id }, index) => [`visits_${id}`, own.find(({ period }) => period === index)?.visits ?? 0]),
      );
      const records = own.reduce((sum, row) => sum + row.records, 0);
      return {
        grid: first.grid,
        square: first.square,
        resolution_m: 10_000,
        properties: {
          grid: first.grid,
          square: first.square,
          territory: first.territory,
          records,
          ...visits,
          ...(invented ? { invented } : {}),
        },
      };
    },
  );
  const gridOf = new Map(placingTerritories(scheme).map(({ grid }) => [grid.id as string, grid]));
  const written = writeSquaresGeojson(join(folder, "squares.geojson"), squares, gridOf);
  return describeFile(folder, "squares.geojson", {
    table: "squares",
    title: "10 km squares as areas, with visits",
    format: "geojson",
    rows: written,
    fields: [],
  });
}

function readme({ settings, sensitive }: Scheme, names: ReadonlyMap<string, TaxonNames>): string {
  const licence = licenceOf(settings.licence);
  const invented = settings.invented
    ? "INVENTED RECORDS, for demonstration only. Every table has a column that says so.\n\n"
    : "";
  const entries = sensitive.map((entry) => {
    const scope = scopeInWords(entry, settings);
    const level = entry.level === "withheld" ? "place withheld" : `shown at ${entry.level}`;
    return `- ${names.get(entry.taxonID)?.taxon.scientificName ?? entry.taxonID}${scope === "" ? "" : ` (${scope})`}: ${level}. ${entry.reason}\n`;
  });
  const coarser =
    entries.length === 0
      ? ""
      : `\nSome records are shown coarser than they are known, never moved (generalisations.csv); squares finer than that lack them on purpose:\n${entries.join("")}`;
  return `${settings.title}, edition ${settings.edition.id} (${settings.edition.date})

${invented}Tables as CSV (UTF-8, comma, header) and Parquet; datapackage.json describes every field.
Licence: ${licence.title}${licence.url === "" ? "" : `, ${licence.url}`}
Cite as: ${settings.citation || settings.title}

A hectad reference can be NA…: tell R and Python that only an empty cell is missing.
A blank square is not an absence: read taxon_squares beside square_effort.
Changes are among squares covered in both periods by records of other taxa. None of this is a Red List assessment.
${coarser}`;
}
