import type { ChecklistTaxon } from "./checklist.ts";
import { cleanName, vernacularKey } from "./name-text.ts";
import { nameKey, readName } from "./read-name.ts";

/** One name of the checklist, as it stands there. */
export interface NameEntry {
  readonly taxonId: string;
  readonly kind: "accepted" | "synonym" | "vernacular";
  readonly name: string;
  /** Lower case without spaces, for telling names apart that differ in their author only. */
  readonly authorship: string;
}

/** One name that stands for two taxa. */
export interface NameProblem {
  readonly code: "name_of_two_taxa";
  readonly taxonIds: readonly string[];
  readonly found: string;
  readonly wayOut: string;
}

/** The names of a checklist by key: scientific names by `nameKey`, vernacular names by `vernacularKey`. */
export interface NameIndex {
  readonly scientific: ReadonlyMap<string, readonly NameEntry[]>;
  readonly vernacular: ReadonlyMap<string, readonly NameEntry[]>;
  readonly problems: readonly NameProblem[];
}

/**
 * Lists every name under its key. A name of two taxa is a problem, unless it is a scientific name and each of the
 * two has an authorship that the other has not.
 *
 * @example indexNames([pratorum]).scientific.get("bombus pratorum") // [{ taxonId: "pratorum", kind: "accepted", name: "Bombus pratorum", authorship: "(linnaeus,1761)" }]
 */
export function indexNames(taxa: Iterable<ChecklistTaxon>): NameIndex {
  const scientific = new Map<string, NameEntry[]>();
  const vernacular = new Map<string, NameEntry[]>();
  for (const taxon of taxa) {
    addScientific(scientific, taxon.taxonId, "accepted", taxon.scientificName, taxon.authorship);
    for (const synonym of taxon.synonyms) addScientific(scientific, taxon.taxonId, "synonym", synonym, "");
    for (const name of Object.values(taxon.vernacular).flat()) {
      add(vernacular, vernacularKey(name), {
        taxonId: taxon.taxonId,
        kind: "vernacular",
        name: cleanName(name),
        authorship: "",
      });
    }
  }
  return { scientific, vernacular, problems: [...findShared(scientific), ...findShared(vernacular)] };
}

/**
 * An authorship as it is compared: lower case, without spaces and outer brackets' difference.
 *
 * @example authorshipKey("(Linnaeus, 1758)") // "linnaeus,1758"
 */
export function authorshipKey(authorship: string): string {
  return cleanName(authorship)
    .toLowerCase()
    .replaceAll(/[\s()[\]]/g, "");
}

function addScientific(
  map: Map<string, NameEntry[]>,
  taxonId: string,
  kind: NameEntry["kind"],
  text: string,
  authorship: string,
): void {
  const read = readName(text);
  const name = cleanName(read.authorship === "" ? text : text.replace(read.authorship, ""));
  add(map, nameKey(read), { taxonId, kind, name, authorship: authorshipKey(authorship || read.authorship) });
}

/** The same name twice for one taxon (as accepted name and synonym, or in two languages) stays once, as first met. */
function add(map: Map<string, NameEntry[]>, key: string, entry: NameEntry): void {
  if (key === "") return;
  const entries = map.get(key);
  if (entries === undefined) map.set(key, [entry]);
  else if (!entries.some(({ taxonId }) => taxonId === entry.taxonId)) entries.push(entry);
}

function findShared(map: ReadonlyMap<string, readonly NameEntry[]>): NameProblem[] {
  const problems: NameProblem[] = [];
  for (const entries of map.values()) {
    const authors = new Set(entries.map(({ authorship }) => authorship));
    if (entries.length < 2 || (authors.size === entries.length && !authors.has(""))) continue;
    problems.push({
      code: "name_of_two_taxa",
      taxonIds: entries.map(({ taxonId }) => taxonId),
      found: `"${entries[0]?.name}" names ${entries.map(({ taxonId, kind }) => `${taxonId} (${kind})`).join(" and ")}`,
      wayOut: "leave the name with one taxon, or make it a name of an aggregate above both",
    });
  }
  return problems;
}
