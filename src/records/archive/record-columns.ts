import { sqlText } from "../../engine/database.ts";
import { RECORD_FIELDS, type RecordField } from "../../scheme/settings.ts";
import { type AliasedRow, FROM_EVENT, fieldOf, filledFields } from "./filled-groups.ts";

/** The fields that make up a name; those of one name say nothing of another. */
const NAME: readonly RecordField[] = [
  "scientificName",
  "scientificNameAuthorship",
  "scientificNameID",
  "taxonID",
  "taxonRank",
  "kingdom",
  "vernacularName",
];

/** The fields that make up one determination. */
export const DETERMINATION: readonly RecordField[] = [
  ...NAME,
  "identificationQualifier",
  "identifiedBy",
  "dateIdentified",
  "identificationVerificationStatus",
  "identificationRemarks",
];

/** What the records of an archive are joined with, each with the fields it has. */
export interface JoinedTables {
  records: ReadonlySet<RecordField>;
  core: { kind: "event" | "taxon"; fields: ReadonlySet<RecordField> } | undefined;
  determinations: ReadonlySet<RecordField> | undefined;
  media: boolean;
  surveys: boolean;
  /** Licence of the whole data set; empty for none. */
  licence: string;
}

/** Columns of the records as expressions, in the order of the fields, and the joins they need. */
export interface RecordColumns {
  columns: Map<RecordField, string>;
  joins: string;
}

/**
 * The statement's parts that put a record together: its own row, then what it lacks from its event or taxon, its latest
 * determination, its media, and the licence of the data set.
 */
export function recordColumns({ records, core, determinations, media, surveys, licence }: JoinedTables): RecordColumns {
  const own: AliasedRow = { alias: "r", fields: records };
  const columns = new Map([...records].map((field) => [field, fieldOf(own, field)] as const));
  const joins: string[] = [];
  const join = (table: string, alias: string) =>
    joins.push(`LEFT JOIN ${table} AS ${alias} ON ${alias}.core_id = r.core_id`);
  const set = (more: ReadonlyMap<RecordField, string>) => {
    for (const [field, expression] of more) columns.set(field, expression);
  };
  if (core !== undefined) {
    join("archive_core", "core");
    const other = { alias: "core", fields: core.fields };
    set(core.kind === "event" ? filledFields(FROM_EVENT, own, other) : namedFields(own, other));
  }
  if (surveys) {
    join("archive_surveys", "survey");
    const field = "isTaxonomicScopeFullyReported";
    columns.set(field, `coalesce(nullif(${columns.get(field) ?? "''"}, ''), survey.said, '')`);
  }
  if (determinations !== undefined) {
    join("archive_determined", "latest");
    set(determinedFields(own, determinations));
  }
  if (media) {
    join("archive_media", "media");
    columns.set("associatedMedia", together(fieldOf(own, "associatedMedia"), "media.addresses"));
  }
  if (licence !== "")
    columns.set("license", `coalesce(nullif(${columns.get("license") ?? "''"}, ''), ${sqlText(licence)})`);
  const ordered = RECORD_FIELDS.flatMap((field) => {
    const expression = columns.get(field);
    return expression === undefined ? [] : [[field, expression] as const];
  });
  return { columns: new Map(ordered), joins: joins.join("\n  ") };
}

/** The name of a record that has none of its own, or the same as its taxon. */
function namedFields(own: AliasedRow, taxon: AliasedRow): Map<RecordField, string> {
  const name = fieldOf(own, "scientificName");
  const lacks = `${name} = '' OR ${name} = ${fieldOf(taxon, "scientificName")}`;
  return new Map(
    NAME.filter((field) => taxon.fields.has(field)).map((field) => [
      field,
      `CASE WHEN ${lacks} THEN coalesce(nullif(${fieldOf(own, field)}, ''), ${fieldOf(taxon, field)}, '') ELSE ${fieldOf(own, field)} END`,
    ]),
  );
}

/** The latest determination. What another name says does not go with it, but for the kingdom. */
function determinedFields(own: AliasedRow, rows: ReadonlySet<RecordField>): Map<RecordField, string> {
  const fields = DETERMINATION.filter((field) => rows.has(field) || own.fields.has(field));
  const columns = new Map<RecordField, string>();
  for (const field of fields) {
    const mine = fieldOf(own, field);
    const same = field === "kingdom" ? "true" : `latest."scientificName" = ${fieldOf(own, "scientificName")}`;
    columns.set(
      field,
      `CASE WHEN latest.core_id IS NULL OR latest.is_row = 0 THEN ${mine} WHEN latest."${field}" <> '' THEN latest."${field}" WHEN ${same} THEN ${mine} ELSE '' END`,
    );
  }
  return columns.set("previousIdentifications", together(fieldOf(own, "previousIdentifications"), "latest.previous"));
}

/** Two texts after one another, of which each may be missing. */
function together(one: string, other: string): string {
  return `concat_ws(' | ', nullif(${one}, ''), nullif(${other}, ''))`;
}
