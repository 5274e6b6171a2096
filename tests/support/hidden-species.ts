/** A small scheme with a species shown at 10 km and one whose places are withheld, and a hostile reader of what it publishes. */
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { everyReading, filesBelow, tilesOf } from "./published-bytes.ts";
import { readTile } from "./vector-tile-reader.ts";

const SETTINGS = `title: Hidden Places
invented: true
edition: { id: "2021.1", date: 2021-12-31 }
periods:
  - { id: earlier, from: 1990, to: 2005 }
  - { id: recent, from: 2006, to: 2020 }
coverage: { minimum_visits: 1 }
change: { minimum_comparable_squares: 1, minimum_tetrad_share: 0.2 }
territories:
  - { id: britain, name: Great Britain, grid: british }
  - { id: ireland, name: Ireland, grid: irish }
castes:
  - { id: nest, label: Nest, words: [nest] }
  - { id: adult, label: Adult, words: [adult] }
sources:
  - { id: walks, title: Walks, files: records/walks.csv, licence: CC-BY-4.0, datum: "EPSG:4326" }
`;
const CHECKLIST = `taxonID,scientificName,taxonRank,within,castes
common,Exemplum commune,species,pair,
secret,Exemplum secretum,species,pair,
deep,Exemplum profundum,species,,
fine,Exemplum subtile,species,,
nesting,Exemplum nidificans,species,,
pair,Exemplum commune/secretum,aggregate,,
`;

/** The list: what a stranger may know of each. */
export const LIST = `taxonID,level,territories,castes,months,reason,responsible,reviewDate
secret,10 km,,,,It is dug out.,officer,2030-01-01
deep,withheld,,,,It is sold.,officer,2030-01-01
fine,2 km,,,,It is trampled.,officer,2030-01-01
nesting,10 km,,nest,,Its nests are robbed.,officer,2030-01-01
`;

const ORDINARY = [
  "o1,common,2001-06-01,SK1020,,,Ann,present,",
  "o2,nesting,2001-06-01,SK1020,,,Ann,present,adult",
  "o3,common,2015-06-01,SK1020,,,Ann,present,",
  "o4,nesting,2015-06-01,SK1020,,,Ann,present,adult",
  "o5,common,2016-07-01,SK1828,,,Ben,present,",
  "o6,pair,2017-07-01,SK1828,,,Ben,present,",
  "o7,common,2015-06-01,O1534,,,Ann,present,",
  "o8,nesting,2003-06-01,O1534,,,Cat,present,adult",
  "o9,common,2018-06-01,SK12,,,Ann,present,",
];

/** Where the hidden records are: as a reference, or as latitude and longitude with an uncertainty in metres. */
export interface HiddenPlaces {
  /** Two records and a survey that found nothing, of the species shown at 10 km: in SK12, and twice in SK14, where nobody else was. */
  secret: [inVisited: string, inUnvisited: string, notFound: string];
  /** Of the species whose places are withheld. */
  deep: string;
  /** In SK12A, of the species shown at 2 km. */
  fine: string;
  /** A nest in SK12. */
  nest: string;
}

/** Where they are in the first edition. The 2 km squares of SK14 and SU34 hold nothing else. */
export const HIDDEN: HiddenPlaces = {
  secret: ["SK1020", "SK1444", "SK1444"],
  deep: "SU3142",
  fine: "SK1020",
  nest: "SK1020",
};

/** Codes that nothing published may hold: 2 km squares that only hidden records are in, and the squares of the withheld one. */
export const TELLTALE = ["SK14M", "SK1444", "SU34", "SU34A", "SU3142", "SU34B"];

/**
 * Writes the scheme into a folder.
 *
 * @param places of the hidden records; null leaves them out
 * @param list the list of sensitive taxa; empty for none
 */
