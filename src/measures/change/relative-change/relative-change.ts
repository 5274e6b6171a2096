import jStat from "jstat";
import { fitGroupLine, scatterOf, standardised, type Weighting } from "./group-line.ts";

/** Relative change of the taxa of a group. */
export interface RelativeChange {
  weighting: Weighting;
  intercept: number;
  slope: number;
  /** σ, scatter about the line in units of the weights. */
  scatter: number;
  /** Number of taxa the line is fitted to. */
  taxa: number;
  /** Index of each taxon in the order given, in standard deviations; null for those with too few squares. */
  indices: (number | null)[];
  /** The same without allowing for leverage. */
  unlevered: (number | null)[];
  /** How far from 0 an index has to be to stand out: at most 1 in 20 taxa of a group lies beyond it. */
  reach: number;
}

/** Squares with a taxon among those recorded in both periods. */
export interface SquareCounts {
  from: number;
  to: number;
}

/**
 * The relative change index: how many more or fewer squares a taxon has in the recent period than the group as a whole
 * leads to expect of a taxon so common before. 0 is the average of the group, not a lack of change.
 *
 * Source: Telfer, Preston & Rothery (2002) Biological Conservation 107: 99–109, which could not be read in full. Known from
 * descriptions of it: squares surveyed in both periods, a line of logit recent proportion on logit earlier proportion over
 * all taxa, weights for unequal variance, iterated, and the standardised residual as the index; taxa with fewer than five
 * squares in the earlier period are left out. Our readings: logit ln((x + ½)/(N − x + ½)); the variance
 * a + b/(Nπ(1 − π)) with π the fitted recent proportion; standardising by leverage, z/√(1 − h).
 *
 * Where that variance comes out at 0 or below for some taxon, taxa weigh in proportion to Nπ(1 − π) if b is above 0, and
 * all alike if not, as they do where the weights do not settle. `weighting` says which it was.
 *
 * The interval, index ± reach, is ours: an index lies beyond its reach where the residual divided by the scatter without that
 * taxon (externally studentised) lies beyond Student's 97.5 % quantile, and the index beyond that of 95 in 100 taxa, which
 * holds whatever the shape of the scatter (Lei, G'Sell, Rinaldo, Tibshirani & Wasserman 2018, Journal of the American
 * Statistical Association 113: 1094–1111). Scatter is that of the group, real change of its taxa included: in a group that
 * changes much few stand out.
 *
 * @param squares N, squares recorded in both periods
 * @returns null where there are fewer than four taxa or they were all equally common
 * @example relativeChange(counts, 250, { minimum_squares: 5 })?.indices // => [-0.92, 1.09, 0.15, …]
 */
export function relativeChange(
  counts: readonly SquareCounts[],
  squares: number,
  options: { minimum_squares: number },
): RelativeChange | null {
  const kept = counts.flatMap(({ from }, taxon) => (from >= options.minimum_squares ? [taxon] : []));
  const logits = (period: keyof SquareCounts) =>
    kept.map((taxon) => logit((counts[taxon] as SquareCounts)[period], squares));
  const [from, to] = [logits("from"), logits("to")];
  if (kept.length < 4) return null;
  const fit = fitGroupLine(from, to, squares);
  if (fit === null) return null;
  const { line, weights, weighting } = fit;
  const unlevered = standardised(line, weights);
  const placed = (values: readonly number[]) => {
    const all = counts.map((): number | null => null);
    kept.forEach((taxon, index) => {
      all[taxon] = values[index] as number;
    });
    return all;
  };
  const levered = unlevered.map((z, index) => z / Math.sqrt(1 - (line.leverages[index] as number)));
  return {
    weighting,
    intercept: line.intercept,
    slope: line.slope,
    scatter: scatterOf(line, weights),
    taxa: kept.length,
    indices: placed(levered),
    unlevered: placed(unlevered),
    reach: reachOf(levered),
  };
}

function logit(count: number, squares: number): number {
  return Math.log((count + 0.5) / (squares - count + 0.5));
}

/** How far an index must be from 0 to be unlike the group, by Student's quantile and by rank, whichever is farther. */
function reachOf(indices: readonly number[]): number {
  const taxa = indices.length;
  const quantile = jStat.studentt.inv(0.975, taxa - 3);
  // The standardised residual that belongs to an externally studentised one at the quantile.
  const student = quantile * Math.sqrt((taxa - 2) / (taxa - 3 + quantile ** 2));
  const ordered = indices.map((index) => Math.abs(index)).sort((a, b) => a - b);
  return Math.max(student, ordered[Math.min(taxa, Math.ceil(0.95 * (taxa + 1))) - 1] as number);
}
