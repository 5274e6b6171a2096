import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../../engine/database.ts";
import { Mistake } from "../../mistake.ts";
import { findingTitle } from "../../records/finding-titles.ts";
import { type Selection, selectionCondition, selectionInWords } from "../../review/selection.ts";
import { writeWorklistCsv } from "../../review/worklist.ts";
import { generalisationsOf } from "../../scheme/generalisations.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { type PackQuestion, packPage } from "./pack-page.ts";

/** What a pack was written to. */
export interface WrittenPack {
  page: string;
  table: string;
  questions: number;
}

/** A page with more than this would not open; the selection wants narrowing. */
const MOST_QUESTIONS = 5000;

/**
 * Writes a review pack: a page and a CSV for somebody else to rule on part of the worklist. Recorders are named only where
 * asked for, and then not those on the suppressed list; of a sensitive taxon it is left out how a question arose, for that
 * could tell where others saw it.
 *
 * @param folder where it goes
 * @throws {Mistake} where nothing or too much is selected
 */
export async function writePack(
  database: Database,
  scheme: Scheme,
  { folder, selection, named }: { folder: string; selection: Selection; named: boolean },
): Promise<WrittenPack> {
  await hideFromOthers(database, scheme, named);
  const condition = selectionCondition(selection, scheme);
  const questions = await database.rows<PackQuestion>(
    `SELECT * FROM worklist AS w WHERE ${condition} ORDER BY look_no, record_no, check_name, message LIMIT ${MOST_QUESTIONS + 1}`,
  );
  const words = selectionInWords(selection);
  if (questions.length === 0)
    throw new Mistake("the pack", `would be empty: nothing of ${words} wants a ruling`, "choose other records");
  if (questions.length > MOST_QUESTIONS)
    throw new Mistake(
      "the pack",
      `would hold more than ${MOST_QUESTIONS} questions`,
      "narrow the choice, for example with --check",
    );
  mkdirSync(folder, { recursive: true });
  const name = `pack-${words
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .replaceAll(/[^A-Za-z0-9]+/g, "-")
    .slice(0, 60)}`;
  const [page, table] = [join(folder, `${name}.html`), join(folder, `${name}.csv`)];
  const { title, invented } = scheme.settings;
  const characters = Map.groupBy(scheme.characters, ({ taxonID }) => taxonID);
  const names = new Map(scheme.taxa.map(({ taxonID, scientificName }) => [taxonID, scientificName]));
  writeFileSync(page, packPage({ name, title, selection: words, invented, questions, characters, names }));
  await writeWorklistCsv(database, table, condition);
  return { page, table, questions: questions.length };
}

/** Takes out of the worklist in the database what a pack must not carry. */
async function hideFromOthers(database: Database, scheme: Scheme, named: boolean): Promise<void> {
  const hidden = scheme.taxa.map(({ taxonID }) => taxonID).filter((id) => generalisationsOf(scheme, id).length > 0);
  const checks = await database.rows<{ check_name: string }>("SELECT DISTINCT check_name FROM worklist");
  for (const { check_name } of checks)
    for (const taxon of hidden)
      await database.run("UPDATE worklist SET message = $title WHERE check_name = $check_name AND taxon_id = $taxon", {
        title: findingTitle(check_name),
        check_name,
        taxon,
      });
  const recorders = await database.rows<{ name: string }>("SELECT DISTINCT recorded_by AS name FROM worklist");
  for (const { name } of recorders)
    if (!named || scheme.suppressed.isSuppressed(name))
      await database.run("UPDATE worklist SET recorded_by = '' WHERE recorded_by = $name", { name });
}
