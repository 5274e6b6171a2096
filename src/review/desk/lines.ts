import { createHash } from "node:crypto";
import { findingTitle } from "../../records/finding-titles.ts";
import type { DeskFilter, GroupAnswer, Line, LinesAnswer } from "./answers.ts";
import type { Desk } from "./desk.ts";
import { narrowed, narrowedInWords } from "./narrowed.ts";

/** How many lines are told at once. */
export const PAGE = 100;

const FROM = "worklist AS w LEFT JOIN desk_ruled AS d USING (record_key)";

/** What several records say: their one value, or how many values they have. */
function oneOr(column: string, many: string): string {
  return `CASE WHEN min(w.${column}) = max(w.${column}) THEN min(w.${column}) ELSE count(DISTINCT w.${column}) || ' ${many}' END`;
}

const LINE = `min(w.record_no) AS record, count(DISTINCT w.record_no) AS records,
  count(DISTINCT w.record_no) FILTER (WHERE d.ruling IS NULL) AS open, min(w.severity) AS severity,
  min(w.check_name) AS "check", ${oneOr("said_name", "names")} AS name, ${oneOr("said_date", "dates")} AS date,
  ${oneOr("said_place", "places")} AS place, ${oneOr("source", "sources")} AS source`;

/**
 * Lines of the worklist under a filter, worst first: one a look.
 *
 * @param from how many lines to pass over
 */
export async function linesOf({ database, scheme }: Desk, filter: DeskFilter, from: number): Promise<LinesAnswer> {
  const condition = narrowed(filter, scheme);
  const rows = await database.rows<Omit<Line, "question">>(
    `SELECT w.look_no AS look, ${LINE}, CASE WHEN count(DISTINCT w.record_no) = 1 THEN coalesce(min(d.ruling), '') ELSE '' END AS ruling
     FROM ${FROM} WHERE ${condition} GROUP BY w.look_no ORDER BY w.look_no LIMIT ${PAGE} OFFSET ${from}`,
  );
  const [counts] = await database.rows<{ lines: number; records: number; open: number }>(
    `SELECT count(DISTINCT w.look_no) AS lines, count(DISTINCT w.record_no) AS records,
       count(DISTINCT w.record_no) FILTER (WHERE d.ruling IS NULL) AS open FROM ${FROM} WHERE ${condition}`,
  );
  return {
    lines: rows.map(asked),
    all: counts?.lines ?? 0,
    records: counts?.records ?? 0,
    open: counts?.open ?? 0,
  };
}

/** Records of one look under a filter, one line each. */
export async function recordsOf(
  { database, scheme }: Desk,
  look: number,
  filter: DeskFilter,
  from: number,
): Promise<Line[]> {
  const rows = await database.rows<Omit<Line, "question">>(
    `SELECT $look AS look, ${LINE}, coalesce(min(d.ruling), '') AS ruling
     FROM ${FROM} WHERE w.look_no = $look AND ${narrowed(filter, scheme)}
     GROUP BY w.record_no ORDER BY w.record_no LIMIT ${PAGE} OFFSET ${from}`,
    { look },
  );
  return rows.map(asked);
}

/** What a ruling on a whole look would be made on: its records that are still open under the filter. */
export async function groupOf(desk: Desk, look: number, filter: DeskFilter): Promise<GroupAnswer> {
  const rows = await openOf(desk, look, filter);
  const proposals = await desk.database.rows<{ proposal: string }>(
    "SELECT DISTINCT proposal FROM worklist WHERE look_no = $look AND proposal <> '' ORDER BY proposal LIMIT 5",
    { look },
  );
  const [first] = await desk.database.rows<{ check: string; shared: string; source: string }>(
    `SELECT min(check_name) AS "check", min(source) AS source, ${oneOr("said_name", "names").replaceAll("w.", "")} AS shared FROM worklist WHERE look_no = $look`,
    { look },
  );
  return {
    question: findingTitle(first?.check ?? ""),
    filter: `${narrowedInWords(filter, desk.scheme)}; look ${look}: “${findingTitle(first?.check ?? "")}”, ${first?.shared ?? ""}, of ${first?.source ?? ""}`,
    records: rows.length,
    others: rows.filter(({ others }) => others).length,
    mark: markOf(rows),
    proposals: proposals.map(({ proposal }) => proposal),
  };
}

/** Numbers of the open records of a look under a filter; `others` where a record is asked something else too. */
export async function openOf(
  { database, scheme }: Desk,
  look: number,
  filter: DeskFilter,
): Promise<{ record: number; others: boolean }[]> {
  return database.rows(
    `SELECT w.record_no AS record, w.record_no IN (SELECT record_no FROM worklist WHERE look_no <> $look) AS others
     FROM ${FROM} WHERE w.look_no = $look AND d.ruling IS NULL AND ${narrowed(filter, scheme)}
     GROUP BY w.record_no ORDER BY w.record_no`,
    { look },
  );
}

/** Stands for which records are open, and which of them are asked something else too. */
export function markOf(open: readonly { record: number; others: boolean }[]): string {
  return createHash("sha256")
    .update(JSON.stringify(open.map(({ record, others }) => [record, others])))
    .digest("base64url");
}

function asked(line: Omit<Line, "question">): Line {
  return { ...line, question: findingTitle(line.check) };
}
