import type { RecordField } from "../../scheme/settings.ts";

/** Fields that say one thing together: they are taken together, where none of those that decide has a value. */
export interface FilledGroup {
  fields: readonly RecordField[];
  decidedBy: readonly RecordField[];
}

const DATE: readonly RecordField[] = [
  "eventDate",
  "year",
  "month",
  "day",
  "startDayOfYear",
  "endDayOfYear",
  "verbatimEventDate",
];

const POSITION: readonly RecordField[] = [
  "gridReference",
  "decimalLatitude",
  "decimalLongitude",
  "easting",
  "northing",
  "verbatimCoordinates",
  "verbatimLatitude",
  "verbatimLongitude",
];

const ALONE: readonly RecordField[] = [
  "country",
  "countryCode",
  "stateProvince",
  "county",
  "viceCounty",
  "locality",
  "dataGeneralizations",
  "informationWithheld",
  "recordedBy",
  "samplingProtocol",
  "license",
];

/**
 * What an event without it takes from its parent. A position goes with its datum and uncertainty: those of one point
 * say nothing of another. That a list is complete is never inherited: it would make absences of blanks.
 */
export const FROM_PARENT: readonly FilledGroup[] = [
  { fields: DATE, decidedBy: DATE },
  {
    fields: [...POSITION, "geodeticDatum", "coordinateUncertaintyInMeters", "coordinatePrecision", "verbatimSRS"],
    decidedBy: POSITION,
  },
  ...ALONE.map((field) => ({ fields: [field], decidedBy: [field] })),
];

/** What a record without it takes from its event. */
export const FROM_EVENT: readonly FilledGroup[] = [
  ...FROM_PARENT,
  ...(["eventID", "isTaxonomicScopeFullyReported"] as const).map((field) => ({ fields: [field], decidedBy: [field] })),
];

/** A row in a statement: its alias, and the fields it has. */
export interface AliasedRow {
  alias: string;
  fields: ReadonlySet<RecordField>;
}

/** A field of a row as an expression; empty text where the row has no such field. */
export function fieldOf({ alias, fields }: AliasedRow, field: RecordField): string {
  return fields.has(field) ? `${alias}."${field}"` : "''";
}

/**
 * Expressions for the fields of groups, each the row's own, or the other row's where the row has none of what decides.
 */
export function filledFields(
  groups: readonly FilledGroup[],
  own: AliasedRow,
  other: AliasedRow,
): Map<RecordField, string> {
  const filled = new Map<RecordField, string>();
  for (const { fields, decidedBy } of groups) {
    const empty = decidedBy.filter((field) => own.fields.has(field)).map((field) => `${fieldOf(own, field)} = ''`);
    const lacks = empty.length === 0 ? "true" : empty.join(" AND ");
    for (const field of fields)
      if (other.fields.has(field))
        filled.set(
          field,
          `CASE WHEN ${lacks} THEN coalesce(nullif(${fieldOf(other, field)}, ''), ${fieldOf(own, field)}) ELSE ${fieldOf(own, field)} END`,
        );
  }
  return filled;
}
