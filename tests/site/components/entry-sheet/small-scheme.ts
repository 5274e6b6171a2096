/** A small scheme whose one source names nothing but its file, and an entry sheet made for it. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { SheetContent } from "../../../../src/site/components/entry-sheet/entry-sheet.ts";
import { sheetColumns } from "../../../../src/site/components/entry-sheet/sheet-columns.ts";

const SETTINGS = (file: string) => `title: A Small Atlas
edition: { id: "1", date: 2024-12-31 }
periods: [{ id: recent, from: 2000, to: 2024 }]
territories: [{ id: britain, name: Britain, grid: british }]
castes:
  - { id: queen, label: Queen, words: [queen] }
  - { id: worker, label: Worker, words: [worker] }
  - { id: male, label: Male, words: [male] }
sources: [{ id: sheets, files: records/${file} }]
`;
const CHECKLIST = `taxonID,scientificName,taxonRank,within,vernacularNames,castes
terrestris,Bombus terrestris,species,group,en:Buff-tailed bumblebee | fr:bourdon terrestre,queen | worker | male
lucorum,Bombus lucorum agg.,speciesAggregate,group,en:White-tailed bumblebee,queen | worker | male
group,Bombus terrestris/lucorum,speciesAggregate,,en:Buff/white-tailed bumblebee group,queen | worker | male
`;

/** Writes the scheme with its one file of records. */
export function writeSmallScheme(folder: string, file: string, bytes: Uint8Array | string): void {
  mkdirSync(join(folder, "records"), { recursive: true });
  writeFileSync(join(folder, "atlas.yaml"), SETTINGS(file));
  writeFileSync(join(folder, "checklist.csv"), CHECKLIST);
  writeFileSync(join(folder, "records", file), bytes);
}

export const CASTES = ["queen", "worker", "male"];

/** What the pages would give for that scheme. */
export const CONTENT: SheetContent = {
  title: "A Small Atlas: entry sheet",
  invented: "A demonstration & nothing else.",
  edition: { id: "1", date: "2024-12-31" },
  names: [
    { write: "Buff-tailed bumblebee", called: "Bombus terrestris" },
    { write: "Bombus terrestris", called: "Buff-tailed bumblebee" },
    { write: "Bombus terrestris/lucorum", called: "Buff/white-tailed bumblebee group" },
  ],
  castes: CASTES,
  parts: ["tail", "face"],
  about: ["A demonstration & nothing else.", "One row is one record."],
  words: {
    sheets: { records: "données", columns: "colonnes", names: "noms d’ici", about: "à propos" },
    heads: { column: "Colonne", holds: "Contenu", needed: "Nécessaire", yes: "oui", write: "Nom", called: "Aussi" },
    holds: Object.fromEntries(
      sheetColumns(CASTES).map(({ term }) => [term, `About ${term}.`]),
    ) as SheetContent["words"]["holds"],
    otherName: "Not in the list.",
    otherValue: "Choose.",
    whole: "A whole number.",
  },
};