export function writeHiddenScheme(folder: string, places: HiddenPlaces | null, list: string): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, "records"), { recursive: true });
  writeFileSync(join(folder, "atlas.yaml"), SETTINGS);
  writeFileSync(join(folder, "checklist.csv"), CHECKLIST);
  if (list !== "") writeFileSync(join(folder, "sensitive.csv"), list);
  const at = (place: string) => (place.includes(" ") ? `,${place.replaceAll(" ", ",")}` : `${place},,`);
  const row = (id: string, taxon: string, place: string, rest: string) => {
    const [reference = "", latitude = "", longitude = "", radius = ""] = at(place).split(",");
    return [id, taxon, "2015-06-01", reference, latitude, longitude, rest, radius].join(",");
  };
  const hidden =
    places === null
      ? []
      : [
          row("s1", "secret", places.secret[0], "Ann,present,"),
          row("s2", "secret", places.secret[1], "Dan,present,"),
          row("s3", "secret", places.secret[2], "Dan,absent,"),
          row("d1", "deep", places.deep, "Eve,present,"),
          row("f1", "fine", places.fine, "Ann,present,"),
          row("n1", "nesting", places.nest, "Ann,present,nest"),
        ];
  const header =
    "occurrenceID,taxonID,eventDate,gridReference,decimalLatitude,decimalLongitude,recordedBy,occurrenceStatus,lifeStage,coordinateUncertaintyInMeters,scientificName";
  const named = [...ORDINARY, ...hidden].map((line) => {
    const cells = line.split(",");
    while (cells.length < 10) cells.push("");
    return [...cells, NAMES[cells[1] ?? ""] ?? ""].join(",");
  });
  writeFileSync(join(folder, "records/walks.csv"), `${[header, ...named].join("\n")}\n`);
}

const NAMES: Readonly<Record<string, string>> = Object.fromEntries(
  CHECKLIST.trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(",").slice(0, 2) as [string, string]),
);

/** One line a file: its path and the hash of its bytes. */
export function fingerprint(folder: string): string[] {
  return filesBelow(folder).map(
    (path) =>
      `${path.slice(folder.length + 1)} ${createHash("sha256").update(readFileSync(path)).digest("hex").slice(0, 16)}`,
  );
}

/** Codes found in any byte of a folder, packed or unpacked, each with the file that holds it. */
export async function codesFound(folder: string, codes: readonly string[]): Promise<string[]> {
  const words = codes.map((code) => [code, new RegExp(`(?<![A-Z0-9])${code}(?![A-Z0-9])`, "i")] as const);
  return (await everyReading(folder)).flatMap(({ where, bytes }) => {
    const text = bytes.toString("latin1");
    return words.filter(([, word]) => word.test(text)).map(([code]) => `${where}: ${code}`);
  });
}

/**
 * What a folder says of 2 km squares, file by file: every code of one with the words about it, the tetrads drawn in each
 * tile, and rows of tables of that size. What a stranger compares between two editions.
 */
export async function toldAt2km(folder: string): Promise<string[]> {
  const told: string[] = [];
  for (const path of filesBelow(folder)) {
    const where = path.slice(folder.length + 1);
    if (path.endsWith(".pmtiles"))
      for (const tile of (await tilesOf(path)).slice(1))
        told.push(`${where}: ${readTile(tile).get("tetrad_page")?.length ?? 0} drawn`);
    else if (path.endsWith(".csv"))
      told.push(
        ...readFileSync(path, "utf8")
          .split("\n")
          .filter((row) => row.split(",").includes("2000"))
          .map((row) => `${where}: ${row}`),
      );
    else if (!path.endsWith(".parquet"))
      told.push(
        ...[...readFileSync(path, "latin1").matchAll(/\{[^{}]*\b[A-Z]{1,2}\d\d[A-NP-Z]\b[^{}]*\}/g)].map(
          ([words]) => `${where}: ${words}`,
        ),
      );
  }
  // Ids of 2 km squares follow those of 10 km, of which a new edition may have more.
  return told
    .filter((words) => !words.endsWith(": 0 drawn"))
    .map((words) => words.replace(/"first":\d+/, '"first":…'))
    .sort();
}
