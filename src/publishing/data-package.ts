import type { Scheme } from "../scheme/scheme.ts";
import { licenceOf } from "./licences.ts";
import { publishedTable } from "./published-tables.ts";
import { slugOf } from "./slug.ts";
import { type DownloadEntry, fieldsOf } from "./write-tables.ts";

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
    name: `${settings.invented ? "invented-" : ""}${slugOf(settings.title) || "atlas"}`,
    title: settings.title,
    description: `${invented}${settings.summary} Effort is in square_effort: a blank square is not an absence, and counts of squares are no Red List assessment.`,
    version: settings.edition.id,
    created: `${settings.edition.date}T00:00:00Z`,
    ...(licence.id === "" ? {} : { licenses: [licenceEntry(licence)] }),
    sources: settings.sources.map((source) => ({ title: source.title || source.id })),
    resources: files
      .filter(({ table }) => table !== "")
      .map((file) => (file.format === "csv" ? tableResource(file, settings.invented) : plainResource(file))),
  };
}

/** A licence as the standard takes it: its name of letters, figures, dot, hyphen and underscore only. */
function licenceEntry({ id, title, url }: ReturnType<typeof licenceOf>): object {
  return { name: id.replaceAll(/[^-a-zA-Z0-9._]+/g, "-"), title, ...(url === "" ? {} : { path: url }) };
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
