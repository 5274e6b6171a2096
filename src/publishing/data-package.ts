import type { Scheme } from "../scheme/scheme.ts";
import { licenceOf } from "./licences.ts";
import { fieldsOf, type DownloadEntry } from "./write-tables.ts";
import { publishedTable } from "./published-tables.ts";
import { slugOf } from "./slug.ts";

const MEDIA_TYPES: Record<string, string> = {
  csv: "text/csv",
  parquet: "application/vnd.apache.parquet",
  geojson: "application/geo+json",
};

/**
 * The description of the downloads as a Data Package 2.0 (https://datapackage.org): one tabular resource for each CSV
 * table with fields, keys and SHA-256, and plain resources for the same tables in other formats.
 */
export function dataPackage(scheme: Scheme, files: readonly DownloadEntry[]): object {
  const { settings } = scheme;
  const licence = licenceOf(settings.licence);
  const invented = settings.invented ? "Invented records, for demonstration only. " : "";
  return {
    $schema: "https://datapackage.org/profiles/2.0/datapackage.json",
    name: `${settings.invented ? "invented-" : ""}${slugOf(settings.title)}`,
    title: settings.title,
    description: `${invented}${settings.summary} Effort is in square_effort: a blank square is not an absence, and counts of squares are no Red List assessment.`,
    version: settings.edition.id,
    created: `${settings.edition.date}T00:00:00Z`,
    licenses: [{ name: licence.id, title: licence.title, ...(licence.url === "" ? {} : { path: licence.url }) }],
    sources: settings.sources.map((source) => ({ title: source.title || source.id })),
    resources: files
      .filter(({ table }) => table !== "")
      .map((file) => (file.format === "csv" ? tableResource(file, settings.invented) : plainResource(file))),
  };
}

function plainResource({ path, title, format, bytes, sha256 }: DownloadEntry): object {
  return {
    name: slugOf(path),
    path,
    title,
    format,
    mediatype: MEDIA_TYPES[format] ?? "application/octet-stream",
    bytes,
    hash: `sha256:${sha256}`,
  };
}

function tableResource(file: DownloadEntry, invented: boolean): object {
  const table = publishedTable(file.table);
  return {
    ...plainResource(file),
    name: table.name.replaceAll("_", "-"),
    description: table.description,
    type: "table",
    encoding: "utf-8",
    dialect: { delimiter: ",", quoteChar: '"', doubleQuote: true, lineTerminator: "\n", header: true },
    schema: {
      fields: fieldsOf(table, invented),
      missingValues: [""],
      primaryKey: table.primaryKey,
      ...(table.foreignKeys.length === 0
        ? {}
        : {
            foreignKeys: table.foreignKeys.map(({ fields, table: other, to }) => ({
              fields,
              reference: { resource: other.replaceAll("_", "-"), fields: to },
            })),
          }),
    },
  };
}
