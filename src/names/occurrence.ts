import { cleanName } from "./name-text.ts";

/** The terms that say whether and how something occurred, as text; missing and empty mean the same. */
export interface OccurrenceFields {
  readonly occurrenceStatus?: string | undefined;
  readonly individualCount?: string | undefined;
  readonly basisOfRecord?: string | undefined;
  readonly establishmentMeans?: string | undefined;
  readonly degreeOfEstablishment?: string | undefined;
}

/** What a scheme leaves out of its atlas. Spelling with or without spaces and capitals makes no difference. */
export interface OccurrenceSettings {
  /** Values of basisOfRecord. */
  readonly excludedBases: readonly string[];
  /** Values of establishmentMeans or degreeOfEstablishment. */
  readonly excludedEstablishment: readonly string[];
}

/** Fossils, living collections, and what people keep or release. */
export const USUAL_EXCLUSIONS: OccurrenceSettings = {
  excludedBases: ["FossilSpecimen", "LivingSpecimen"],
  excludedEstablishment: ["captive", "cultivated", "released", "managed"],
};

/**
 * Something wrong with the terms.
 * - `status_not_read`: occurrenceStatus is none of the four values of the standard
 * - `count_zero_but_present`, `count_but_absent`: status and individualCount contradict each other
 * - `count_zero_without_status`: nothing says whether 0 means an absence
 * - `count_not_read`: individualCount is no whole number from 0 to 999,999,999
 * - `basis_not_read`: basisOfRecord is no class of Darwin Core
 */
export interface OccurrenceProblem {
  readonly code:
    | "status_not_read"
    | "count_zero_but_present"
    | "count_but_absent"
    | "count_zero_without_status"
    | "count_not_read"
    | "basis_not_read";
  readonly found: string;
}

/** What the terms say. `status` undefined cannot be told: such a record is neither a dot nor an absence. */
export interface ReadOccurrence {
  readonly status: "present" | "absent" | undefined;
  /** Why the scheme's settings leave the record out, or undefined. */
  readonly excluded: string | undefined;
  readonly count: number | undefined;
  readonly problems: readonly OccurrenceProblem[];
}

/** Values of occurrenceStatus: present and absent until May 2026, detected and notDetected since. */
const STATUS: Readonly<Record<string, "present" | "absent">> = {
  present: "present",
  detected: "present",
  absent: "absent",
  notdetected: "absent",
};

/** Classes of Darwin Core that a record's basis can name. */
const BASES = new Set(
  [
    "HumanObservation",
    "MachineObservation",
    "PreservedSpecimen",
    "FossilSpecimen",
    "LivingSpecimen",
    "MaterialSample",
    "MaterialCitation",
    "MaterialEntity",
    "Occurrence",
    "Event",
    "Organism",
    "Taxon",
  ].map(plainKey),
);

/**
 * Reads occurrenceStatus, individualCount, basisOfRecord and the two terms of establishment. An empty status is a
 * presence unless the count is 0. "1" and "0" are no status. Contradictions are problems for a person to settle; the
 * stated status stands until then.
 * Source: Darwin Core terms occurrenceStatus and individualCount (tdwg/dwc, versions to 2026-05-26).
 *
 * @example readOccurrence({ occurrenceStatus: "notDetected" }) // { status: "absent", excluded: undefined, count: undefined, problems: [] }
 */
export function readOccurrence(
  fields: OccurrenceFields,
  settings: OccurrenceSettings = USUAL_EXCLUSIONS,
): ReadOccurrence {
  const problems: OccurrenceProblem[] = [];
  const countText = cleanName(fields.individualCount ?? "");
  const count = /^\d{1,9}$/.test(countText) ? Number(countText) : undefined;
  if (countText !== "" && count === undefined)
    problems.push({ code: "count_not_read", found: `individualCount "${countText}"` });
  const status = readStatus(cleanName(fields.occurrenceStatus ?? ""), count, problems);
  const basis = cleanName(fields.basisOfRecord ?? "");
  if (basis !== "" && !BASES.has(plainKey(basis)))
    problems.push({ code: "basis_not_read", found: `basisOfRecord "${basis}"` });
  return { status, excluded: exclusionOf(basis, fields, settings), count, problems };
}

function readStatus(text: string, count: number | undefined, problems: OccurrenceProblem[]): ReadOccurrence["status"] {
  if (text === "" && count === 0) {
    problems.push({ code: "count_zero_without_status", found: 'individualCount "0" without occurrenceStatus' });
    return undefined;
  }
  const status = text === "" ? "present" : STATUS[plainKey(text)];
  if (status === undefined) problems.push({ code: "status_not_read", found: `occurrenceStatus "${text}"` });
  if (status === "present" && count === 0)
    problems.push({ code: "count_zero_but_present", found: `occurrenceStatus "${text}" with individualCount "0"` });
  if (status === "absent" && count !== undefined && count > 0) {
    problems.push({ code: "count_but_absent", found: `occurrenceStatus "${text}" with individualCount "${count}"` });
  }
  return status;
}

function exclusionOf(basis: string, fields: OccurrenceFields, settings: OccurrenceSettings): string | undefined {
  const bases = settings.excludedBases.map(plainKey);
  if (basis !== "" && bases.includes(plainKey(basis))) return `basisOfRecord ${basis}`;
  return establishmentAmong(fields, settings.excludedEstablishment);
}

/**
 * The term of establishment of a record that is among some values, with its value as written; undefined where none is.
 * Spelling with or without spaces and capitals makes no difference.
 *
 * @example establishmentAmong({ degreeOfEstablishment: "Casual (category C0)" }, ["casual"]) // "degreeOfEstablishment Casual"
 */
export function establishmentAmong(
  fields: Pick<OccurrenceFields, "degreeOfEstablishment" | "establishmentMeans">,
  values: readonly string[],
): string | undefined {
  const sought = values.map(plainKey);
  for (const term of ["degreeOfEstablishment", "establishmentMeans"] as const) {
    // Some sources write the label with its category: "captive (category B1)".
    const value = cleanName(fields[term] ?? "").replace(/ ?\(.*\)$/, "");
    if (value !== "" && sought.includes(plainKey(value))) return `${term} ${value}`;
  }
  return undefined;
}

function plainKey(text: string): string {
  return text.toLowerCase().replaceAll(/[^a-z0-9?]/g, "");
}
