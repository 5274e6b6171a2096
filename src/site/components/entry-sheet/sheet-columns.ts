/** Columns of the entry sheet; each is a term that `check` reads without a mapping. */

/** What a column's cells are: text, a date, a whole number or a decimal number. */
type CellKind = "text" | "date" | "whole" | "decimal";

/** One column. */
export interface SheetColumn {
  /** Its head: a term of Darwin Core, or a field of our own (`evidence`, `partSeen`, `caste`). */
  readonly term: SheetTerm;
  readonly kind: CellKind;
  /** In characters. */
  readonly width: number;
  /** A record is nothing without it. */
  readonly needed?: true;
}

/** Heads of the columns, in their order. */
export type SheetTerm =
  | "scientificName"
  | "eventDate"
  | "year"
  | "month"
  | "gridReference"
  | "decimalLatitude"
  | "decimalLongitude"
  | "geodeticDatum"
  | "coordinateUncertaintyInMeters"
  | "locality"
  | "caste"
  | "individualCount"
  | "recordedBy"
  | "identifiedBy"
  | "evidence"
  | "partSeen"
  | "habitat"
  | "occurrenceRemarks";

const COLUMNS: readonly SheetColumn[] = [
  { term: "scientificName", kind: "text", width: 34, needed: true },
  { term: "eventDate", kind: "date", width: 14, needed: true },
  { term: "year", kind: "whole", width: 8 },
  { term: "month", kind: "whole", width: 8 },
  { term: "gridReference", kind: "text", width: 16, needed: true },
  { term: "decimalLatitude", kind: "decimal", width: 16 },
  { term: "decimalLongitude", kind: "decimal", width: 17 },
  { term: "geodeticDatum", kind: "text", width: 15 },
  { term: "coordinateUncertaintyInMeters", kind: "whole", width: 30 },
  { term: "locality", kind: "text", width: 30 },
  { term: "caste", kind: "text", width: 20 },
  { term: "individualCount", kind: "whole", width: 16 },
  { term: "recordedBy", kind: "text", width: 24, needed: true },
  { term: "identifiedBy", kind: "text", width: 24 },
  { term: "evidence", kind: "text", width: 14 },
  { term: "partSeen", kind: "text", width: 16 },
  { term: "habitat", kind: "text", width: 20 },
  { term: "occurrenceRemarks", kind: "text", width: 40 },
];

/**
 * The columns of a scheme's sheet: without castes where it tells none apart.
 *
 * @param castes ids of the scheme
 * @example sheetColumns([]).some(({ term }) => term === "caste") // false
 */
export function sheetColumns(castes: readonly string[]): SheetColumn[] {
  return COLUMNS.filter(({ term }) => term !== "caste" || castes.length > 0);
}
