import type { Character } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { small } from "../text/words.ts";
import { saysBody } from "./body-says.ts";
import { formName, partName as nameOfPart, rowName, stateName } from "./body-words.ts";

/**
 * A part's id as people say it; T and a number stay.
 *
 * @example partName("hind-leg") // "hind leg"
 */
export function partName(part: string): string {
  return nameOfPart(part, saysBody);
}

/**
 * What settles the identification, from the characters that do; at most four.
 *
 * @param characters of one taxon
 * @param labels shown names of castes
 * @returns empty where none settles it
 * @example settledBy(characters, labels) // "What settles it: **hind leg black** (queen, worker)."
 */
export function settledBy(characters: readonly Character[], labels: ReadonlyMap<string, string>): string {
  const settling = characters.filter(({ reliability }) => reliability === "settles").slice(0, 4);
  if (settling.length === 0) return "";
  const said = settling.map(({ part, state, castes, form, note }) => {
    const worded = (state === "varies" || state === "none" || state === "absent") && note !== "";
    const how = worded ? small((note.split(/[:.]/)[0] ?? note).trim()) : stateName(state, saysBody);
    const key = /^[a-z]+$/i.test(how) ? "body.settling" : "body.settling-note";
    const character = say(key, { part: partName(part), state: how });
    const whom = [
      ...castes.map((caste) => small(labels.get(caste) ?? caste)),
      ...(form === "" ? [] : [formName(form, saysBody)]),
    ];
    return whom.length === 0 ? character : say("body.settling-whom", { character, whom: whom.join(", ") });
  });
  return say("body.settles", { characters: said.join(say("body.between")) });
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
    const whom = [
      ...castes.map((caste) => small(labels.get(caste) ?? caste)),
      form === "" ? "" : formName(form, saysBody),
    ];
    const named = whom.filter(Boolean).join(", ");
    const said =
      state === "varies" && note !== ""
        ? [say("body.varies-note", { note })]
        : [`${stateName(state, saysBody)}.`, note];
    const means = evidence === "specimen" ? say("body.needs-specimen") : "";
    const caution = reliability === "misleads" ? say("body.misleads") : "";
    return [
      {
        part: `${rowName(part, saysBody)}${named === "" ? "" : ` (${named})`}`,
        text: [...said, means, caution].filter(Boolean).join(" "),
      },
    ];
  });
}
