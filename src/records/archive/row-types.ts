import type { TableDescription } from "./description.ts";
import { termName } from "./terms.ts";

/** What the rows of a table are, as far as it matters for records. */
export type RowKind =
  | "occurrence"
  | "event"
  | "taxon"
  | "determination"
  | "media"
  | "survey"
  /** Of any other kind. */
  | "other";

const KINDS: Readonly<Record<string, RowKind>> = {
  Occurrence: "occurrence",
  SimpleDarwinRecord: "occurrence",
  MaterialEntity: "occurrence",
  PreservedSpecimen: "occurrence",
  HumanObservation: "occurrence",
  MachineObservation: "occurrence",
  Taxon: "taxon",
  Identification: "determination",
  Multimedia: "media",
  Image: "media",
  Event: "event",
};

/** Row type of the Humboldt extension, which says what a survey looked for; its last part is Event too. */
const SURVEY = /\/eco\/terms\/(Event|HumboldtExtension)$/;

/**
 * What the rows of a table are, by the row type it states.
 *
 * @example rowKind({ rowType: "http://rs.tdwg.org/dwc/terms/Occurrence", … }) // => "occurrence"
 */
export function rowKind({ rowType }: Pick<TableDescription, "rowType">): RowKind {
  return SURVEY.test(rowType) ? "survey" : (KINDS[termName(rowType)] ?? "other");
}
