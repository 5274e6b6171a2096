import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { type Comparison, comparisonOf } from "../tell-apart/comparison.ts";
import { linked, pairSentence, type Wording } from "../tell-apart/comparison-words.ts";
import { withBold } from "../tell-apart/html.ts";
import { comparisonTable } from "../tell-apart/render-comparison.ts";
import { type Caste, viewsOf } from "../tell-apart/views.ts";
import type { Judgement, Question } from "./questions.ts";

/** Everything an explanation is made from. */
export interface Known {
  readonly all: readonly IdentifyTaxon[];
  readonly castes: readonly Caste[];
  readonly wording: Wording;
}

/** What is said of an answer at once. As HTML. */
export function judgementSaid({ taxon, answer }: Question, judgement: Judgement, { says, link }: Wording): string {
  const name = linked(answer, link);
  const key = judgement === "right" && answer.slug !== taxon.slug ? "practice.right-group" : `practice.${judgement}`;
  const was = answer.slug === taxon.slug ? "" : ` ${says("practice.was", { name: linked(taxon, link) })}`;
  return withBold(`${says(key, { name })}${was}`);
}

/**
 * The look-alike to set beside what was shown: what was answered, else the first it is taken for that looks different.
 *
 * @returns undefined where nothing else is described
 */
export function lookAlikeOf({ taxon, answer, choices }: Question, chosen: IdentifyTaxon): IdentifyTaxon | undefined {
  const isOther = (other: IdentifyTaxon) => other.slug !== taxon.slug && other.members.length === 0;
  if (isOther(chosen) && chosen.slug !== answer.slug) return chosen;
  const named = taxon.lookAlikes.flatMap((slug) => choices.find((other) => other.slug === slug) ?? []);
  const within = choices.find(
    (other) => isOther(other) && answer.slug !== taxon.slug && other.within.includes(answer.slug),
  );
  return within ?? named.find(isOther) ?? choices.find(isOther);
}

/** The comparison of what was shown with a look-alike, in the castes that stand side by side. */
export function comparisonWith(
  { taxon, caste }: Question,
  other: IdentifyTaxon,
  { all, castes }: Known,
): Comparison | undefined {
  const view = viewsOf([taxon, other], castes).find(
    ({ castes: [own = []] }) => own.length === 0 || own.includes(caste),
  );
  return view === undefined ? undefined : comparisonOf([taxon, other], view, all);
}

/** Why, by character: a sentence on the pair, and the rows of its table that differ. As HTML. */
export function reasonHtml(question: Question, other: IdentifyTaxon, known: Known): string {
  const comparison = comparisonWith(question, other, known);
  const [verdict] = comparison?.verdicts ?? [];
  if (comparison === undefined || verdict === undefined) return "";
  const sentence = withBold(pairSentence(verdict, comparison, known.wording));
  return `<p>${sentence}</p>${comparisonTable(comparison, known.wording, ({ agrees }) => !agrees)}`;
}
