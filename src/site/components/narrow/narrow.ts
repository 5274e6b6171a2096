/**
 * Which taxon was seen? By Bayes's rule, from published tables and nothing else:
 *
 *   chance of a hypothesis ∝ how often it is met here × how often at this time of the year × the chance of each answer
 *
 * A hypothesis is a taxon in one caste and form (`hypotheses.ts`); how often it is met comes from the visits round the
 * place (`encounter-rates.ts`) and the seasons (`season-shares.ts`), the chance of an answer from the table of characters
 * (`answer-chances.ts`). Answers count as independent given the hypothesis, which is why parts that are seen as one are
 * one question. Nothing is ever 0, nothing is left out, and the order of answers does not matter.
 */
import { answerChances } from "./answer-chances.ts";
import { casteChance } from "./caste-chance.ts";
import { type Hypothesis, hypothesesOf, type Setting } from "./hypotheses.ts";
import type { NarrowTaxon } from "./narrow-taxa.ts";
import { namedStates, partFacts } from "./part-facts.ts";
import { type Question, questionsOf } from "./questions.ts";

/** What a person says of the animal. A question that is left out was not seen, and changes nothing. */
export interface Answers {
  readonly caste?: string | undefined;
  readonly states: ReadonlyMap<string, string>;
}

/** The tables of an atlas, made ready for any number of sightings. */
export interface Helper {
  readonly taxa: readonly NarrowTaxon[];
  readonly questions: readonly Question[];
  /** Chance of each answer, by question, for the look of a hypothesis; undefined where the table does not tell. */
  readonly chances: (
    question: Question,
    hypothesis: Pick<Hypothesis, "taxon" | "caste" | "form">,
  ) => readonly number[] | undefined;
}

/** A hypothesis with its chance after the answers. */
export type Weighed = Hypothesis & { readonly chance: number };

/**
 * Makes the tables ready.
 *
 * @param taxa of `identify.json`, those outside the atlas too
 * @example helperOf(taxa).questions[0]?.id // "tail"
 */
export function helperOf(taxa: readonly NarrowTaxon[]): Helper {
  const known = namedStates(taxa);
  const questions = questionsOf(taxa);
  const kept = new Map<string, ReadonlyMap<string, readonly number[] | undefined>>();
  return {
    taxa,
    questions,
    chances: (question, { taxon, caste, form }) => {
      if (taxon === undefined) return question.states.map(() => 1 / question.states.length);
      const key = [taxon.slug, caste, form].join("/");
      let own = kept.get(key);
      if (own === undefined) {
        const facts = partFacts(taxon, caste, form, known);
        own = new Map(questions.map((each) => [each.id, answerChances(each, facts)]));
        kept.set(key, own);
      }
      return own.get(question.id);
    },
  };
}

/**
 * The chance of every hypothesis.
 *
 * @param helper from `helperOf`
 * @param setting place and date
 * @param answers what was seen; an answer that no taxon of the atlas can give counts as not seen
 * @returns in the order of the taxa; the chances sum to 1 and none is 0
 * @example weigh(helper, setting, { states: new Map([["tail", "red"]]) }).length // 140
 */
export function weigh(helper: Helper, setting: Setting, { caste, states }: Answers): Weighed[] {
  const hypotheses = hypothesesOf(helper.taxa, setting);
  const factors = [...states].flatMap(([id, state]) => {
    const question = helper.questions.find((one) => one.id === id);
    const answer = question?.states.indexOf(state) ?? -1;
    return question === undefined || answer < 0
      ? []
      : [chancesWith(helper, hypotheses, question).map((row) => row[answer] ?? 0)];
  });
  const weights = hypotheses.map(
    (hypothesis, i) =>
      factors.reduce((product, factor) => product * (factor[i] ?? 1), hypothesis.prior) *
      casteChance(caste, hypothesis.caste),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return hypotheses.map((hypothesis, i) => ({ ...hypothesis, chance: (weights[i] ?? 0) / total }));
}

/**
 * The chances of a question's answers under every hypothesis. One that the table does not tell of gets the mean of those
 * it does, weighted by what was likely before any answer: so an answer moves it neither up nor down among the rest.
 *
 * @example chancesWith(helper, hypotheses, tail)[0] // [0.79, 0.02, …]
 */
export function chancesWith(
  helper: Helper,
  hypotheses: readonly Hypothesis[],
  question: Question,
): (readonly number[])[] {
  const told = hypotheses.map((hypothesis) => helper.chances(question, hypothesis));
  const mean = question.states.map(() => 0);
  let weight = 0;
  hypotheses.forEach(({ taxon, prior }, i) => {
    const row = told[i];
    if (taxon === undefined || row === undefined) return;
    weight += prior;
    row.forEach((chance, answer) => (mean[answer] = (mean[answer] ?? 0) + prior * chance));
  });
  const neutral = mean.map((sum) => (weight > 0 ? sum / weight : 1 / mean.length));
  return told.map((row) => row ?? neutral);
}
