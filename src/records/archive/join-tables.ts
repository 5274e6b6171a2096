import type { Database } from "../../engine/database.ts";
import type { RecordField } from "../../scheme/settings.ts";
import { FROM_PARENT, fieldOf, filledFields } from "./filled-groups.ts";
import { fieldsOf, type LoadedTable } from "./load-table.ts";
import { DETERMINATION } from "./record-columns.ts";
import { statement } from "./statement.ts";
import { tableQuery } from "./table-view.ts";

/** Generations of events looked through are two to the power of this; more are only found where parents go in circles. */
const MOST_STEPS = 16;

/** Names of the views over an archive's tables as they were read. */
export const VIEWS = {
  records: "archive_occurrences",
  core: "archive_core_rows",
  determinations: "archive_determination_rows",
  media: "archive_media_rows",
  surveys: "archive_survey_rows",
} as const;

const TABLES = ["archive_core", "archive_determined", "archive_media", "archive_surveys"] as const;

/** Lays a view over a table's files. */
export async function layView(database: Database, role: keyof typeof VIEWS, table: LoadedTable): Promise<void> {
  await database.run(`CREATE OR REPLACE VIEW ${VIEWS[role]} AS ${tableQuery(table)}`);
}

/** Lets go of everything the joins of an archive left in the database. */
export async function dropViews(database: Database): Promise<void> {
  for (const view of Object.values(VIEWS)) await database.run(`DROP VIEW IF EXISTS ${view}`);
  for (const table of TABLES) await database.run(`DROP TABLE IF EXISTS ${table}`);
}

/** Makes one row an id of the core; events take what they lack from their parents. */
export async function layCore(database: Database, kind: "event" | "taxon", table: LoadedTable): Promise<void> {
  const fields = fieldsOf(table);
  const names = ["core_id", ...[...fields].map((field) => `"${field}"`)];
  const linked = kind === "event" && table.files.some(({ links }) => links.has("parentEventID"));
  const columns = [...names, ...(linked ? ['"link_parentEventID"'] : [])].join(", ");
  await database.run(statement("core.sql", { columns }));
  if (!linked) return;
  await database.run(statement("parent-events.sql", {}));
  const step = inheritance(fields);
  for (let steps = 0; steps < MOST_STEPS; steps += 1) {
    const [left] = await database.rows<{ events: number }>(
      "SELECT count(*) AS events FROM archive_core WHERE parent_id IS NOT NULL",
    );
    if (left === undefined || left.events === 0) return;
    await database.run(step);
  }
}

function inheritance(fields: ReadonlySet<RecordField>): string {
  const own = { alias: "e", fields };
  const filled = filledFields(FROM_PARENT, own, { alias: "parent", fields });
  const columns = [
    "e.core_id",
    'e."link_parentEventID"',
    ...[...fields].map((field) => `${filled.get(field) ?? fieldOf(own, field)} AS "${field}"`),
  ];
  return statement("inherit-from-parents.sql", { columns: columns.join(", ") });
}

/** Makes one row a record id of the determinations. */
export async function layDeterminations(database: Database, records: LoadedTable, rows: LoadedTable): Promise<void> {
  const columns = (alias: string, fields: ReadonlySet<RecordField>) =>
    DETERMINATION.map((field) => `${fieldOf({ alias, fields }, field)} AS "${field}"`).join(", ");
  await database.run(
    statement("determinations.sql", {
      row_columns: columns(VIEWS.determinations, fieldsOf(rows)),
      own_columns: columns("o", fieldsOf(records)),
      latest_columns: DETERMINATION.map((field) => `ranked."${field}"`).join(", "),
    }),
  );
}

/** Makes one row a record id of the media. */
export async function layMedia(database: Database): Promise<void> {
  await database.run(statement("media.sql", {}));
}

/** Makes one row an event of what surveys say of their lists. */
export async function laySurveys(database: Database, rows: LoadedTable): Promise<void> {
  const said = fieldOf({ alias: VIEWS.surveys, fields: fieldsOf(rows) }, "isTaxonomicScopeFullyReported");
  await database.run(statement("surveys.sql", { said }));
}
