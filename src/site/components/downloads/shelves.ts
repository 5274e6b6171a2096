import type { DownloadsFile } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";

type File = DownloadsFile["files"][number];

/** One table with the files that hold it, one a format. */
export interface Shelf {
  readonly title: string;
  readonly fields: File["fields"];
  readonly files: readonly File[];
}

/** The tables of the whole atlas, and the folders that hold one file a taxon or the like. */
export interface Shelves {
  readonly tables: readonly Shelf[];
  readonly folders: readonly (readonly [folder: string, files: readonly File[]])[];
}

/**
 * Files at the top of the edition by their title, files in folders by their folder, all in the order given.
 *
 * @example shelves(files).tables[0]?.files.map(({ format }) => format) // ["csv", "parquet"]
 */
export function shelves(files: readonly File[]): Shelves {
  const top = files.filter(({ path }) => !path.includes("/"));
  const nested = files.filter(({ path }) => path.includes("/"));
  const tables = [...Map.groupBy(top, ({ table, title }) => `${table} ${title}`).values()].map((same) => ({
    title: same[0]?.title ?? "",
    fields: same.find(({ fields }) => fields.length > 0)?.fields ?? [],
    files: same,
  }));
  return { tables, folders: [...Map.groupBy(nested, ({ path }) => path.slice(0, path.lastIndexOf("/")))] };
}

const FORMATS: Readonly<Record<string, string>> = {
  csv: "CSV",
  parquet: "Parquet",
  geojson: "GeoJSON",
  geoparquet: "GeoParquet",
  gpkg: "GeoPackage",
  json: "JSON",
  zip: "ZIP",
};

/** A format as it is written. @example formatName("geojson") // "GeoJSON" */
export function formatName(format: string): string {
  const known = format.toLowerCase();
  return known === "text" || known === "txt" ? say("downloads.text") : (FORMATS[known] ?? format);
}
