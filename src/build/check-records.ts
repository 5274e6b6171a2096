import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { type Database, sqlText } from "../engine/database.ts";
import { accountingFile } from "../publishing/accounting-file.ts";
import { layWorklist, writeWorklistCsv } from "../review/worklist.ts";
import { writeWorklistWorkbook } from "../review/worklist-workbook.ts";
import { type Answer, answerOf } from "./answer.ts";
import { writeFindings } from "./findings.ts";
import { measureScheme, type RunOptions } from "./pipeline.ts";
import { proposedSettings } from "./proposed-settings.ts";

/** What `check` answers: the accounting and findings, and what it wrote. */
export type CheckAnswer = Answer & {
  findings_file: string;
  worklist_file: string;
  /** Questions of the worklist. */
  questions: number;
  /** What to paste into the settings, as YAML, so that columns that are not used yet are; empty where there is nothing. */
  proposed_settings: string;
};

/**
 * Checks a scheme's content and records without writing a site. Into a folder of the scheme's own, for they quote its
 * records, go: `worklist.csv` and `worklist.xlsx`, what wants a ruling; `findings.csv`, every finding; `accounting.csv`,
 * what became of every record.
 *
 * @param reviewFolder where they go
 */
export async function checkScheme({
  reviewFolder,
  ...options
}: RunOptions & { reviewFolder: string }): Promise<CheckAnswer> {
  const { database, scheme, files, read, stages } = await measureScheme(options);
  try {
    const accounting = await accountingFile(database, scheme, read, { forOfficer: true });
    mkdirSync(reviewFolder, { recursive: true });
    const [findings_file, worklist_file] = [join(reviewFolder, "findings.csv"), join(reviewFolder, "worklist.csv")];
    await writeFindings(database, findings_file);
    await writeAccounting(database, join(reviewFolder, "accounting.csv"));
    const questions = await layWorklist(database);
    await writeWorklistCsv(database, worklist_file);
    await writeWorklistWorkbook(database, join(reviewFolder, "worklist.xlsx"));
    stages.forgetOthers();
    const proposed_settings = proposedSettings(scheme, files);
    return {
      ...(await answerOf(database, scheme, accounting)),
      findings_file,
      worklist_file,
      questions,
      proposed_settings,
    };
  } finally {
    database.close();
  }
}

async function writeAccounting(database: Database, file: string): Promise<void> {
  await database.run(
    `COPY (SELECT source, status, reason, reason_in_words, records FROM accounting ORDER BY ALL) TO ${sqlText(file)} (FORMAT csv, HEADER)`,
  );
}
