import { type Presence, squaresOfTaxa } from "../presence.ts";
import type { LocalFrequencies } from "./local-frequencies.ts";
import { poissonMultiplier } from "./poisson-multiplier.ts";

/** Time factors. Arrays at period × taxa + taxon; `benchmarkShares` at period × squares + square. */
export interface TimeFactors {
  /** s, share of its benchmark taxa recorded in each square; 0 where it has none. */
  benchmarkShares: Float64Array;
  /** Squares with the taxon, of those with a benchmark recorded. */
  squares: Int32Array;
  /** x; 0 where not recorded, Infinity where recorded in every square that could tell. */
  factors: Float64Array;
  /** Standard error of x; NaN where x is 0 or infinite. */
  errors: Float64Array;
}

/**
 * Time factors of taxa in each period: how their frequency stands to that expected of the neighbourhood, effort allowed for
 * by the share of benchmark taxa recorded.
 *
 * Source: Hill (2012) Methods in Ecology and Evolution 3: 195–205. From its summary: effort as the share of benchmarks
 * found, and a multiplicative model that gives time factors. Known from descriptions of it: P = 1 − exp(−Q·x) with
 * Q = −ln(1 − s·f′), x such that ΣP is the number of squares. Our readings: squares without a benchmark recorded are left
 * out, and thinly recorded ones weigh as all others. The standard error is ours, by the delta method with s as if known:
 * √ΣP(1 − P) / ΣQ·exp(−Q·x).
 *
 * The share s cannot exceed 1, while taxa that are no benchmarks go on being found: where recording grows, x grows with
 * it. `changeAtEqualEffort` is therefore what trends are told from.
 *
 * @example timeFactors(presence, local).factors[0] // 0.98567 for a taxon about as frequent as expected
 */
export function timeFactors(presence: Presence, local: LocalFrequencies): TimeFactors {
  const { periods, taxa, squares } = presence;
  const shares = benchmarkShares(presence, local.benchmarks);
  const counts = squaresOfTaxa(withoutBlindSquares(presence, shares));
  const [factors, errors] = [new Float64Array(periods * taxa.length), new Float64Array(periods * taxa.length)];
  const rates = new Float64Array(squares.length);
  for (let period = 0; period < periods; period++)
    for (let taxon = 0; taxon < taxa.length; taxon++) {
      for (let square = 0; square < squares.length; square++) {
        const share = shares[period * squares.length + square] as number;
        rates[square] = -Math.log1p(-share * (local.frequencies[square * taxa.length + taxon] as number));
      }
      const at = period * taxa.length + taxon;
      const factor = poissonMultiplier(rates, counts[at] as number);
      factors[at] = factor;
      errors[at] = factor === 0 || factor === Infinity ? NaN : errorOf(rates, factor);
    }
  return { benchmarkShares: shares, squares: counts, factors, errors };
}

function errorOf(rates: Float64Array, factor: number): number {
  let [variance, slope] = [0, 0];
  for (const rate of rates) {
    const miss = Math.exp(-rate * factor);
    variance += miss * (1 - miss);
    slope += rate * miss;
  }
  return Math.sqrt(variance) / slope;
}

function benchmarkShares({ periods, taxa, squares, recorded }: Presence, benchmarks: Uint8Array): Float64Array {
  const shares = new Float64Array(periods * squares.length);
  for (let at = 0; at < shares.length; at++) {
    const square = at % squares.length;
    let [all, found] = [0, 0];
    for (let taxon = 0; taxon < taxa.length; taxon++) {
      if (benchmarks[square * taxa.length + taxon] !== 1) continue;
      all++;
      found += recorded[at * taxa.length + taxon] as number;
    }
    shares[at] = all === 0 ? 0 : found / all;
  }
  return shares;
}

/** The records but for those of squares where no benchmark was recorded, which tell nothing of effort. */
function withoutBlindSquares(presence: Presence, shares: Float64Array): Presence {
  const recorded = presence.recorded.slice();
  const taxa = presence.taxa.length;
  shares.forEach((share, at) => {
    if (share === 0) recorded.fill(0, at * taxa, (at + 1) * taxa);
  });
  return { ...presence, recorded };
}
