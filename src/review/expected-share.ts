/** How often one would expect a taxon on a visit, from the visits of other people around: shares drawn towards a wider area's. */

/** Visits of others in one ring around a place, and how many of them reported the taxon (a lone recorder's word halved). */
export interface Ring {
  readonly visits: number;
  readonly reports: number;
}

/** A share and how many visits it is worth. */
export interface Prior {
  readonly share: number;
  readonly visits: number;
}

/**
 * The mean of a beta-binomial posterior: with the prior Beta(a, b), a = share × visits and b = visits − a, and `reports`
 * of `ring.visits` it is (a + reports) / (a + b + ring.visits). With no visits it is the prior's share. A report is never
 * counted oftener than there are visits.
 *
 * Source: conjugate updating, as in Gelman et al., Bayesian Data Analysis (3rd edition 2013), section 2.4.
 *
 * @returns a share, 0 to 1
 * @example shrunkShare({ share: 0.02, visits: 50 }, { visits: 1340, reports: 0 }) // 1 / 1390 = 0.000719…
 */
export function shrunkShare({ share, visits }: Prior, ring: Ring): number {
  const reports = Math.min(ring.reports, ring.visits);
  return (share * visits + reports) / (visits + ring.visits);
}

/**
 * The share of visits on which to expect a taxon at a place: the rings from the outermost to the innermost, each share
 * drawn towards that of the ring around it, the outermost towards the taxon's share of all visits. So much as the near
 * visits are many, they alone speak; where they are few, the wider neighbourhood does.
 *
 * Assumes that a visit is the unit of effort, that shares differ between squares as a beta distribution does, and that
 * they differ less between neighbours than between strangers.
 *
 * @param prior the taxon's share of all visits, and the visits that a wider area's share is worth
 * @param rings from the innermost to the outermost
 * @returns a share of visits, 0 to 1
 * @example expectedShare({ share: 0.1, visits: 10 }, [{ visits: 10, reports: 0 }, { visits: 30, reports: 1 }]) // 0.025
 */
export function expectedShare(prior: Prior, rings: readonly Ring[]): number {
  return rings.reduceRight((share, ring) => shrunkShare({ share, visits: prior.visits }, ring), prior.share);
}
