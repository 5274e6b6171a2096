import { join } from "node:path";
import { type Database, sqlText } from "../engine/database.ts";
import { isNameRefusal } from "../names/match-name.ts";
import { privateFolder } from "../review/private-folder.ts";
import { runStandardTests, writeStandardResults } from "../review/standard-tests/run-on-records.ts";
import { layWorklist, writeWorklistCsv } from "../review/worklist.ts";
import { writeWorklistWorkbook } from "../review/worklist-workbook.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { writeFindings } from "./findings.ts";

/** What was written for the officer, and how many questions want a ruling. */
export interface WrittenReview {
  findings_file: string;
  worklist_file: string;
  questions: number;
}

/**
 * Writes what the officer works from into a private folder: `worklist.csv` and `worklist.xlsx`, what wants a ruling;
 * `findings.csv`, every finding; `accounting.csv`, what became of every record; `standard-tests.csv`, what the draft TDWG
 * tests answer by source, and `standard-proposals.csv`, what they would amend.
 *
 * @param folder made if need be
 */
export async function writeReview(database: Database, scheme: Scheme, folder: string): Promise<WrittenReview> {
  privateFolder(folder);
  const [findings_file, worklist_file] = [join(folder, "findings.csv"), join(folder, "worklist.csv")];
  await writeFindings(database, findings_file);
  await writeQuery(
    database,
    "SELECT source, status, reason, reason_in_words, records FROM accounting ORDER BY ALL",
    join(folder, "accounting.csv"),
  );
  const questions = await layWorklist(database);
  await writeWorklistCsv(database, worklist_file);
  await writeWorklistWorkbook(database, join(folder, "worklist.xlsx"));
  await writeStandardTests(database, scheme, folder);
  return { findings_file, worklist_file, questions };
}

async function writeStandardTests(database: Database, { settings, checklist }: Scheme, folder: string): Promise<void> {
  await runStandardTests(database, settings.sources, {
    today: settings.edition.date,
    intervalEnd: settings.dates.interval_end,
    hasName: (name) => !isNameRefusal(checklist.match(name)),
  });
  await writeStandardResults(database, join(folder, "standard-tests.csv"));
  await writeQuery(
    database,
    `SELECT source, label AS test, guid, status, inputs, proposal, records FROM standard_proposals
     WHERE NOT restates ORDER BY source, label, inputs, proposal`,
    join(folder, "standard-proposals.csv"),
  );
}

async function writeQuery(database: Database, query: string, file: string): Promise<void> {
  await database.run(`COPY (${query}) TO ${sqlText(file)} (FORMAT csv, HEADER)`);
}
