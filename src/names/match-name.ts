import type { ChecklistTaxon } from "./checklist.ts";
import { authorshipKey, type NameEntry, type NameIndex } from "./name-index.ts";
import { cleanName, vernacularKey } from "./name-text.ts";
import { nearestNames } from "./nearest-names.ts";
import { nameKey, type ReadName, readName } from "./read-name.ts";
import { saysMore } from "./says-more.ts";

/** Something to report of a name that was matched. */
export interface NameNote {
  readonly code:
    | "genus_abbreviated"
    | "genus_left_out"
    | "infraspecific_set_aside"
    | "strict_sense"
    | "authorship_differs";
  readonly found: string;
}

/** The taxon a name stands for. "aggregate" when that taxon has members or is one by rank, whichever name was used. */
export interface NameMatch {
  readonly taxonId: string;
  readonly matchedAs: "accepted" | "synonym" | "vernacular" | "aggregate";
  readonly notes: readonly NameNote[];
}

/** Why a name stands for no taxon of the checklist, in words for a finding, and names that are near. */
export interface NameRefusal {
  readonly reason: "empty" | "qualified" | "ambiguous" | "hybrid" | "not_in_checklist";
  readonly refused: string;
  readonly wayOut: string;
  /** Names of the checklist to choose from: taxa above for a qualified name, else the nearest by spelling, nearest first. */
  readonly nearest: readonly string[];
}

/** Matches the text of scientificName (or of a vernacular name), with identificationQualifier where there is one. */
export type MatchName = (name: string, identificationQualifier?: string) => NameMatch | NameRefusal;

/** What matching needs of a checklist. */
export interface MatchSource {
  readonly taxa: ReadonlyMap<string, ChecklistTaxon>;
  readonly names: NameIndex;
  ancestors(taxonId: string): readonly string[];
  descendants(taxonId: string): readonly string[];
  isAggregate(taxonId: string): boolean;
}

/** Characters of no name, with authors and qualifier. */
const LONGEST = 400;

/** True when an answer is a refusal and not a match. */
export function isNameRefusal(answer: NameMatch | NameRefusal): answer is NameRefusal {
  return "refused" in answer;
}

/**
 * Makes the matcher of a checklist. A name is matched whole or not at all: a genus may be abbreviated when one name of
 * the checklist fits, a subspecies that is not listed counts for its species, everything else that is not in the
 * checklist is refused with near names. A qualified name (cf., aff., nr, ?) never counts as the species.
 *
 * @example match("Bombus cf. pratorum") // { reason: "qualified", refused: 'name "Bombus cf. pratorum" is qualified (cf.)', wayOut: "…", nearest: [] }
 */
export function nameMatcher(source: MatchSource): MatchName {
  return (text, identificationQualifier = "") => {
    const given = cleanName(text);
    if (given.length + identificationQualifier.length > LONGEST) return refuseLong(given);
    if (given === "") return refusal("empty", "no name", "give scientificName or a vernacular name");
    const whole = identificationQualifier === "" ? wholeVernacular(given, source.names) : undefined;
    if (whole !== undefined) return { taxonId: whole.taxonId, matchedAs: matchedAs(whole, source), notes: [] };
    const { name, found } = findName(given, identificationQualifier, source);
    if (name.qualifier !== undefined || name.unreadQualifier !== "")
      return refuseQualified(given, name, found.entries, source);
    const entries = byAuthorship(found.entries, name);
    const [entry, second] = entries;
    if (entry === undefined) return refuseUnmatched(given, name, source);
    const more = saysMore(name, found.notes, source.names);
    if (more !== undefined) return refuseMore(given, more);
    if (second !== undefined) {
      const names = entries.map((one) => source.taxa.get(one.taxonId)?.scientificName ?? one.taxonId);
      return refusal(
        "ambiguous",
        `name "${given}" stands for ${names.join(" and ")}`,
        "write the name in full, or leave it with one taxon of the checklist",
        names,
      );
    }
    return {
      taxonId: entry.taxonId,
      matchedAs: matchedAs(entry, source),
      notes: [...found.notes, ...notesOf(name, entry)],
    };
  };
}

