import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { accountingFile } from "../publishing/accounting-file.ts";
import { type Answer, answerOf } from "./answer.ts";
import { writeFindings } from "./findings.ts";
import { measureScheme, type RunOptions } from "./pipeline.ts";

/**
 * Checks a scheme's content and records without writing a site. Findings go to `findings.csv` in a folder of the
 * scheme's own, for they quote its records.
 *
 * @param reviewFolder where the findings go
 */
export async function checkScheme({
  reviewFolder,
  ...options
}: RunOptions & { reviewFolder: string }): Promise<Answer & { findings_file: string }> {
  const { database, scheme, read, stages } = await measureScheme(options);
  try {
    const accounting = await accountingFile(database, scheme, read);
    mkdirSync(reviewFolder, { recursive: true });
    const findings_file = join(reviewFolder, "findings.csv");
    await writeFindings(database, findings_file);
    stages.forgetOthers();
    return { ...(await answerOf(database, scheme, accounting)), findings_file };
  } finally {
    database.close();
  }
}
