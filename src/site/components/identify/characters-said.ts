import type { Character } from "../../../publishing/contracts.ts";
import { capital, listed, plural, small } from "../text/words.ts";

/**
 * A part's id as people say it; T and a number stay.
 *
 * @example partName("hind-leg") // "hind leg"
 */
export function partName(part: string): string {
  return part.replaceAll("-", " ");
}

/**
 * What settles the identification, from the characters that do; at most four.
 *
 * @param characters of one taxon
 * @param labels shown names of castes
 * @returns empty where none settles it
 * @example settledBy(characters, labels) // "What settles it: **hind leg black** in queens and workers."
 */
export function settledBy(characters: readonly Character[], labels: ReadonlyMap<string, string>): string {
  const settling = characters.filter(({ reliability }) => reliability === "settles").slice(0, 4);
  if (settling.length === 0) return "";
  const said = settling.map(({ part, state, castes, form, note }) => {
    const whom =
      castes.length === 0 ? "" : ` in ${listed(castes.map((caste) => plural(small(labels.get(caste) ?? caste))))}`;
    const worded = (state === "varies" || state === "none" || state === "absent") && note !== "";
    const how = worded ? small((note.split(/[:.]/)[0] ?? note).trim()) : state;
    return `**${partName(part)}${/^[a-z]+$/i.test(how) ? "" : ":"} ${how}**${form === "" ? "" : ` (${form} form)`}${whom}`;
  });
  return `What settles it: ${said.join("; ")}.`;
}

/** One line of notes on a part: the part with its castes, and what is said of it. */
export interface PartNote {
  readonly part: string;
  readonly text: string;
}

/**
 * What a drawing cannot show: parts outside the body plan, notes, what varies and what misleads.
 *
 * @param drawn ids of the parts the ribbon shows
 * @returns in the order of the characters; sizes are left out, they have bars of their own
 * @example partNotes(characters, new Set(["T4"]), labels)[0] // { part: "T4", text: "red. The red begins with a clean edge." }
 */
export function partNotes(
  characters: readonly Character[],
  drawn: ReadonlySet<string>,
  labels: ReadonlyMap<string, string>,
): PartNote[] {
  return characters.flatMap(({ part, state, castes, form, note, reliability, evidence }) => {
    if (part === "size" || (drawn.has(part) && note === "" && reliability !== "misleads")) return [];
    const whom = [...castes.map((caste) => small(labels.get(caste) ?? caste)), form].filter(Boolean).join(", ");
    const means = evidence === "specimen" ? " Needs a specimen." : "";
    const caution = reliability === "misleads" ? " Misleads." : "";
    return [
      {
        part: `${capital(partName(part))}${whom === "" ? "" : ` (${whom})`}`,
        text: `${state === "varies" ? (note === "" ? "varies." : `varies: ${note}`) : `${state}.${note === "" ? "" : ` ${note}`}`}${means}${caution}`,
      },
    ];
  });
}
