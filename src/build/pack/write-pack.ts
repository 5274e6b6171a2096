import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../../engine/database.ts";
import { Mistake } from "../../mistake.ts";
import { type Selection, selectionCondition, selectionInWords } from "../../review/selection.ts";
import { writeWorklistCsv } from "../../review/worklist.ts";
import { WORKLIST_COLUMNS } from "../../review/worklist-columns.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { carried, type Question } from "./carried.ts";
import { packPage } from "./pack-page.ts";

/** What a pack was written to. */
export interface WrittenPack {
  page: string;
  table: string;
  questions: number;
}

/** A page with more than this would not open; the selection wants narrowing. */
const MOST_QUESTIONS = 5000;

/** Columns of the worklist a pack is made from. */
const NUMBERS = ["look_no", "records_of_look", "record_no"] as const;
const TEXTS = [
  ...(["record_key", "said_mark", "severity", "check_name", "message", "way_out", "proposal", "said_name"] as const),
  ...(["said_date", "said_place", "said_kind", "locality", "remarks", "source", "recorded_by"] as const),
  ...(["taxon_id", "hectad"] as const),
];
const COLUMNS = [...NUMBERS, ...TEXTS];
type Row = Question & Record<(typeof COLUMNS)[number], string | number | null>;

/** A file's name tells who sent it, and its rows are of no use to others. */
const CARRIED = WORKLIST_COLUMNS.filter(({ name }) => name !== "file" && name !== "row");

/**
 * Writes a review pack: a page and a CSV for somebody else to rule on part of the worklist, with what `carried` leaves of
 * it. In the database the worklist is then that of the pack.
 *
 * @param folder where it goes
 * @param named whether recorders are named
 * @throws {Mistake} where nothing or too much is selected
 */
export async function writePack(
  database: Database,
  scheme: Scheme,
  { folder, selection, named }: { folder: string; selection: Selection; named: boolean },
): Promise<WrittenPack> {
  const asked = await database.rows<Row>(
    `SELECT ${COLUMNS.join(", ")} FROM worklist AS w WHERE ${selectionCondition(selection, scheme)}
     ORDER BY look_no, record_no, check_name, message LIMIT ${MOST_QUESTIONS + 1}`,
  );
  const questions = asked.map((question) => carried(scheme, question, named));
  const words = selectionInWords(told(selection, scheme, named));
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
  await layQuestions(database, questions);
  await writeWorklistCsv(database, table, "true", CARRIED);
  return { page, table, questions: questions.length };
}

/** A selection as its pack may say it: a recorder who is not named in it is not named on it. */
function told(selection: Selection, { suppressed }: Scheme, named: boolean): Selection {
  const { recorder } = selection;
  if (recorder === undefined || (named && !suppressed.isSuppressed(recorder))) return selection;
  return { ...selection, recorder: "one recorder" };
}

async function layQuestions(database: Database, questions: readonly Row[]): Promise<void> {
  const filler = await database.fill("worklist", {
    ...Object.fromEntries(NUMBERS.map((name) => [name, "integer" as const])),
    ...Object.fromEntries(TEXTS.map((name) => [name, "text" as const])),
  });
  filler.add(Object.fromEntries(COLUMNS.map((name) => [name, questions.map((question) => question[name])])));
  filler.done();
}
