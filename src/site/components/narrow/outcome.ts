import type { Helper, Weighed } from "./narrow.ts";
import { leafMembers, type NarrowTaxon } from "./narrow-taxa.ts";

/** One taxon with its chance, and the caste and form that chance mostly comes from. */
export interface Candidate {
  readonly taxon: NarrowTaxon;
  readonly chance: number;
  readonly caste: string;
  readonly form: string;
}

/** A taxon is counted as likely from 1 in 20. */
export const LIKELY = 0.05;
/** A group is offered when it is right for at least 8 in 10, and its leading member for less. */
export const SETTLED = 0.8;

/** What is left after the answers. */
export interface Outcome {
  /** Every taxon the animal can be, likeliest first; none is left out. */
  readonly candidates: readonly Candidate[];
  /** Chance that it is something nobody described. */
  readonly elsewhere: number;
  /** Chance that it is none of the atlas's group: described or not. */
  readonly notOfGroup: number;
  /** How many candidates have at least 1 in 20. */
  readonly likely: number;
  /** The smallest group of the atlas that would be a good record now, if its species would not be. */
  readonly group: { readonly taxon: NarrowTaxon; readonly chance: number } | undefined;
}

/**
 * Sums up the hypotheses by taxon and by group.
 *
 * @param helper from `helperOf`
 * @param weighed from `weigh`
 * @example outcomeOf(helper, weighed).candidates[0]?.chance // 0.71
 */
export function outcomeOf(helper: Helper, weighed: readonly Weighed[]): Outcome {
  const candidates = [...Map.groupBy(weighed, ({ taxon }) => taxon)]
    .flatMap(([taxon, own]) => (taxon === undefined ? [] : [candidateOf(taxon, own)]))
    .sort((a, b) => b.chance - a.chance || (a.taxon.slug < b.taxon.slug ? -1 : 1));
  const chanceOf = new Map(candidates.map(({ taxon, chance }) => [taxon.slug, chance]));
  const elsewhere = total(weighed.filter(({ taxon }) => taxon === undefined));
  return {
    candidates,
    elsewhere,
    notOfGroup: elsewhere + total(candidates.filter(({ taxon }) => taxon.outside)),
    likely: candidates.filter(({ chance }) => chance >= LIKELY).length,
    group: (candidates[0]?.chance ?? 1) >= SETTLED ? undefined : smallestGroup(helper, chanceOf),
  };
}

function candidateOf(taxon: NarrowTaxon, own: readonly Weighed[]): Candidate {
  const best = own.reduce((most, one) => (one.chance > most.chance ? one : most));
  return { taxon, chance: total(own), caste: best.caste, form: best.form };
}

function smallestGroup({ taxa }: Helper, chanceOf: ReadonlyMap<string, number>): Outcome["group"] {
  const groups = taxa
    .filter(({ slug }) => !chanceOf.has(slug))
    .map((taxon) => {
      const members = leafMembers(taxa, taxon);
      return { taxon, size: members.length, chance: members.reduce((sum, slug) => sum + (chanceOf.get(slug) ?? 0), 0) };
    })
    .filter(({ chance }) => chance >= SETTLED)
    .sort((a, b) => a.size - b.size || b.chance - a.chance);
  const [first] = groups;
  return first && { taxon: first.taxon, chance: first.chance };
}

function total(list: readonly { readonly chance: number }[]): number {
  return list.reduce((sum, { chance }) => sum + chance, 0);
}
