import { cpSync, existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inventNames, inventRecords, readLand } from "./invent-records.ts";

const SETTINGS = `title: A scheme for timing
invented: true
edition: { id: "1", date: 2025-01-01 }
periods:
  - { id: earlier, from: 1970, to: 1999 }
  - { id: recent, from: 2000, to: 2024 }
territories:
  - { id: britain, name: Britain, grid: british }
  - { id: ireland, name: Ireland, grid: irish }
  - { id: channel-islands, name: Channel Islands, grid: channel-islands }
territory_polygons: territories.geojson
land_squares: land-squares.csv
castes:
  - { id: adult, label: Adults, words: [adult] }
  - { id: larva, label: Larvae, words: [larva] }
sources:
  - { id: field, files: records/records.csv, licence: CC-BY-4.0 }
`;

/**
 * Makes the folder of an invented scheme of any size, unless the same is there.
 *
 * @param folder where it goes
 * @param demonstration the demonstration's folder, for its land and territories
 * @param size how many records, and how many taxa they are of
 * @returns true when it was made anew
 * @example inventScheme(".build/bench/1000000-300/content", "content", { records: 1_000_000, taxa: 300 })
 */
export function inventScheme(
  folder: string,
  demonstration: string,
  { records, taxa }: { records: number; taxa: number },
): boolean {
  if (existsSync(join(folder, "atlas.yaml"))) return false;
  const names = inventNames(taxa);
  const rows = names.map((name, i) => `invented-${i},${name},species`);
  mkdirSync(join(folder, "records"), { recursive: true });
  cpSync(join(demonstration, "basemap/territories.geojson"), join(folder, "territories.geojson"));
  cpSync(join(demonstration, "land-squares.csv"), join(folder, "land-squares.csv"));
  writeFileSync(join(folder, "checklist.csv"), `taxonID,scientificName,taxonRank\n${rows.join("\n")}\n`);
  const land = readLand(join(demonstration, "land-squares.csv"));
  inventRecords(join(folder, "records/records.csv"), { records, names, land, seed: 1 });
  writeFileSync(join(folder, "atlas.yaml"), SETTINGS);
  return true;
}
