import { RECORD_FIELDS, type RecordField, type SourceSetting } from "../scheme/settings.ts";

/** Which column of a file holds which field, and what is left over. */
export interface ColumnMapping {
  /** Field to column number, from 0. */
  columns: Map<RecordField, number>;
  /** Headers no field was found for. */
  unknown: string[];
  /** Headers that would fill a field a second time; the first column counts. */
  repeated: string[];
  /** Mapped headers of the source's settings that the file does not have. */
  missing: string[];
}

/** Other headers for the fields that Darwin Core has no term of its own for. */
const ALSO: Partial<Record<RecordField, string[]>> = {
  gridReference: ["gridref", "gridreference", "nationalgridreference"],
  easting: ["easting", "eastings", "x"],
  northing: ["northing", "northings", "y"],
};

/**
 * Finds the record fields among a file's headers: the source's own `columns` first, then Darwin Core names
 * with or without prefix and in any case ("dwc:eventDate", "EVENTDATE").
 *
 * @example mapColumns(["Species", "dwc:eventDate"], { scientificName: "Species" }).columns // => Map { scientificName → 0, eventDate → 1 }
 */
export function mapColumns(headers: readonly string[], own: SourceSetting["columns"]): ColumnMapping {
  const columns = new Map<RecordField, number>();
  const missing: string[] = [];
  const taken = new Set<number>();
  for (const [field, header] of Object.entries(own) as [RecordField, string][]) {
    const index = headers.findIndex((name) => name.trim() === header.trim());
    const close = index >= 0 ? index : headers.findIndex((name) => plainName(name) === plainName(header));
    if (close < 0) missing.push(header);
    else {
      columns.set(field, close);
      taken.add(close);
    }
  }
  const unknown: string[] = [];
  const repeated: string[] = [];
  headers.forEach((header, index) => {
    if (taken.has(index)) return;
    const field = fieldOf(header);
    if (field === undefined) unknown.push(header);
    else if (columns.has(field)) repeated.push(header);
    else columns.set(field, index);
  });
  return { columns, unknown, repeated, missing };
}

const BY_NAME = new Map<string, RecordField>(
  RECORD_FIELDS.flatMap((field) => [field.toLowerCase(), ...(ALSO[field] ?? [])].map((name) => [name, field] as const)),
);

function fieldOf(header: string): RecordField | undefined {
  return BY_NAME.get(plainName(header));
}

/** A header without prefix, quotes, spaces and case. */
function plainName(header: string): string {
  return header
    .trim()
    .replace(/^.*[:/#]/, "")
    .replace(/^dwc_/i, "")
    .replaceAll(/[\s_"']/g, "")
    .toLowerCase();
}
