/** What counting needs of a checklist: every taxon below a taxon. */
export interface Descent {
  descendants(taxonId: string): readonly string[];
}

/**
 * The length of a list: the fewest distinct taxa that explain every name on it. A name is explained by its own taxon
 * or by any taxon within it, listed or not; a name without members only by itself. So an aggregate beside one of its
 * members adds nothing, and two overlapping aggregates can be one taxon. 0 for an empty list; repeats count once; an
 * unknown id counts as a taxon of its own. Exact: a smallest hitting set, found after names that hold another listed
 * name are set aside and the rest is parted into groups that share no taxon. The search is exponential only in the
 * number of overlapping aggregates of one such group without a listed member, a handful in real checklists.
 *
 * @example fewestTaxa(["lucorum-agg", "lucorum", "terrestris-lucorum-group"], checklist) // 1
 */
export function fewestTaxa(listed: Iterable<string>, { descendants }: Descent): number {
  const names = [...new Set(listed)];
  const isListed = new Set(names);
  const holdsListed = (name: string): boolean =>
    descendants(name).some((below) => isListed.has(below) && !descendants(below).includes(name));
  const unexplained = names.filter((name) => !holdsListed(name));
  let count = 0;
  const open: ReadonlySet<string>[] = [];
  for (const name of unexplained) {
    const below = descendants(name);
    if (below.length === 0) count += 1;
    else open.push(new Set([name, ...below]));
  }
  for (const group of groupsThatOverlap(open)) count += fewestHits(group);
  return count;
}

/** Parts the sets into groups so that sets of different groups have no taxon in common. */
function groupsThatOverlap(sets: readonly ReadonlySet<string>[]): ReadonlySet<string>[][] {
  let groups: ReadonlySet<string>[][] = [];
  for (const set of sets) {
    const touching = groups.filter((group) => group.some((other) => [...set].some((taxon) => other.has(taxon))));
    groups = [...groups.filter((group) => !touching.includes(group)), [set, ...touching.flat()]];
  }
  return groups;
}

/** Size of the smallest set of taxa that has one in each of the sets, by trying the taxa of the smallest set first. */
function fewestHits(sets: readonly ReadonlySet<string>[], limit: number = sets.length): number {
  if (sets.length <= 1 || limit <= 1) return sets.length === 0 ? 0 : 1;
  const smallest = sets.reduce((least, set) => (set.size < least.size ? set : least));
  let best = Math.min(limit, sets.length);
  for (const remaining of widestChoices(smallest, sets)) {
    if (remaining.length === 0) return 1;
    if (best <= 2) return 2;
    best = Math.min(best, 1 + fewestHits(remaining, best - 1));
  }
  return best;
}

/** What each taxon of a set leaves unhit, fewest first, without those that leave all that another one leaves, and more. */
function widestChoices(candidates: ReadonlySet<string>, sets: readonly ReadonlySet<string>[]): ReadonlySet<string>[][] {
  const choices = [...candidates]
    .map((taxon) => sets.filter((set) => !set.has(taxon)))
    .sort((a, b) => a.length - b.length);
  const kept: ReadonlySet<string>[][] = [];
  for (const left of choices) {
    if (!kept.some((fewer) => fewer.every((set) => left.includes(set)))) kept.push(left);
  }
  return kept;
}
