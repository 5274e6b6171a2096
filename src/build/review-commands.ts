import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import type { Database } from "../engine/database.ts";
import { Mistake } from "../mistake.ts";
import { appendDecisions } from "../review/append-decisions.ts";
import { refuseUnread } from "../review/desk/ruling-request.ts";
import { writeLetters } from "../review/letters.ts";
import { mergeRulings, type SaidNow } from "../review/merge-rulings.ts";
import { privateFolder } from "../review/private-folder.ts";
import { readReturned } from "../review/returned-rows.ts";
import { type Selection, selectionCondition } from "../review/selection.ts";
import { layWorklist } from "../review/worklist.ts";
import { counted } from "./counted.ts";
import { writeFeedback } from "./feedback/write-feedback.ts";
import { writePack } from "./pack/write-pack.ts";
import { type Measured, measureScheme } from "./pipeline.ts";
import { type Options, prepare } from "./run-commands.ts";

/** Which records, and where the scheme is. */
export type SelectionOptions = Options & Selection;

/** Writes a letter to each recorder of the records chosen. */
export async function runLetters(options: SelectionOptions): Promise<void> {
  await onReview(options, async ({ database, scheme }, review) => {
    const folder = join(review, "letters");
    const made = await writeLetters(database, scheme, { folder, condition: selectionCondition(options, scheme) });
    say(`${counted(made.letters.length, "letter")} in ${folder}; none is sent`);
    if (made.withoutName > 0) say(`${counted(made.withoutName, "question")} on records that name no recorder`);
    if (made.suppressed > 0) say(`${counted(made.suppressed, "question")} to people who are named nowhere`);
  });
}

/** Writes a sheet of feedback on one year to each recorder. */
export async function runFeedback(options: Options & { year?: string }): Promise<void> {
  const year = Number(options.year);
  if (!/^\d{4}$/.test(options.year ?? ""))
    throw new Mistake("--year", `is ${options.year ?? "not given"}`, "write a year, such as 2024");
  await onReview(options, async ({ database, scheme }, review) => {
    const folder = join(review, `feedback-${year}`);
    const { sheets, suppressed } = await writeFeedback(database, scheme, { folder, year });
    say(`${counted(sheets, "sheet")} in ${folder}; none is sent`);
    if (suppressed > 0) say(`${counted(suppressed, "recorder")} named nowhere: no sheet`);
  });
}

/** Writes a review pack of the records chosen, for somebody else to rule on. */
export async function runPack(options: SelectionOptions & { names?: boolean }): Promise<void> {
  await onReview(options, async ({ database, scheme }, review) => {
    const folder = join(review, "packs");
    const pack = await writePack(database, scheme, { folder, selection: options, named: options.names === true });
    say(
      `${counted(pack.questions, "question")}\n${pack.page}\n${pack.table}\nSend either; take up what comes back with atlaswright merge FILE.`,
    );
  });
}

/** Takes up worklists and packs that came back. */
export async function runMerge(files: readonly string[], options: Options & { final?: boolean }): Promise<void> {
  const absent = files.find((file) => !existsSync(file));
  if (absent !== undefined) throw new Mistake(absent, "is not there", "name the files that came back");
  const rows = (await Promise.all(files.map(readReturned))).flat();
  await onReview(options, async ({ database, scheme }, review) => {
    const saidNow = await whatIsSaid(database, new Set(rows.map(({ record }) => record)));
    const { decisions, alreadySo, conflicts } = mergeRulings(rows, {
      saidNow,
      inForce: scheme.decisions,
      final: options.final === true,
      refuse: (row) => refuseUnread(row, scheme),
    });
    await appendDecisions(scheme.folder, decisions);
    const opinions = decisions.filter(({ ruling }) => ruling === "opinion").length;
    say(
      `${counted(decisions.length - opinions, "ruling")} added to decisions.csv, ${counted(opinions, "opinion")} kept beside them, ${alreadySo} already so`,
    );
    if (conflicts.length === 0) return;
    const file = join(review, "conflicts.csv");
    writeFileSync(file, `${Papa.unparse(conflicts, { escapeFormulae: true })}\n`);
    for (const { record, file: from, row, ruling, problem } of conflicts.slice(0, 10))
      say(`${from}, row ${row}: ${ruling} on ${record}: ${problem}`);
    say(`${counted(conflicts.length, "row")} to look at: ${file}`);
  });
}

/** Opens the records as reviewed, with the worklist, for one command. */
async function onReview(options: Options, use: (measured: Measured, review: string) => Promise<void>): Promise<void> {
  const { free, ...run } = prepare(options);
  try {
    const measured = await measureScheme(run);
    try {
      await layWorklist(measured.database);
      const review = privateFolder(join(run.content, "review"));
      await use(measured, review);
    } finally {
      measured.database.close();
    }
  } finally {
    free();
  }
}

/** What the records of some keys say today. */
async function whatIsSaid(database: Database, keys: ReadonlySet<string>): Promise<Map<string, SaidNow>> {
  const filler = await database.fill("asked_keys", { record_key: "text" });
  filler.add({ record_key: [...keys] });
  filler.done();
  const rows = await database.rows<SaidNow & { record_key: string }>(
    `SELECT record_key, any_value(said_name) AS "saidName", any_value(said_date) AS "saidDate", any_value(said_place) AS "saidPlace",
       any_value(said_kind) AS "saidKind", any_value(said_mark) AS mark
     FROM record_texts JOIN asked_keys USING (record_key) GROUP BY record_key`,
  );
  return new Map(rows.map(({ record_key, ...said }) => [record_key, said]));
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
