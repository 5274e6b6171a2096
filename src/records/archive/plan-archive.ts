import type { ArchiveRemark } from "./archive-remark.ts";
import type { ArchiveDescription, TableDescription } from "./description.ts";
import { type RowKind, rowKind } from "./row-types.ts";
import { termName } from "./terms.ts";

/** Which tables of an archive are read, and as what. */
export interface ArchivePlan {
  /** Tables whose rows are records. */
  records: TableDescription[];
  /** Table the records belong to, where they are not the core themselves. */
  core: { kind: "event" | "taxon"; table: TableDescription } | undefined;
  /** Tables whose rows belong to the records. */
  determinations: TableDescription | undefined;
  media: TableDescription | undefined;
  /** Table whose rows say of events what was looked for. */
  surveys: TableDescription | undefined;
  remarks: ArchiveRemark[];
}

/** Finds the records of an archive, what they belong to, and what belongs to them. The rest is named and left alone. */
export function planArchive({ core, extensions, faults }: ArchiveDescription): ArchivePlan {
  const kind = core === undefined ? "other" : rowKind(core);
  const told = [...faults];
  const occurrences = (kind === "occurrence" && core !== undefined ? [core] : extensions).filter(
    (table) => rowKind(table) === "occurrence",
  );
  const above = core !== undefined && (kind === "event" || kind === "taxon") ? { kind, table: core } : undefined;
  const belonging = (wanted: RowKind, to: RowKind) =>
    kind === to ? extensions.find((table) => rowKind(table) === wanted) : undefined;
  const found = {
    determinations: belonging("determination", "occurrence"),
    media: belonging("media", "occurrence"),
    surveys: belonging("survey", "event"),
  };
  const used = [core, ...occurrences, ...Object.values(found)];
  const joined = above !== undefined || Object.values(found).some((table) => table !== undefined);
  const join = (table: TableDescription) => (joined ? withId(table, kind, told) : table);
  const records = withoutVerbatim(occurrences);
  const remarks = [
    ...extensions.filter((table) => !used.includes(table)).map((table) => unused(table.locations, named(table))),
    ...leftOut(occurrences, records).map((location) => unused([location], "the same records as they came")),
  ];
  if (records.length === 0) remarks.push(noRecords(core));
  const plan = {
    records: records.map(join),
    core: above === undefined ? undefined : { kind: above.kind, table: join(above.table) },
    determinations: found.determinations && join(found.determinations),
    media: found.media && join(found.media),
    surveys: found.surveys && join(found.surveys),
  };
  return { ...plan, remarks: [...told.map(fault), ...remarks] };
}

const ID_TERMS = { occurrence: "occurrenceID", event: "eventID", taxon: "taxonID" } as const;

/** A table that states no column for the id it is joined by: the term that holds such ids takes its place. */
function withId(table: TableDescription, core: RowKind, told: string[]): TableDescription {
  if (table.id !== undefined) return table;
  const term = core in ID_TERMS ? ID_TERMS[core as keyof typeof ID_TERMS] : "";
  const index = table.fields.find((field) => termName(field.term) === term)?.index;
  told.push(
    `${table.locations.join(", ")} states no column for its id; ${index === undefined ? "its rows stand alone" : `${term} was taken`}`,
  );
  return { ...table, id: index };
}

/** Tables without the files that hold the same records as they came, where there are others. */
function withoutVerbatim(tables: readonly TableDescription[]): TableDescription[] {
  const found = tables
    .map((table) => ({ ...table, locations: table.locations.filter((location) => !isVerbatim(location)) }))
    .filter(({ locations }) => locations.length > 0);
  return found.length > 0 ? found : tables.filter(({ locations }) => locations.length > 0);
}

/** True for the file in which publishers repeat their records as they came, beside those they read. */
export function isVerbatim(path: string): boolean {
  return /(^|[\\/])verbatim\.\w+$/i.test(path);
}

function leftOut(all: readonly TableDescription[], some: readonly TableDescription[]): string[] {
  const kept = some.flatMap(({ locations }) => locations);
  return all.flatMap(({ locations }) => locations).filter((location) => !kept.includes(location));
}

/** What the rows of a table are, as its row type names it. */
function named({ rowType }: TableDescription): string {
  return rowType === "" ? "rows of no stated type" : `rows of type ${termName(rowType)}`;
}

function fault(message: string): ArchiveRemark {
  return {
    check: "archive_description",
    severity: "ask",
    value: "meta.xml",
    message: `meta.xml: ${message}`,
    wayOut: "correct it in the archive if records look wrong",
  };
}

function unused(locations: readonly string[], what: string): ArchiveRemark {
  return {
    check: "archive_table_unused",
    severity: "note",
    value: locations.join(", "),
    message: `the table holds ${what} and is not used`,
    wayOut: "nothing to do",
  };
}

function noRecords(core: TableDescription | undefined): ArchiveRemark {
  return {
    check: "archive_without_records",
    severity: "blocks",
    value: core?.rowType ?? "",
    message: `the archive holds no table of occurrences${core === undefined ? "" : `; its core holds ${named(core)}`}`,
    wayOut: "ask its publisher for an archive with occurrences",
  };
}
