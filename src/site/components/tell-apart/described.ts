import type { Character } from "../../../publishing/contracts.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { type PartState, partState } from "../identify/part-state.ts";

type Described = Pick<IdentifyTaxon, "characters">;

/** What is said of one part of one caste: its state, and the characters that say it. */
export interface Told {
  readonly state: PartState;
  /** Rows of the usual form, or of the form asked for. */
  readonly rows: readonly Character[];
  /** Rows of the same part that lead astray, of any age or form. */
  readonly misleading: readonly Character[];
}

/**
 * What is said of a part of a caste. A row for the caste stands before one for all; a form takes from the usual one
 * what is not said of it.
 *
 * @param caste id, or empty where castes are not told apart
 * @param form age or colour form; empty for the usual one
 * @returns undefined where nothing is said
 * @example told(redTailed, "hind-leg", "queen", "")?.state.words // "black"
 */
export function told({ characters }: Described, part: string, caste: string, form: string): Told | undefined {
  const here = characters.filter(
    (row) => row.part.toLowerCase() === part.toLowerCase() && (row.castes.length === 0 || row.castes.includes(caste)),
  );
  const ofForm = here.filter((row) => row.form === form);
  const usual = ofForm.length > 0 ? ofForm : here.filter((row) => row.form === "");
  const own = usual.filter(({ castes }) => castes.length > 0);
  const rows = own.length > 0 ? own : usual;
  const state = partState(rows);
  if (state === undefined) return undefined;
  return { state, rows, misleading: here.filter(({ reliability }) => reliability === "misleads") };
}

/**
 * What a state is made of, to compare it by: colours where it varies between some, else its words.
 *
 * @returns none where it varies and nobody says how
 * @example valuesOf({ words: "buff or white", piles: ["buff", "white"], … }) // ["buff", "white"]
 */
export function valuesOf({ words, piles }: PartState): readonly string[] {
  if (piles.length > 1) return piles;
  return words === "varies" ? [] : [words];
}

/** How two states stand to each other; what varies over the other's value overlaps it. */
export type Relation = "same" | "overlap" | "differ";

/**
 * How two lists of values stand to each other.
 *
 * @example relation(["buff", "white"], ["white"]) // "overlap"
 * @example relation(["red"], ["orange"]) // "differ"
 */
export function relation(one: readonly string[], other: readonly string[]): Relation {
  if (one.length === other.length && one.length > 0 && one.every((value) => other.includes(value))) return "same";
  if (one.length === 0 || other.length === 0 || one.some((value) => other.includes(value))) return "overlap";
  return "differ";
}
