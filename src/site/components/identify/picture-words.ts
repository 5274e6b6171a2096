import type { Media } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { small } from "../text/words.ts";
import { saysBody } from "./body-says.ts";
import { formName, partName } from "./body-words.ts";

/**
 * Whom and what a picture shows, in a sentence.
 *
 * @param labels shown names of castes
 * @returns empty where nothing is said of it
 * @example shownIn({ castes: ["female"], form: "", parts: ["hind-leg"] }, labels) // "Shows: female; hind leg."
 */
export function shownIn(
  { castes, form, parts }: Pick<Media, "castes" | "form" | "parts">,
  labels: ReadonlyMap<string, string>,
): string {
  const whom = [
    ...castes.map((caste) => small(labels.get(caste) ?? caste)),
    ...(form === "" ? [] : [formName(form, saysBody)]),
  ];
  const said = [whom.join(", "), parts.map((part) => partName(part, saysBody)).join(", ")].filter(Boolean);
  return said.length === 0 ? "" : say("media.shows", { what: said.join(say("body.between")) });
}
