import type { RecordField } from "../../scheme/settings.ts";
import { fieldOf } from "../column-mapping.ts";

/** Where the terms of our fields are defined: Darwin Core, of today and before, Dublin Core, and the Humboldt extension. */
const NAMESPACES = new Set([
  "http://rs.tdwg.org/dwc/terms/",
  "http://rs.tdwg.org/dwc/dwcore/",
  "http://rs.tdwg.org/dwc/curatorial/",
  "http://purl.org/dc/terms/",
  "http://purl.org/dc/elements/1.1/",
  "http://rs.tdwg.org/eco/terms/",
  "",
  "dwc:",
  "dcterms:",
  "dc:",
  "eco:",
]);

/** Fields no standard has a term for; they are known by name, wherever an archive defines them. */
const OWN: readonly RecordField[] = ["gridReference", "easting", "northing", "viceCounty", "evidence", "partSeen"];

/**
 * The field a term stands for. A term of another vocabulary is none, though its name be the same.
 *
 * @example fieldOfTerm("http://rs.tdwg.org/dwc/terms/eventDate") // => "eventDate"
 * @example fieldOfTerm("http://example.org/terms/eventDate") // => undefined
 */
export function fieldOfTerm(term: string): RecordField | undefined {
  const name = termName(term);
  const namespace = term
    .trim()
    .slice(0, term.trim().length - name.length)
    .replace(/^https:/, "http:");
  return NAMESPACES.has(namespace) ? fieldOf(name) : OWN.find((field) => field === name);
}

/**
 * A term without its namespace or prefix.
 *
 * @example termName("http://rs.tdwg.org/dwc/terms/parentEventID") // => "parentEventID"
 */
export function termName(term: string): string {
  return term.trim().replace(/^.*[:/#]/, "");
}
