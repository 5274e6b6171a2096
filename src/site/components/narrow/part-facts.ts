import type { NarrowCharacter, NarrowTaxon } from "./narrow-taxa.ts";

/** What the table of characters says of one part, for one caste and form of a taxon. */
export interface PartFact {
  /** States it may be in, "none" where it is absent; empty where it varies and the table does not say between what. */
  readonly states: readonly string[];
  readonly varies: boolean;
  readonly reliability: NarrowCharacter["reliability"];
  readonly evidence: string;
}

/** The state of a part that is not there, whatever word the table uses. */
export const ABSENT = "none";

/**
 * The facts of every part a table describes, for one caste and form. A row for the form stands before one for the
 * usual form, a row for the caste before one for all castes; so a form takes from the usual what is not said of it.
 *
 * @param taxon castes and characters
 * @param caste empty where the taxon has none
 * @param form empty for the usual one
 * @param known states of each part among all taxa: words of a note that are none of these name no state
 * @example partFacts(redTailed, "queen", "", known).get("hind-leg") // { states: ["black"], varies: false, reliability: "settles", evidence: "photograph" }
 */
export function partFacts(
  { characters }: Pick<NarrowTaxon, "characters">,
  caste: string,
  form: string,
  known: ReadonlyMap<string, ReadonlySet<string>>,
): Map<string, PartFact> {
  const facts = new Map<string, PartFact>();
  const holding = characters.filter(({ castes }) => castes.length === 0 || castes.includes(caste));
  for (const [part, rows] of Map.groupBy(holding, (row) => partId(row.part))) {
    const ofForm = rows.filter((row) => row.form === form);
    const nearest = ownFirst(ofForm.length > 0 ? ofForm : rows.filter((row) => row.form === ""));
    const fact = factOf(nearest, known.get(part) ?? new Set());
    if (fact !== undefined) facts.set(part, fact);
  }
  return facts;
}

/**
 * States the rows name of each part, "varies" left out.
 *
 * @example namedStates([{ characters: [{ part: "face", state: "absent", … }] }]).get("face") // Set { "none" }
 */
export function namedStates(taxa: readonly Pick<NarrowTaxon, "characters">[]): Map<string, Set<string>> {
  const states = new Map<string, Set<string>>();
  for (const { part, state } of taxa.flatMap(({ characters }) => characters)) {
    if (state === "varies") continue;
    const own = states.get(partId(part)) ?? new Set();
    states.set(partId(part), own.add(plain(state)));
  }
  return states;
}

function ownFirst(rows: readonly NarrowCharacter[]): readonly NarrowCharacter[] {
  const own = rows.filter(({ castes }) => castes.length > 0);
  return own.length > 0 ? own : rows;
}

function factOf(rows: readonly NarrowCharacter[], known: ReadonlySet<string>): PartFact | undefined {
  const [first] = rows;
  if (first === undefined) return undefined;
  const named = rows.filter(({ state }) => state !== "varies").map(({ state }) => plain(state));
  const varying = rows.find(({ state }) => state === "varies");
  const states = [...new Set([...named, ...(varying === undefined ? [] : statesInNote(varying.note, known))])];
  return {
    states: varying !== undefined && states.length < 2 ? [] : states,
    varies: varying !== undefined || states.length > 1,
    reliability: first.reliability,
    evidence: first.evidence,
  };
}

/** A note of a part that varies begins with its states: "black or lemon: …". */
function statesInNote(note: string, known: ReadonlySet<string>): string[] {
  const beginning = note.split(/[:.]/)[0]?.toLowerCase() ?? "";
  return (beginning.match(/\p{L}+/gu) ?? []).map(plain).filter((word) => known.has(word));
}

function plain(state: string): string {
  return state === "absent" ? ABSENT : state;
}

/** A numbered segment has a capital letter, however the table writes it. */
function partId(part: string): string {
  return /^[a-z]\d+$/.test(part) ? part.toUpperCase() : part;
}
