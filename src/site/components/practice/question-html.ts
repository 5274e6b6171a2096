import { escapeHtml } from "../../words/escape-html.ts";
import { withoutMarks } from "../../words/fallback.ts";
import { partName } from "../identify/body-words.ts";
import { wholeBody } from "../tell-apart/body-html.ts";
import { drawnParts } from "../tell-apart/comparison.ts";
import type { Wording } from "../tell-apart/comparison-words.ts";
import { lowered } from "../tell-apart/html.ts";
import { stateHtml } from "../tell-apart/scheme-text.ts";
import { partsOf, type Question, shownOf } from "./questions.ts";

/** The drawn animal of a question; who does not see it hears its parts. */
export function questionFigure({ taxon, caste }: Question, wording: Wording): string {
  const { says } = wording;
  const parts = [...drawnParts([taxon])].flatMap((part) => {
    const said = shownOf(taxon, part, caste);
    return said === undefined ? [] : [fact(part, said.state.words, wording)];
  });
  const text = withoutMarks(says("practice.drawing", { parts: parts.join(says("body.between")) })).replace(
    /<[^>]*>/g,
    "",
  );
  return wholeBody(taxon, caste, "", text);
}

/**
 * What is shown beside the drawing, as lines of HTML: castes, length, and what the drawing does not hold.
 *
 * @param within from `partsWithin`: parts that may be said
 */
export function questionFacts(
  { taxon, caste, castes }: Question,
  within: ReadonlySet<string>,
  wording: Wording,
): string[] {
  const { says, labels } = wording;
  const drawn = drawnParts([taxon]);
  const who = castes.map((id) => lowered(labels.get(id) ?? id));
  const size = taxon.sizes.find((each) => each.caste === caste || each.caste === "");
  const facts = partsOf(taxon).flatMap((part) => {
    const said = drawn.has(part) || !within.has(part) ? undefined : shownOf(taxon, part, caste);
    return said === undefined || said.rows.every(({ reliability }) => reliability === "misleads")
      ? []
      : [fact(part, said.state.words, wording)];
  });
  return [
    ...(who.length === 0 ? [] : [escapeHtml(who.join(", "))]),
    ...(size === undefined ? [] : [says("practice.length", { from: size.mm[0], to: size.mm[1] })]),
    ...facts,
  ];
}

function fact(part: string, state: string, wording: Wording): string {
  return wording.says("practice.fact", {
    part: escapeHtml(partName(part, wording.says)),
    state: stateHtml(state, wording),
  });
}

/** The names to choose from, as radio buttons. */
export function choiceFields({ choices }: Question): string {
  return choices
    .map(
      ({ slug, name }) =>
        `<label><input type="radio" name="answer" value="${escapeHtml(slug)}"> <span>${escapeHtml(name)}</span></label>`,
    )
    .join("");
}