function matchedAs({ taxonId, kind }: NameEntry, source: MatchSource): NameMatch["matchedAs"] {
  return source.isAggregate(taxonId) ? "aggregate" : kind;
}

/** A vernacular name just as the checklist has it: it may end with "group", which is no part of a scientific name. */
function wholeVernacular(given: string, { vernacular }: NameIndex): NameEntry | undefined {
  const entries = vernacular.get(vernacularKey(given)) ?? [];
  return entries.find(({ name }) => name.toLowerCase() === given.toLowerCase());
}

/** A name as written, unless its second word is an epithet of the checklist but for a capital: "Carabus Violaceus". */
function findName(given: string, qualifier: string, source: MatchSource): { name: ReadName; found: Found } {
  const plain = given.replace(
    /^(\S+ )(\p{Lu})(?=\p{Ll})/u,
    (_, genus: string, capital: string) => genus + capital.toLowerCase(),
  );
  if (plain !== given) {
    const name = readName(plain, qualifier);
    const found = findEntries(name, source);
    if (found.entries.length > 0) return { name, found };
  }
  const name = readName(given, qualifier);
  return { name, found: findEntries(name, source) };
}

interface Found {
  readonly entries: readonly NameEntry[];
  readonly notes: readonly NameNote[];
}

function findEntries(name: ReadName, source: MatchSource): Found {
  const { scientific, vernacular } = source.names;
  const entries = scientific.get(nameKey(name)) ?? vernacular.get(vernacularKey(name.text));
  if (entries !== undefined) return { entries, notes: [] };
  if (name.genusAbbreviated || (name.genus === "" && name.epithets.length > 1))
    return completeGenus(name, source.names);
  if (name.infraspecific === "" || name.isHybrid) return { entries: [], notes: [] };
  const species = findEntries({ ...name, infraspecific: "" }, source);
  return { entries: species.entries, notes: [...species.notes, setAside(name)] };
}

/** "B. pratorum", and pairs without a genus: the names of the checklist that end so. */
function completeGenus(name: ReadName, names: NameIndex): Found {
  const abbreviation = name.genus.toLowerCase();
  const ending = nameKey({ ...name, genus: "" });
  const fits = [...names.scientific].filter(([key]) => {
    const space = key.indexOf(" ");
    return space > 0 && key.startsWith(abbreviation) && key.slice(space + 1) === ending;
  });
  const entries = uniqueTaxa(fits.flatMap(([, list]) => list));
  const note: NameNote = {
    code: name.genus === "" ? "genus_left_out" : "genus_abbreviated",
    found: `"${name.text}" is read as ${entries[0]?.name}`,
  };
  if (entries.length > 0 || name.infraspecific === "" || ending === "") return { entries, notes: [note] };
  const species = completeGenus({ ...name, infraspecific: "" }, names);
  return { entries: species.entries, notes: [...species.notes, setAside(name)] };
}

function uniqueTaxa(entries: readonly NameEntry[]): NameEntry[] {
  const seen = new Map<string, NameEntry>();
  for (const entry of entries) if (!seen.has(entry.taxonId)) seen.set(entry.taxonId, entry);
  return [...seen.values()];
}

/** Of several taxa with one name, those whose author is the one written. */
function byAuthorship(entries: readonly NameEntry[], name: ReadName): readonly NameEntry[] {
  if (entries.length < 2 || name.authorship === "") return entries;
  const same = entries.filter((entry) => entry.authorship === authorshipKey(name.authorship));
  return same.length > 0 ? same : entries;
}

function notesOf(name: ReadName, entry: NameEntry): NameNote[] {
  const notes: NameNote[] = [];
  if (name.isStrict)
    notes.push({
      code: "strict_sense",
      found: `"${name.text}" is stated in the strict sense, and matched to ${entry.name}`,
    });
  // Authors are abbreviated in many ways; the year of the name is not, and another year means another name.
  const [written, listed] = [name.authorship, entry.authorship].map((text) => /\d{4}/.exec(text)?.[0]);
  if (written !== undefined && listed !== undefined && written !== listed) {
    notes.push({
      code: "authorship_differs",
      found: `"${name.text}", where ${entry.name} of the checklist is of ${listed}`,
    });
  }
  return notes;
}

