import jStat from "jstat";
import { canTellEffort, type EffortAndFactors, effortAndFactors, findRates, riseOf } from "./effort-and-factors.ts";
import { atEqualEffort, type GroupVisits } from "./equal-effort.ts";
import { meanOfGroup } from "./group-mean.ts";
import { seasonOfRecording } from "./season-of-recording.ts";

/** That of an error of 0.1 %: a taxon found in the very same squares twice is not known better. */
const LEAST_VARIANCE = 1e-6;

/** Change of one taxon between two periods. */
export interface ChangeOfTaxon {
  /** Squares it would be recorded in, of those compared, at equal effort. */
  from: number;
  to: number;
  /** Logarithm of the ratio of its time factors, less the group's mean, with its 95 % interval; null where there is none. */
  change: { estimate: number; low: number; high: number } | null;
}

/**
 * Change of the time factor of each taxon between two periods at equal effort, against the mean of the group.
 *
 * It follows Hill (2012) Methods in Ecology and Evolution 3: 195–205 in its core, P = 1 − exp(−Q·x), with the frequencies
 * of the neighbourhood in Q and the ratio of two factors x as the change. The rest departs from it, because with invented
 * groups whose truth is known its effort, the share of benchmarks found, called a sixth of the taxa changed where none was
 * and effort doubled: benchmarks are all found sooner or later, other taxa go on being found. Ours are:
 * 1. Both periods are brought to as many visits in each square and third of the season (`atEqualEffort`).
 * 2. What remains of effort is a rate, from all taxa of a square and not its benchmarks alone (`effortAndFactors`).
 * 3. Q allows for records at other times of the year (`seasonOfRecording`).
 * 4. The mean change of the group, each taxon weighted by what is known of it (`meanOfGroup`), is taken off, for a change
 *    that all taxa share looks like one of effort.
 * 5. The variance is that of the sums over squares of what each adds to both periods' factors and to points 3 and 4 (the
 *    sandwich of Liang & Zeger 1986, Biometrika 73: 13–22), so that a square that is good in both periods adds little; the
 *    quantile is Student's, its degrees of freedom the number of squares that carry the variance, (Σu²)²/Σu⁴.
 *
 * A taxon without finds in one of the periods, or with fewer than `minimumSquares` in the two together, has no change and
 * is no part of the mean.
 *
 * @param frequencies from `localFrequencies`, at square × taxa + taxon
 * @returns changes in the order of taxa, and the number of squares compared
 * @example changeAtEqualEffort(frequencies, visits, [0, 1], { squares: 700, taxa: 80, minimumSquares: 10 }).changes[0]?.change // a taxon that fell by a third or so: { estimate: -0.41, low: -0.63, high: -0.2 }
 */
export function changeAtEqualEffort(
  frequencies: Float64Array,
  visits: GroupVisits,
  pair: readonly [from: number, to: number],
  sizes: { squares: number; taxa: number; minimumSquares: number },
): { changes: ChangeOfTaxon[]; squares: number } {
  const { expected, weights } = atEqualEffort(visits, pair, sizes);
  const season = seasonOfRecording(visits, weights, pair, sizes);
  const rates = findRates(frequencies);
  const ofSquare = (values: Float64Array, square: number) =>
    values.subarray(square * sizes.taxa, (square + 1) * sizes.taxa);
  const compared = Array.from({ length: sizes.squares }, (_, square) => square).filter((square) =>
    expected.every((chances) => canTellEffort(ofSquare(rates, square), ofSquare(chances, square))),
  );
  const fitted = expected.map((chances, period) =>
    effortAndFactors(rates, compared, {
      expected: chances,
      season: season.logFactors.map((log) => Math.exp((period - 0.5) * log)),
    }),
  );
  const fits = Array.from({ length: sizes.taxa }, (_, taxon): TaxonFit => {
    const finds = expected.map((chances) =>
      compared.reduce((sum, square) => sum + (chances[square * sizes.taxa + taxon] as number), 0),
    );
    const enough =
      finds.every((found) => found > 0) && (finds[0] as number) + (finds[1] as number) >= sizes.minimumSquares;
    return { finds, ...(enough ? fitOf(taxon, { compared, expected, fitted, season: season.influences, sizes }) : {}) };
  });
  return { changes: againstGroup(fits, compared.length), squares: compared.length };
}

interface TaxonFit {
  finds: readonly number[];
  log?: number;
  /** How much each compared square adds to it. */
  influences?: Float64Array;
}

interface FitsOfGroup {
  compared: readonly number[];
  expected: readonly Float64Array[];
  fitted: readonly EffortAndFactors[];
  season: Float64Array;
  sizes: { squares: number; taxa: number };
}

function fitOf(taxon: number, { compared, expected, fitted, season, sizes }: FitsOfGroup): Omit<TaxonFit, "finds"> {
  const influences = Float64Array.from(compared, (square) => -(season[taxon * sizes.squares + square] as number));
  let log = 0;
  for (const [period, sign] of [-1, 1].entries()) {
    const { factors, rates, rises } = fitted[period] as EffortAndFactors;
    let slope = 0;
    for (const square of compared) {
      const own = riseOf(rates[square * sizes.taxa + taxon] as number);
      // A square's effort gives way to each of its taxa by the taxon's share.
      if (own > 0) slope += own * (1 - own / (rises[square] as number));
    }
    const factor = factors[taxon] as number;
    if (!(slope > 1e-9) || !Number.isFinite(factor)) return {};
    log += sign * Math.log(factor);
    compared.forEach((square, index) => {
      const cell = square * sizes.taxa + taxon;
      const excess = (expected[period]?.[cell] as number) + Math.expm1(-(rates[cell] as number));
      influences[index] = (influences[index] as number) + (sign * excess) / slope;
    });
  }
  return { log, influences };
}

function againstGroup(fits: readonly TaxonFit[], squares: number): ChangeOfTaxon[] {
  const known = fits.filter(({ log }) => log !== undefined) as Required<TaxonFit>[];
  const variances = known.map(({ influences }) => varianceOf(influences));
  const { mean, weights } = meanOfGroup(
    known.map(({ log }) => log),
    variances,
  );
  const common = new Float64Array(squares);
  known.forEach(({ influences }, index) => {
    for (let at = 0; at < squares; at++)
      common[at] = (common[at] as number) + (weights[index] as number) * (influences[at] as number);
  });
  return fits.map(({ finds, log, influences }) => {
    const [from, to] = finds as [number, number];
    if (log === undefined || influences === undefined) return { from, to, change: null };
    const own = influences.map((influence, at) => influence - (common[at] as number));
    const reach = jStat.studentt.inv(0.975, freedomOf(own)) * Math.sqrt(varianceOf(own));
    const estimate = log - mean;
    return { from, to, change: { estimate, low: estimate - reach, high: estimate + reach } };
  });
}

function varianceOf(influences: Float64Array): number {
  const { length } = influences;
  const variance = (influences.reduce((sum, influence) => sum + influence ** 2, 0) * length) / Math.max(1, length - 1);
  return Math.max(LEAST_VARIANCE, variance);
}

function freedomOf(influences: Float64Array): number {
  const [squares, fourths] = [2, 4].map((power) => influences.reduce((sum, one) => sum + one ** power, 0));
  return (fourths as number) > 0 ? Math.max(1, (squares as number) ** 2 / (fourths as number)) : 1;
}
