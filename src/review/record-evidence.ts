import { type Database, sqlBeside } from "../engine/database.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { SourceSetting } from "../scheme/settings.ts";

/** What an identification can rest on, from the least to the most. */
export const EVIDENCE = ["", "sight", "photograph", "specimen"] as const;
export type Evidence = (typeof EVIDENCE)[number];

/** What the records of a kind of source rest on at least; a card or a book says nothing of it. */
const BY_KIND: Readonly<Record<SourceSetting["kind"], Evidence>> = {
  field: "sight",
  photograph: "photograph",
  specimen: "specimen",
  literature: "",
  card: "",
};

/**
 * How much evidence is: its place in EVIDENCE; 0 for a word that is none.
 *
 * @example levelOf("photograph") // 2
 */
export function levelOf(evidence: string): number {
  return Math.max(0, (EVIDENCE as readonly string[]).indexOf(evidence));
}

/** Lays the tables `record_evidence` and `confirmed_records`. Needs the view `record_texts` and the table `decided`. */
export async function layEvidence(database: Database, { settings }: Scheme): Promise<void> {
  const kinds = await database.fill("source_kinds", { source: "text", level: "integer" });
  kinds.add({
    source: settings.sources.map(({ id }) => id),
    level: settings.sources.map(({ kind }) => levelOf(BY_KIND[kind])),
  });
  kinds.done();
  const words = await database.fill("confirmed_words", { word: "text" });
  words.add({ word: settings.checks.evidence.confirmed_words.map((word) => word.trim().toLowerCase()) });
  words.done();
  await database.run(sqlBeside(import.meta.url, "record-evidence.sql"));
}
