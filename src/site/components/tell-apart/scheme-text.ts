import { escapeHtml } from "../../words/escape-html.ts";
import { hasMarks, markLanguage } from "../../words/fallback.ts";
import { baseLanguage } from "../../words/language.ts";
import { stateName } from "../identify/body-words.ts";
import type { Wording } from "./comparison-words.ts";

/** A text of the scheme as HTML, marked where it is not in the language of the page. */
export function schemeText(text: string, { tag, schemeTag }: Pick<Wording, "tag" | "schemeTag">): string {
  const isForeign = text !== "" && !hasMarks(text) && baseLanguage(tag) !== baseLanguage(schemeTag);
  return escapeHtml(isForeign ? markLanguage(text, schemeTag) : text);
}

/** A state in words as HTML: in the language of the page where the catalogue has it, else as the scheme wrote it. */
export function stateHtml(words: string, wording: Pick<Wording, "says" | "tag" | "schemeTag">): string {
  const key = `body.state.${words}`;
  const name = stateName(words, wording.says);
  const isSchemes = name === words && wording.says(key) === key;
  return isSchemes ? schemeText(words, wording) : escapeHtml(name);
}
