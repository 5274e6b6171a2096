import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Database, sqlBeside } from "../../engine/database.ts";
import { letterName } from "../../review/letters.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { type Fate, type First, feedbackText, type Reidentified } from "./feedback-text.ts";

/** How many sheets were written, and how many people get none because they are named nowhere. */
export interface WrittenFeedback {
  sheets: number;
  suppressed: number;
}

/**
 * Writes a sheet of feedback to every recorder with records of one year. Nothing is sent. A sheet tells a recorder's own
 * records only.
 *
 * @param folder where the sheets go; what was in it is replaced
 */
export async function writeFeedback(
  database: Database,
  scheme: Scheme,
  { folder, year }: { folder: string; year: number },
): Promise<WrittenFeedback> {
  await layRules(database, scheme, year);
  await database.run(sqlBeside(import.meta.url, "feedback.sql"));
  const fates = byRecorder(await database.rows<Fate>("SELECT * FROM feedback_fates ORDER BY ALL"));
  const firsts = byRecorder(await database.rows<First>("SELECT * FROM feedback_firsts ORDER BY ALL"));
  const squares = byRecorder(
    await database.rows<{ recorder: string; hectad: string }>("SELECT * FROM feedback_squares ORDER BY ALL"),
  );
  const changed = byRecorder(await reidentified(database, scheme));
  const names = await namesAsWritten(database);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const written: WrittenFeedback = { sheets: 0, suppressed: 0 };
  for (const [recorder, own] of fates) {
    const name = names.get(recorder) ?? recorder;
    if (scheme.suppressed.isSuppressed(name)) {
      written.suppressed += 1;
      continue;
    }
    const sheet = feedbackText(scheme, {
      name,
      year,
      fates: own,
      firsts: firsts.get(recorder) ?? [],
      reidentified: changed.get(recorder) ?? [],
      squares: (squares.get(recorder) ?? []).map(({ hectad }) => hectad),
    });
    writeFileSync(join(folder, `${letterName(recorder, name)}.txt`), sheet);
    written.sheets += 1;
  }
  return written;
}

function byRecorder<Row extends { recorder: string }>(rows: readonly Row[]): Map<string, Row[]> {
  return Map.groupBy(rows, ({ recorder }) => recorder);
}

async function layRules(database: Database, { settings }: Scheme, year: number): Promise<void> {
  await database.run(
    `CREATE OR REPLACE TABLE feedback_year AS SELECT ${year} AS year;
     CREATE OR REPLACE TABLE rules AS SELECT ${settings.coverage.minimum_visits} AS minimum_visits;
     CREATE OR REPLACE TABLE latest AS SELECT ${settings.periods.length - 1} AS period`,
  );
}

/** Records of the year that a ruling gave another name, with the part it rests on. */
async function reidentified(database: Database, { decisions }: Scheme): Promise<Reidentified[]> {
  const rows = await database.rows<Omit<Reidentified, "name" | "part" | "why">>(
    `SELECT o.recorder, t.record_key, t.said_name, t.said_date, t.said_place
     FROM feedback_records AS o JOIN decided AS d USING (record_no) JOIN record_texts AS t USING (record_no)
     WHERE NOT d.changed AND d."scientificName" IS NOT NULL ORDER BY o.record_no`,
  );
  return rows.map((row) => {
    const decision = decisions.get(row.record_key);
    const { partSeen: part = "", why = "" } = decision?.identification ?? {};
    return { ...row, name: decision?.corrections.scientificName ?? "", part, why };
  });
}

/** Each recorder's name as most of the records write it. */
async function namesAsWritten(database: Database): Promise<Map<string, string>> {
  const rows = await database.rows<{ recorder: string; name: string }>(
    `WITH written AS (
       SELECT o.recorder, r."recordedBy" AS name, count(*) AS records
       FROM feedback_records AS o JOIN raw_records AS r USING (record_no) GROUP BY ALL
     )
     SELECT recorder, arg_max(name, records * 1000 - length(name)) AS name FROM written GROUP BY recorder ORDER BY recorder`,
  );
  return new Map(rows.map(({ recorder, name }) => [recorder, name]));
}
