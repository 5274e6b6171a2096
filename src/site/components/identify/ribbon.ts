import type { Character } from "../../../publishing/contracts.ts";
import { capital, small } from "../text/words.ts";
import type { PlanRow } from "./body-plan.ts";

/** Colours of pile and wing that are drawn; any other state is shown as its word alone. */
export const PILES = [
  "black",
  "yellow",
  "lemon",
  "white",
  "red",
  "orange",
  "buff",
  "ginger",
  "brown",
  "grey",
  "smoky",
  "clear",
] as const;
export type Pile = (typeof PILES)[number];

/** State of one part of the body: one colour, two where it varies, none where the part is absent, else a word. */
export interface PartState {
  readonly words: string;
  readonly piles: readonly Pile[];
  readonly absent: boolean;
}

/** One column of a ribbon: a caste, or castes that look alike, in one form. States by row id. */
export interface RibbonColumn {
  readonly label: string;
  readonly castes: readonly string[];
  readonly states: ReadonlyMap<string, PartState>;
}

interface Described {
  readonly castes: readonly string[];
  readonly characters: readonly Character[];
}

function isPile(word: string): word is Pile {
  return (PILES as readonly string[]).includes(word);
}

/**
 * The state a part is in, from the rows of `characters.csv` that describe it.
 *
 * @param rows of one part, one caste and one form, in their order
 * @returns undefined without rows
 * @example partState([{ state: "varies", note: "yellow or black: narrow.", … }]) // { words: "yellow or black", piles: ["yellow", "black"], absent: false }
 */
export function partState(rows: readonly Pick<Character, "state" | "note">[]): PartState | undefined {
  const [first] = rows;
  if (first === undefined) return undefined;
  const named = rows.map(({ state }) => state).filter((state) => state !== "varies");
  const words =
    named.length > 0 ? named : ((first.note.split(/[:.]/)[0] ?? "").match(/\p{L}+/gu)?.filter(isPile) ?? []);
  const piles = [...new Set(words.filter(isPile))].slice(0, 2);
  if (named.length === 1 && (named[0] === "absent" || named[0] === "none"))
    return { words: "none", piles: [], absent: true };
  if (rows.some(({ state }) => state === "varies") || named.length > 1) {
    return {
      words: piles.length > 1 ? piles.join(" or ") : "varies",
      piles: piles.length > 1 ? piles : [],
      absent: false,
    };
  }
  return { words: named[0] ?? first.state, piles, absent: false };
}

/**
 * The columns of a taxon's ribbon: castes that look alike share one; a colour form has its own, and takes
 * from the usual form what is not said of it. Characters that mislead are no part of it.
 *
 * @param taxon its castes in their order, and its characters
 * @param rows of the body plan
 * @param labels shown names of castes
 * @returns at least one column, with empty states where nothing is described
 * @example ribbonColumns(redTailed, plan.rows, labels).map(({ label }) => label) // ["Queen, worker", "Male"]
 */
export function ribbonColumns(
  { castes, characters }: Described,
  rows: readonly PlanRow[],
  labels: ReadonlyMap<string, string>,
): RibbonColumn[] {
  const telling = characters.filter(({ reliability }) => reliability !== "misleads");
  const forms = ["", ...new Set(telling.map(({ form }) => form).filter(Boolean))];
  return forms.flatMap((form) => mergeAlike(castes, (caste) => statesOf(telling, rows, caste, form), labels, form));
}

function statesOf(
  characters: readonly Character[],
  rows: readonly PlanRow[],
  caste: string,
  form: string,
): Map<string, PartState> {
  const states = new Map<string, PartState>();
  for (const { id } of rows) {
    const here = characters.filter(
      (character) => character.part.toLowerCase() === id.toLowerCase() && holdsFor(character, caste),
    );
    const ofForm = here.filter((character) => character.form === form);
    const state = partState(nearest(ofForm.length > 0 ? ofForm : here.filter((character) => character.form === "")));
    if (state !== undefined) states.set(id, state);
  }
  return states;
}

function holdsFor({ castes }: Character, caste: string): boolean {
  return castes.length === 0 || caste === "" || castes.includes(caste);
}

/** A row for the caste itself stands before a row for all. */
function nearest(rows: readonly Character[]): readonly Character[] {
  const own = rows.filter(({ castes }) => castes.length > 0);
  return own.length > 0 ? own : rows;
}

function mergeAlike(
  castes: readonly string[],
  states: (caste: string) => Map<string, PartState>,
  labels: ReadonlyMap<string, string>,
  form: string,
): RibbonColumn[] {
  const groups: { castes: string[]; states: Map<string, PartState>; key: string }[] = [];
  for (const caste of castes.length > 0 ? castes : [""]) {
    const own = states(caste);
    const key = JSON.stringify([...own]);
    const same = groups.find((group) => group.key === key);
    if (same === undefined) groups.push({ castes: caste === "" ? [] : [caste], states: own, key });
    else same.castes.push(caste);
  }
  return groups.map((group) => ({
    label: columnLabel(group.castes, castes, labels, form),
    castes: group.castes,
    states: group.states,
  }));
}

function columnLabel(
  castes: readonly string[],
  all: readonly string[],
  labels: ReadonlyMap<string, string>,
  form: string,
): string {
  const suffix = form === "" ? "" : `, ${form} form`;
  if (castes.length === all.length)
    return form === ""
      ? all.length > 1
        ? "All castes"
        : castes.map((caste) => labels.get(caste) ?? caste).join("") || "Adult"
      : `${capital(form)} form`;
  return capital(castes.map((caste) => small(labels.get(caste) ?? caste)).join(", ")) + suffix;
}

/**
 * The rows of a plan that some column describes.
 *
 * @example describedRows(plan.rows, columns).length // 12
 */
export function describedRows(rows: readonly PlanRow[], columns: readonly RibbonColumn[]): PlanRow[] {
  return rows.filter(({ id }) => columns.some(({ states }) => states.has(id)));
}

/** True where both columns describe the part and differ. @example differs(a, b, "face") // true */
export function differs(first: RibbonColumn, other: RibbonColumn, part: string): boolean {
  const [one, two] = [first.states.get(part), other.states.get(part)];
  return one !== undefined && two !== undefined && one.words !== two.words;
}

/**
 * The body in words, neighbouring rows of one colour taken together.
 *
 * @example bodyInWords(column, rows) // "Face to T3 black; T4 to T6 red; hind leg black; wings clear."
 */
export function bodyInWords({ states }: RibbonColumn, rows: readonly PlanRow[]): string {
  const runs: { first: string; last: string; words: string }[] = [];
  for (const { id, label } of rows) {
    const words = states.get(id)?.words;
    const run = runs.at(-1);
    if (words === undefined) continue;
    if (run?.words === words) run.last = label;
    else runs.push({ first: label, last: label, words });
  }
  const said = runs.map(
    ({ first, last, words }) => `${first === last ? small(first) : `${small(first)} to ${small(last)}`} ${words}`,
  );
  return said.length === 0 ? "" : `${capital(said.join("; "))}.`;
}
