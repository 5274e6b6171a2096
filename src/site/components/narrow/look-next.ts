import { chancesWith, type Helper, type Weighed } from "./narrow.ts";
import type { NarrowTaxon } from "./narrow-taxa.ts";
import { LIKELY } from "./outcome.ts";
import { namedStates, partFacts } from "./part-facts.ts";
import type { Question } from "./questions.ts";

/** What one answer would mean. */
export interface Meaning {
  readonly state: string;
  /** Chance of the answer. */
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
  const looks = helper.questions
    .filter(({ id }) => !asked.has(id))
    .map((question) => {
      const after = afterEach(helper, weighed, question);
      const left = after.reduce((sum, { chance, taxa }) => sum + chance * entropy(taxa), 0);
      return { question, after, gain: before - left };
    })
    .sort((a, b) => b.gain - a.gain || (a.question.id < b.question.id ? -1 : 1));
  const [best] = looks;
  if (best === undefined || best.gain < LEAST_GAIN) return undefined;
  const likely = likelyTaxa(weighed);
  return {
    question: best.question,
    gain: best.gain,
    meanings: best.after
      .filter(({ chance }) => chance >= LEAST_CHANCE)
      .map((each) => ({ ...each, taxa: leading(each.taxa) })),
    failsFor: likely.filter((taxon) => fails(helper, taxon, best.question)),
    evidence: evidenceOf(helper, likely, best.question),
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

function likelyTaxa(weighed: readonly Weighed[]): NarrowTaxon[] {
  return [...byTaxon(weighed.map(({ taxon, chance }) => [taxon, chance]))]
    .filter(([, chance]) => chance >= LIKELY)
    .sort(([, a], [, b]) => b - a)
    .flatMap(([taxon]) => taxon ?? []);
}

function factsOf({ taxa }: Helper, taxon: NarrowTaxon, { parts }: Question) {
  const known = namedStates(taxa);
  return (taxon.castes.length === 0 ? [""] : taxon.castes).map((caste) => {
    const facts = partFacts(taxon, caste, "", known);
    return parts.flatMap((part) => facts.get(part) ?? []);
  });
}

function fails(helper: Helper, taxon: NarrowTaxon, question: Question): boolean {
  return factsOf(helper, taxon, question).some(
    (facts) => facts.length === 0 || facts.some(({ varies, reliability }) => varies || reliability === "misleads"),
  );
}

function evidenceOf(helper: Helper, likely: readonly NarrowTaxon[], question: Question): string {
  const asked = likely.flatMap((taxon) =>
    factsOf(helper, taxon, question)
      .flat()
      .map(({ evidence }) => EVIDENCE.indexOf(evidence)),
  );
  return EVIDENCE[Math.max(0, ...asked)] ?? "sight";
}
