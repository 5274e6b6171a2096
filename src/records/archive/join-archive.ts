import type { FileFinding } from "../finding.ts";
import { remarkFinding } from "./archive-remark.ts";
import type { TableDescription } from "./description.ts";
import { layCore, layDeterminations, layMedia, laySurveys, layView, type VIEWS } from "./join-tables.ts";
import { fieldsOf, type LoadedFile, type LoadedTable, loadTables, type Reading } from "./load-table.ts";
import { emptyEvents, repeatedIds, unmatchedRows } from "./match-findings.ts";
import type { ArchivePlan } from "./plan-archive.ts";
import type { JoinedTables } from "./record-columns.ts";
import { termName } from "./terms.ts";

/** What the tables around the records gave. */
export interface JoinedArchive {
  tables: Omit<JoinedTables, "records" | "licence">;
  files: LoadedFile[];
  findings: FileFinding[];
}

/** Reads the tables around the records, lays them ready for the join, and says which rows belong to nothing. */
export async function joinTables(reading: Reading, plan: ArchivePlan, records: LoadedTable): Promise<JoinedArchive> {
  const { database } = reading;
  const joined: JoinedArchive = {
    tables: { core: undefined, determinations: undefined, media: false, surveys: false },
    files: [],
    findings: [],
  };
  await layView(database, "records", records);
  await joinCore(reading, plan, records, joined);
  const surveys = await load(reading, "surveys", plan.surveys, joined);
  if (surveys !== undefined) {
    await laySurveys(database, surveys);
    joined.tables.surveys = true;
    joined.findings.push(...(await alone(reading, "surveys", surveys, "core")));
  }
  const determinations = await load(reading, "determinations", plan.determinations, joined);
  if (determinations !== undefined) {
    await layDeterminations(database, records, determinations);
    joined.tables.determinations = fieldsOf(determinations);
    joined.findings.push(...(await alone(reading, "determinations", determinations, "records")));
  }
  const media = await load(reading, "media", plan.media, joined);
  if (media !== undefined) {
    await layMedia(database);
    joined.tables.media = true;
    joined.findings.push(...(await alone(reading, "media", media, "records")));
  }
  if (determinations !== undefined || media !== undefined) {
    const effect = "what belongs to the id was given to each";
    joined.findings.push(...(await repeatedIds(database, { rows: "records", table: records, effect })));
  }
  return joined;
}

async function joinCore(
  reading: Reading,
  { core }: ArchivePlan,
  records: LoadedTable,
  joined: JoinedArchive,
): Promise<void> {
  const { database } = reading;
  const table = await load(reading, "core", core && withEventId(core), joined);
  if (core === undefined || table === undefined || table.files.length === 0) return;
  await layCore(database, core.kind, table);
  joined.tables.core = { kind: core.kind, fields: fieldsOf(table) };
  const effect = "what belongs to the id belongs to the first";
  joined.findings.push(
    ...(await repeatedIds(database, { rows: "core", table, effect })),
    ...(await unmatchedRows(database, { rows: "records", others: "core", table: records, what: core.kind })),
    ...(core.kind === "event" ? await emptyEvents(database, table) : []),
  );
}

/** Events whose eventID no column holds are known by their id. */
function withEventId({ kind, table }: NonNullable<ArchivePlan["core"]>): TableDescription {
  if (kind !== "event" || table.fields.some(({ term }) => termName(term) === "eventID")) return table;
  return { ...table, fields: [...table.fields, { term: "eventID", index: table.id, default: "" }] };
}

async function load(
  reading: Reading,
  role: keyof typeof VIEWS,
  description: TableDescription | undefined,
  joined: JoinedArchive,
): Promise<LoadedTable | undefined> {
  if (description === undefined) return undefined;
  const table = await loadTables(reading, role, [description]);
  await layView(reading.database, role, table);
  joined.files.push(...table.files);
  joined.findings.push(
    ...table.remarks.map((remark) => remarkFinding(reading.archive, remark)),
    ...table.files.flatMap(({ findings }) => findings),
  );
  return table;
}

function alone(
  { database }: Reading,
  rows: keyof typeof VIEWS,
  table: LoadedTable,
  others: "core" | "records",
): Promise<FileFinding[]> {
  return unmatchedRows(database, { rows, others, table, what: others === "core" ? "event" : "record" });
}
