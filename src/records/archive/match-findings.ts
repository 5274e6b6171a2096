import type { Database } from "../../engine/database.ts";
import type { FileFinding, Severity } from "../finding.ts";
import { remarkFinding } from "./archive-remark.ts";
import { VIEWS } from "./join-tables.ts";
import type { LoadedTable } from "./load-table.ts";
import { statement } from "./statement.ts";

/** So many rows are named one by one; of more, their number is told. */
const MOST_NAMED = 100;

type Role = keyof typeof VIEWS;

interface MatchRow {
  location: number;
  file_row: number;
  core_id: string;
  all_of_them: number;
}

/** What is said of each row found. */
interface MatchRemark {
  check: string;
  severity: Severity;
  message: string;
  wayOut: string;
}

/** Rows of one table whose id names no row of another. */
export async function unmatchedRows(
  database: Database,
  { rows, others, table, what }: { rows: Role; others: Role; table: LoadedTable; what: string },
): Promise<FileFinding[]> {
  const found = await query(database, "unmatched-rows.sql", { rows: VIEWS[rows], others: VIEWS[others] });
  return findings(table, found, {
    check: "archive_row_alone",
    severity: "ask",
    message: `the row’s id names no ${what} of the archive`,
    wayOut: `ask the archive’s publisher for the ${what}`,
  });
}

/** Rows of a table that others belong to, without an id or with that of an earlier row. */
export async function repeatedIds(
  database: Database,
  { rows, table, effect }: { rows: Role; table: LoadedTable; effect: string },
): Promise<FileFinding[]> {
  const found = await query(database, "repeated-ids.sql", { rows: VIEWS[rows] });
  return findings(table, found, {
    check: "archive_id_repeated",
    severity: "ask",
    message: `the row has no id, or that of an earlier row; ${effect}`,
    wayOut: "ask the archive’s publisher to give each row an id of its own",
  });
}

/** Events no record belongs to, as one note: an atlas knows of a visit by its records alone. */
export async function emptyEvents(database: Database, table: LoadedTable): Promise<FileFinding[]> {
  const rows = `(SELECT * FROM ${VIEWS.core} WHERE core_id <> '')`;
  const [first] = await query(database, "unmatched-rows.sql", { rows, others: VIEWS.records });
  if (first === undefined) return [];
  const { location, file_row, core_id, all_of_them: all } = first;
  const remark = {
    check: "archive_event_empty",
    severity: "note" as const,
    value: core_id,
    message: `${all === 1 ? "this event has" : `this and ${all - 1} more events have`} no record, and make no visit`,
    wayOut: "nothing to do for events that hold other events; else record what was looked for and not found",
  };
  return [remarkFinding(table.files[location]?.name ?? "", remark, file_row)];
}

function query(database: Database, file: string, tables: Record<string, string>): Promise<MatchRow[]> {
  return database.rows<MatchRow>(statement(file, { ...tables, most: String(MOST_NAMED) }));
}

function findings(table: LoadedTable, rows: readonly MatchRow[], remark: MatchRemark): FileFinding[] {
  const named = rows.map(({ location, file_row, core_id }) =>
    remarkFinding(table.files[location]?.name ?? "", { ...remark, value: core_id }, file_row),
  );
  const all = rows[0]?.all_of_them ?? 0;
  if (all > rows.length)
    named.push(
      remarkFinding(table.files[0]?.name ?? "", {
        ...remark,
        value: `${all - rows.length} more rows`,
        message: `${remark.message}: ${all - rows.length} more rows like the ${rows.length} named`,
      }),
    );
  return named;
}