function setAside(name: ReadName): NameNote {
  return {
    code: "infraspecific_set_aside",
    found: `"${name.infraspecific}" of "${name.text}" is not in the checklist`,
  };
}

function refuseQualified(
  given: string,
  name: ReadName,
  entries: readonly NameEntry[],
  source: MatchSource,
): NameRefusal {
  const above = uniqueTaxa(entries).flatMap(({ taxonId }) => source.ancestors(taxonId));
  const nearest = [...new Set(above)].map((id) => source.taxa.get(id)?.scientificName ?? id);
  if (name.qualifier === undefined) {
    const wayOut =
      "write cf., aff., nr, ?, agg., s.l. or s.s. in identificationQualifier, or leave it empty when there is no doubt";
    return refusal(
      "qualified",
      `name "${given}" has a qualifier "${name.unreadQualifier}" that is not read`,
      wayOut,
      nearest,
    );
  }
  const wayOut =
    nearest[0] === undefined
      ? "settle the identification, or leave it out: the checklist has no aggregate above it"
      : `settle the identification, or record it as ${nearest[0]}`;
  return refusal("qualified", `name "${given}" is qualified (${name.qualifier})`, wayOut, nearest);
}

function refuseUnmatched(given: string, name: ReadName, source: MatchSource): NameRefusal {
  const nearest = nearestNames(name, source.names);
  if (name.isHybrid)
    return refusal(
      "hybrid",
      `name "${given}" is of a hybrid`,
      "add the hybrid to the checklist, or leave it out",
      nearest,
    );
  if (name.isAggregate) {
    const [strict] = findEntries({ ...name, isAggregate: false }, source).entries;
    const above =
      strict === undefined
        ? []
        : source.ancestors(strict.taxonId).map((id) => source.taxa.get(id)?.scientificName ?? id);
    const wayOut =
      above[0] === undefined
        ? "add the aggregate to the checklist"
        : `add it as a synonym of ${above[0]}, or add the aggregate to the checklist`;
    if (strict !== undefined)
      return refusal(
        "not_in_checklist",
        `name "${given}" is of an aggregate that is not in the checklist`,
        wayOut,
        above,
      );
  }
  const open = name.epithets.length > 1 ? holdersOf(name, source) : [];
  if (open[0] !== undefined) {
    const wayOut = `record it as ${open[0]}, or add the pair as a synonym of it`;
    return refusal("not_in_checklist", `name "${given}" leaves open which of the taxa it is`, wayOut, open);
  }
  return refusal("not_in_checklist", `name "${given}" is not in the checklist`, wayOutFor(nearest), nearest);
}

/** Aggregates above every taxon of an open pair. */
function holdersOf(name: ReadName, source: MatchSource): string[] {
  const members = name.epithets.map(
    (epithet) => findEntries({ ...name, epithets: [epithet], isAggregate: false }, source).entries[0]?.taxonId,
  );
  if (members.includes(undefined)) return [];
  const [first = [], ...others] = (members as string[]).map((id) => [...source.ancestors(id), id]);
  const shared = first.filter((id) => others.every((above) => above.includes(id)));
  return shared.map((id) => source.taxa.get(id)?.scientificName ?? id);
}

function wayOutFor(nearest: readonly string[]): string {
  if (nearest.length === 0) return "correct the name, or add it to the checklist as a taxon or a synonym";
  return `if it is ${nearest.join(" or ")}, correct the name or add it as a synonym`;
}

function refuseLong(given: string): NameRefusal {
  const found = `name "${given.slice(0, 60)}…" is longer than any name`;
  return refusal("not_in_checklist", found, "look whether it belongs in another column");
}

function refuseMore(given: string, more: string): NameRefusal {
  const wayOut = "write one name alone; give each taxon a record of its own, or record the aggregate that holds both";
  return refusal("ambiguous", `name "${given}" goes on with "${more}"`, wayOut);
}

function refusal(
  reason: NameRefusal["reason"],
  refused: string,
  wayOut: string,
  nearest: readonly string[] = [],
): NameRefusal {
  return { reason, refused, wayOut, nearest };
}
