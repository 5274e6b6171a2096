import { type Database, sqlBeside, sqlText } from "../engine/database.ts";
import { defused } from "../engine/defused.ts";
import { findingTitle } from "../records/finding-titles.ts";
import { WORKLIST_COLUMNS } from "./worklist-columns.ts";

/**
 * Lays the table `worklist`: every question that wants a ruling, with its record. Needs what `reviewRecords` or
 * `openReview` leaves, and the view `record_texts`.
 *
 * @returns how many questions there are
 */
export async function layWorklist(database: Database): Promise<number> {
  await database.run(sqlBeside(import.meta.url, "worklist.sql"));
  const checks = await database.rows<{ name: string }>(
    "SELECT DISTINCT check_name AS name FROM worklist ORDER BY check_name",
  );
  const titles = await database.fill("check_titles", { check_name: "text", question: "text" });
  titles.add({ check_name: checks.map(({ name }) => name), question: checks.map(({ name }) => findingTitle(name)) });
  titles.done();
  const [counted] = await database.rows<{ questions: number }>("SELECT count(*) AS questions FROM worklist");
  return counted?.questions ?? 0;
}

/**
 * A query of the worklist with the columns people see, in order, every text such that no spreadsheet runs it.
 *
 * @param condition on the columns of the table `worklist`, which stands as `w`
 * @param shown the columns, where not all
 */
export function worklistQuery(condition = "true", shown = WORKLIST_COLUMNS): string {
  const columns = shown.map(({ name, from }) => {
    if (from === undefined) return `'' AS "${name}"`;
    return ["look_no", "records_of_look", "row"].includes(from)
      ? `w."${from}" AS "${name}"`
      : `${defused(from === "question" ? "c.question" : `w."${from}"`)} AS "${name}"`;
  });
  return `SELECT ${columns.join(", ")} FROM worklist AS w JOIN check_titles AS c USING (check_name) WHERE ${condition}
    ORDER BY w.look_no, w.record_no, w.check_name, w.message`;
}

/** Writes the worklist, or the part a condition names, as CSV (RFC 4180, UTF-8). */
export async function writeWorklistCsv(
  database: Database,
  file: string,
  condition?: string,
  shown = WORKLIST_COLUMNS,
): Promise<void> {
  await database.run(`COPY (${worklistQuery(condition, shown)}) TO ${sqlText(file)} (FORMAT csv, HEADER)`);
}
