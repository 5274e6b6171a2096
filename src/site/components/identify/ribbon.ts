import type { Character } from "../../../publishing/contracts.ts";
import type { Say } from "../../words/client.ts";
import { small } from "../text/words.ts";
import type { PlanRow } from "./body-plan.ts";
import { formName, isAge, partName, stateName } from "./body-words.ts";
import { type PartState, partState } from "./part-state.ts";

export { type PartState, PILES, type Pile, partState } from "./part-state.ts";

/** One column of a ribbon: a caste, or castes that look alike, in one form. States by row id. */
export interface RibbonColumn {
  readonly label: string;
  readonly castes: readonly string[];
  /** Age or colour form; empty for the usual one. */
  readonly form: string;
  readonly states: ReadonlyMap<string, PartState>;
}

interface Described {
  readonly castes: readonly string[];
  readonly characters: readonly Character[];
}

/**
 * The columns of a taxon's ribbon, the usual form first: castes that look alike share one; a colour form has its own,
 * then an age, and each takes from the usual form what is not said of it. What misleads is no part of the usual form,
 * nor of a colour form; of an age it is, since that is how a worn one looks.
 *
 * @param taxon its castes in their order, and its characters
 * @param rows of the body plan
 * @param labels shown names of castes
 * @param says words of the topic `body.`: `saysBody` in the build, `pageWords()` in a script
 * @returns at least one column, with empty states where nothing is described
 * @example ribbonColumns(redTailed, plan.rows, labels, saysBody).map(({ label }) => label) // ["Queen, worker", "Male", "Queen, worker, worn"]
 */
export function ribbonColumns(
  { castes, characters }: Described,
  rows: readonly PlanRow[],
  labels: ReadonlyMap<string, string>,
  says: Say,
): RibbonColumn[] {
  const drawn = characters.filter(({ part }) => rows.some(({ id }) => id.toLowerCase() === part.toLowerCase()));
  const telling = drawn.filter(({ reliability, form }) => reliability !== "misleads" || isAge(form));
  const forms = [...new Set(telling.map(({ form }) => form).filter(Boolean))].sort(
    (one, other) => Number(isAge(one)) - Number(isAge(other)),
  );
  const own = (form: string) =>
    castes.filter((caste) => telling.some((row) => row.form === form && holdsFor(row, caste)));
  const columnsOf = (form: string, of: readonly string[]) =>
    mergeAlike(of.length > 0 ? of : [""], (caste) => statesOf(telling, rows, caste, form)).map((group) => ({
      label: columnLabel(group.castes, castes, form, labels, says),
      ...group,
      form,
    }));
  return [
    ...columnsOf("", castes),
    // An age shows how the colours go: one column does, that of the first castes it is described for.
    ...forms.flatMap((form) => columnsOf(form, own(form)).slice(0, isAge(form) ? 1 : undefined)),
  ];
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

function mergeAlike(castes: readonly string[], states: (caste: string) => Map<string, PartState>) {
  const groups: { castes: string[]; states: Map<string, PartState>; key: string }[] = [];
  for (const caste of castes) {
    const own = states(caste);
    const key = JSON.stringify([...own]);
    const same = groups.find((group) => group.key === key);
    if (same === undefined) groups.push({ castes: caste === "" ? [] : [caste], states: own, key });
    else same.castes.push(caste);
  }
  return groups.map((group) => ({ castes: group.castes, states: group.states }));
}

function columnLabel(
  castes: readonly string[],
  all: readonly string[],
  form: string,
  labels: ReadonlyMap<string, string>,
  says: Say,
): string {
  const names = castes.map((caste) => small(labels.get(caste) ?? caste));
  const whole = castes.length === all.length;
  const label = [
    ...(whole && (form !== "" || all.length > 1) ? [] : names),
    ...(form === "" ? [] : [formName(form, says)]),
  ];
  if (label.length === 0) return says(all.length > 1 ? "body.all-castes" : "body.adult");
  return label.join(", ").replace(/\p{L}/u, (letter) => letter.toLocaleUpperCase());
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
 * @example bodyInWords(column, rows, saysBody) // "Face to T3 black; T4 to T6 red; hind leg black; wings clear."
 */
export function bodyInWords({ states }: RibbonColumn, rows: readonly PlanRow[], says: Say): string {
  const runs: { first: string; last: string; words: string }[] = [];
  for (const { id } of rows) {
    const words = states.get(id)?.words;
    const run = runs.at(-1);
    if (words === undefined) continue;
    if (run?.words === words) run.last = id;
    else runs.push({ first: id, last: id, words });
  }
  const said = runs.map(({ first, last, words }) => {
    const [from, to] = [partName(first, says), partName(last, says)];
    const state = stateName(words, says);
    return first === last ? says("body.part-is", { part: from, state }) : says("body.parts-are", { from, to, state });
  });
  if (said.length === 0) return "";
  return says("body.sentence", { parts: said.join(says("body.between")) }).replace(/\p{L}/u, (letter) =>
    letter.toLocaleUpperCase(),
  );
}
