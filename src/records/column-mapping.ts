import { RECORD_FIELDS, type RecordField, type SourceSetting } from "../scheme/settings.ts";
import { UNUSED_TERMS } from "./darwin-core-terms.ts";

/** Which column of a file holds which field, and what is left over. */
export interface ColumnMapping {
  /** Field to column number, from 0. */
  columns: Map<RecordField, number>;
  /** Headers no field was found for. */
  unknown: string[];
  /** Headers that are terms of Darwin Core no field is made of. */
  unused: string[];
  /** Headers that would fill a field a second time; the first column counts. */
  repeated: string[];
  /** Mapped headers of the source's settings that the file does not have. */
  missing: string[];
}

/** Other headers for fields, where Darwin Core has no term of its own. */
const ALSO: Partial<Record<RecordField, string[]>> = {
  gridReference: ["gridref", "nationalgridreference", "nationalgridref", "osgridreference", "osgridref"],
  easting: ["eastings", "x"],
  northing: ["northings", "y"],
  viceCounty: ["watsonianvicecounty"],
};

/**
 * Terms of Darwin Core before 2009 (namespaces dwcore and curatorial) that real files still use and whose meaning is
 * that of a term of today. Left out are those that could mean something else, such as EarliestDateCollected.
 */
const SUPERSEDED: Partial<Record<RecordField, string[]>> = {
  occurrenceID: ["globaluniqueidentifier"],
  recordedBy: ["collector"],
  recordNumber: ["collectornumber"],
  scientificNameAuthorship: ["authoryearofscientificname", "scientificnameauthor"],
  year: ["yearcollected"],
  month: ["monthcollected"],
  day: ["daycollected"],
  verbatimEventDate: ["verbatimcollectingdate"],
  geodeticDatum: ["horizontaldatum"],
  samplingProtocol: ["collectingmethod", "samplingmethod"],
  occurrenceRemarks: ["remarks"],
};

/**
 * Finds the record fields among a file's headers: the source's own `columns` first, then Darwin Core names, those of
 * today and some of before, with or without prefix or namespace and in any case ("dwc:eventDate", "EVENTDATE").
 *
 * @param own of the source's settings; "#3" stands for the third column
 * @example mapColumns(["Species", "dwc:eventDate"], { scientificName: "Species" }).columns // => Map { scientificName → 0, eventDate → 1 }
 */
export function mapColumns(headers: readonly string[], own: SourceSetting["columns"]): ColumnMapping {
  const columns = new Map<RecordField, number>();
  const missing: string[] = [];
  const taken = new Set<number>();
  for (const [field, header] of Object.entries(own) as [RecordField, string][]) {
    const column = columnNamed(headers, header);
    if (column === undefined) missing.push(header);
    else {
      columns.set(field, column);
      taken.add(column);
    }
  }
  const left: Record<"unknown" | "unused" | "repeated", string[]> = { unknown: [], unused: [], repeated: [] };
  headers.forEach((header, index) => {
    if (taken.has(index)) return;
    const field = fieldOf(header);
    if (field === undefined) left[isUnusedTerm(header) ? "unused" : "unknown"].push(header);
    else if (columns.has(field)) left.repeated.push(header);
    else columns.set(field, index);
  });
  return { columns, ...left, missing };
}

/** The column a source's settings mean: by its header, by the header but for case and spaces, or by "#" and its number. */
function columnNamed(headers: readonly string[], name: string): number | undefined {
  const alike = [
    (header: string) => header.trim() === name.trim(),
    (header: string) => plainName(header) !== "" && plainName(header) === plainName(name),
  ];
  for (const is of alike) {
    const index = headers.findIndex(is);
    if (index >= 0) return index;
  }
  const number = Number(/^\s*#(\d{1,5})\s*$/.exec(name)?.[1] ?? 0);
  return number >= 1 && number <= headers.length ? number - 1 : undefined;
}

const BY_NAME = new Map<string, RecordField>(
  RECORD_FIELDS.flatMap((field) =>
    [field.toLowerCase(), ...(ALSO[field] ?? []), ...(SUPERSEDED[field] ?? [])].map((name) => [name, field] as const),
  ),
);

/**
 * The field a header or the IRI of a term stands for.
 *
 * @returns undefined where it stands for none; so do the terms for IRIs (dwciri:), whose values are no text
 * @example fieldOf("http://rs.tdwg.org/dwc/terms/eventDate") // => "eventDate"
 */
export function fieldOf(header: string): RecordField | undefined {
  return isForIris(header) ? undefined : BY_NAME.get(plainName(header));
}

function isUnusedTerm(header: string): boolean {
  return isForIris(header) || UNUSED_TERMS.has(plainName(header));
}

function isForIris(header: string): boolean {
  return /^(?:dwciri:|https?:\/\/rs\.tdwg\.org\/dwc\/iri\/)/i.test(header.trim());
}

/** A header without namespace or prefix, quotes, spaces, marks and case. */
function plainName(header: string): string {
  return header
    .trim()
    .replace(/^#\s*(?=\D)/, "")
    .replace(/^https?:\/\/\S*[/#]/i, "")
    .replace(/^[a-z][a-z0-9]*:(?=\S)/i, "")
    .replace(/^(?:dwc|dcterms|eco)[_.]/i, "")
    .replaceAll(/[\s_"'.-]/g, "")
    .toLowerCase();
}
