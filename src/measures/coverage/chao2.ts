/**
 * How often the taxa of a square were named on its visits: all there is to say of a sample for what follows.
 * Whole numbers; `once` + `twice` ≤ `observed` ≤ `incidences` ≤ `observed` × `visits`.
 */
export interface Incidence {
  /** Visits, the samples: at least 2. */
  visits: number;
  /** Taxa named on any visit. */
  observed: number;
  /** Taxa named on exactly one visit. */
  once: number;
  /** Taxa named on exactly two visits. */
  twice: number;
  /** Pairs of a visit and a taxon it named. */
  incidences: number;
}

/** An expected number of taxa; without bounds where the estimate adds nothing to what was observed. */
export interface ExpectedRichness {
  expected: number;
  variance: number;
  low: number | null;
  high: number | null;
}

/** Standard normal quantile of a 95 % interval, as rounded in the paper. */
const Z = 1.96;

/**
 * Expected number of taxa, seen or not, from how many were named on one visit and how many on two: a lower bound, for
 * taxa that visits of this kind can find at all (Chao 1987, Biometrics 43: 783–791; with the factor (m − 1)/m for few
 * samples, Colwell et al. 2012, Journal of Plant Ecology 5: 3–21). Where none was named on exactly two visits the
 * bias-corrected form and its variance are used. The interval is log-normal, 95 %, and never falls below what was
 * observed. Where nothing is added (none, or one with no second, was named once) there is no interval: the formula has
 * none, and that is no certainty.
 *
 * @param incidence counts of at least one taxon and two visits
 * @returns taxa; `expected` ≥ `observed`, and `low` ≤ `expected` ≤ `high`
 * @example expectedRichness({ visits: 10, observed: 12, once: 4, twice: 0, incidences: 40 }).expected // => 17.4
 */
export function expectedRichness({ visits, observed, once, twice }: Incidence): ExpectedRichness {
  const few = (visits - 1) / visits;
  const unseen = twice > 0 ? (few * once ** 2) / (2 * twice) : (few * once * (once - 1)) / 2;
  const variance = twice > 0 ? varianceOf(once / twice, twice, few) : correctedVariance(once, few, observed + unseen);
  if (unseen <= 0) return { expected: observed, variance, low: null, high: null };
  const spread = Math.exp(Z * Math.sqrt(Math.log(1 + variance / unseen ** 2)));
  return { expected: observed + unseen, variance, low: observed + unseen / spread, high: observed + unseen * spread };
}

function varianceOf(ratio: number, twice: number, few: number): number {
  return twice * ((few * ratio ** 2) / 2 + few ** 2 * ratio ** 3 + (few ** 2 * ratio ** 4) / 4);
}

/** Variance of the bias-corrected form; rounding must not take it below 0. */
function correctedVariance(once: number, few: number, expected: number): number {
  const bracket = (once * (2 * once - 1) ** 2) / 4 - once ** 4 / (4 * expected);
  const variance = few * ((once * (once - 1)) / 2 + few * bracket);
  return Math.max(0, variance);
}

/**
 * Sample coverage: the share that the observed taxa make of all incidences, so how likely the next name on a list is
 * one already known from the square (Chao & Jost 2012, Ecology 93: 2533–2547, form for incidences).
 *
 * @param incidence counts of at least one taxon and two visits
 * @returns 0 to 1; 1 where no taxon was named on one visit only
 * @example sampleCoverage({ visits: 50, observed: 225, once: 21, twice: 19, incidences: 4539 }).toFixed(4) // => "0.9955"
 */
export function sampleCoverage({ visits, once, twice, incidences }: Incidence): number {
  if (once === 0) return 1;
  const others = visits - 1;
  const share =
    twice > 0 ? (others * once) / (others * once + 2 * twice) : (others * (once - 1)) / (others * (once - 1) + 2);
  return 1 - (once / incidences) * share;
}

/**
 * The same sample without the taxa that rest on a single record: each was named on one visit. What a misidentification
 * would add is gone, and with it what was rightly found once.
 *
 * @param singles taxa with exactly one record; at most `once`
 * @example withoutSingles({ visits: 9, observed: 8, once: 3, twice: 1, incidences: 30 }, 2) // => { visits: 9, observed: 6, once: 1, twice: 1, incidences: 28 }
 */
export function withoutSingles(incidence: Incidence, singles: number): Incidence {
  return {
    ...incidence,
    observed: incidence.observed - singles,
    once: incidence.once - singles,
    incidences: incidence.incidences - singles,
  };
}
