import { chancesWith, type Helper, type Weighed } from "./narrow.ts";
import type { NarrowTaxon } from "./narrow-taxa.ts";
import { LIKELY } from "./outcome.ts";
import { namedStates, type PartFact, partFacts } from "./part-facts.ts";
import type { Question } from "./questions.ts";

/** What one answer would mean, or several that mean the same. */
export interface Meaning {
  readonly states: readonly string[];
  /** Chance of these answers. */
  readonly chance: number;
  /** The likeliest taxon then, and others that stay at least half as likely; at most three. */
  readonly taxa: readonly NarrowTaxon[];
}

/** The question that is expected to tell most. */
export interface NextLook {
  readonly question: Question;
  /** Expected gain of information about the taxon, in bits. */
  readonly gain: number;
  readonly meanings: readonly Meaning[];
  /** Likely taxa for which it varies, or of which the table does not tell it. */
  readonly failsFor: readonly NarrowTaxon[];
  /** The least that can show it, for the likely taxon that asks most: sight, photograph or specimen. */
  readonly evidence: string;
}

/** Less than this, in bits, is no reason to look again. */
const LEAST_GAIN = 0.02;
/** Answers less likely than this are not told. */
const LEAST_CHANCE = 0.02;
const EVIDENCE = ["sight", "photograph", "specimen"];

/**
 * The question not yet asked whose answer is expected to take most uncertainty about the taxon away:
 * gain = H(taxon) − Σ chance of the answer × H(taxon given the answer), H in bits (Shannon 1948).
 *
 * @param helper from `helperOf`
 * @param weighed from `weigh`
 * @param asked questions answered, or said not to be seen
 * @returns undefined where no question is expected to tell anything
 * @example lookNext(helper, weighed, new Set(["tail"]))?.question.id // "hind-leg"
 */
export function lookNext(
  helper: Helper,
  weighed: readonly Weighed[],
  asked: ReadonlySet<string>,
): NextLook | undefined {
  const before = entropy(weighed.map((one) => [one.taxon, one.chance]));
  const questions = helper.questions
    .filter(({ id }) => !asked.has(id))
    .map((question) => {
      const after = afterEach(helper, weighed, question);
      const left = after.reduce((sum, { chance, taxa }) => sum + chance * entropy(taxa), 0);
      return { question, after, gain: before - left };
    })
    .sort((a, b) => b.gain - a.gain || (a.question.id < b.question.id ? -1 : 1));
  const [best] = questions;
  if (best === undefined || best.gain < LEAST_GAIN) return undefined;
  const looks = likelyLooks(helper, weighed, best.question);
  return {
    question: best.question,
    gain: best.gain,
    meanings: meaningsOf(best.after),
    failsFor: [...new Set(looks.filter(({ facts }) => fails(facts)).map(({ taxon }) => taxon))],
    evidence:
      EVIDENCE[Math.max(0, ...looks.flatMap(({ facts }) => facts.map((fact) => EVIDENCE.indexOf(fact.evidence))))] ??
      "sight",
  };
}

type Shares = [NarrowTaxon | undefined, number][];

function afterEach(helper: Helper, weighed: readonly Weighed[], question: Question) {
  const rows = chancesWith(helper, weighed, question);
  return question.states.map((state, answer) => {
    const joint = weighed.map(({ taxon, chance }, i): Shares[number] => [taxon, chance * (rows[i]?.[answer] ?? 0)]);
    const chance = joint.reduce((sum, [, one]) => sum + one, 0);
    return { state, chance, taxa: joint.map(([taxon, one]): Shares[number] => [taxon, one / chance]) };
  });
}

function byTaxon(shares: Shares): Map<NarrowTaxon | undefined, number> {
  const sums = new Map<NarrowTaxon | undefined, number>();
  for (const [taxon, share] of shares) sums.set(taxon, (sums.get(taxon) ?? 0) + share);
  return sums;
}

function entropy(shares: Shares): number {
  return [...byTaxon(shares).values()].reduce((sum, share) => (share > 0 ? sum - share * Math.log2(share) : sum), 0);
}

function leading(shares: Shares): NarrowTaxon[] {
  const sorted = [...byTaxon(shares)].sort(([, a], [, b]) => b - a);
  const most = sorted[0]?.[1] ?? 0;
  return sorted.flatMap(([taxon, share]) => (taxon !== undefined && share >= most / 2 ? [taxon] : [])).slice(0, 3);
}

/** Answers in their order; those that leave the same taxa stand with the first. */
function meaningsOf(after: ReturnType<typeof afterEach>): Meaning[] {
  const told = after
    .filter(({ chance }) => chance >= LEAST_CHANCE)
    .map((each) => ({ ...each, taxa: leading(each.taxa) }));
  return [...Map.groupBy(told, ({ taxa }) => taxa.map(({ slug }) => slug).join())].map(([, same]) => ({
    states: same.map(({ state }) => state),
    chance: same.reduce((sum, { chance }) => sum + chance, 0),
    taxa: same[0]?.taxa ?? [],
  }));
}

/** Taxa in the castes in which they are likely, with what the table says of the question's parts. */
function likelyLooks({ taxa }: Helper, weighed: readonly Weighed[], { parts }: Question) {
  const known = namedStates(taxa);
  const byLook = Map.groupBy(weighed, ({ taxon, caste }) => `${taxon?.slug ?? ""}/${caste}`);
  return [...byLook.values()].flatMap((own) => {
    const [{ taxon, caste } = { taxon: undefined, caste: "" }] = own;
    const chance = own.reduce((sum, one) => sum + one.chance, 0);
    if (taxon === undefined || chance < LIKELY) return [];
    const facts = partFacts(taxon, caste, "", known);
    return [{ taxon, facts: parts.flatMap((part) => facts.get(part) ?? []) }];
  });
}

function fails(facts: readonly PartFact[]): boolean {
  return facts.length === 0 || facts.some(({ varies, reliability }) => varies || reliability === "misleads");
}
