import { accountingFile } from "../publishing/accounting-file.ts";
import { contentFindings } from "../scheme/content-findings/index.ts";
import { type Answer, answerOf } from "./answer.ts";
import { tellContentFindings } from "./content-notes.ts";
import { mediaStep } from "./media-step.ts";
import { measureScheme, type RunOptions } from "./pipeline.ts";
import { proposedSettings } from "./proposed-settings.ts";
import { type WrittenReview, writeReview } from "./write-review.ts";

/** What `check` answers: the accounting and findings, and what it wrote. */
export type CheckAnswer = Answer &
  WrittenReview & {
    /** What to paste into the settings, as YAML, so that columns that are not used yet are; empty where there is nothing. */
    proposed_settings: string;
  };

/**
 * Checks a scheme's content and records without writing a site.
 *
 * @param reviewFolder where the worklist, findings and accounting go: a folder of the scheme's own, for they quote its
 *   records
 */
export async function checkScheme({
  reviewFolder,
  ...options
}: RunOptions & { reviewFolder: string }): Promise<CheckAnswer> {
  const { database, scheme, files, read, stages } = await measureScheme(options);
  try {
    const accounting = await accountingFile(database, scheme, read, { forOfficer: true });
    const written = await writeReview(database, scheme, reviewFolder);
    const pictures = await mediaStep(scheme, stages, options.progress);
    const found = contentFindings({ ...scheme, mediaFindings: [...scheme.mediaFindings, ...pictures.findings] });
    const content_findings = tellContentFindings(found, reviewFolder, options.progress);
    stages.forgetOthers();
    const proposed_settings = proposedSettings(scheme, files);
    return {
      ...(await answerOf(database, scheme, accounting)),
      ...written,
      proposed_settings,
      ...(content_findings.length === 0 ? {} : { content_findings }),
    };
  } finally {
    database.close();
  }
}
