import type { GroupVisits } from "./equal-effort.ts";

/** What the season of recording alone makes of each taxon. */
export interface SeasonOfRecording {
  /** Logarithm by which the recent period's season of recording multiplies a taxon's records against the group's. */
  logFactors: Float64Array;
  /** How much each square's records add to it, at taxon × squares + square; those of a taxon sum to 0. */
  influences: Float64Array;
}

/**
 * How much commoner a taxon would seem in the recent period only because recording was then at other times of the year. Of
 * the group's records in each third of a month, the share of the taxon is compared between periods third by third, by the
 * ratio of Mantel & Haenszel (1959, Journal of the National Cancer Institute 22: 719–748) for rates; the factor is the
 * ratio over the whole year divided by it. 1, its logarithm 0, where a third has no records in both periods with the taxon.
 *
 * @param weights of visits, from `atEqualEffort`
 * @example seasonOfRecording(visits, weights, [0, 1], { squares: 1, taxa: 2 }).logFactors[0] // 0 where the season is the same
 */
export function seasonOfRecording(
  visits: GroupVisits,
  weights: Float64Array,
  pair: readonly [from: number, to: number],
  sizes: { squares: number; taxa: number },
): SeasonOfRecording {
  const counts = countRecords(visits, weights, pair, sizes.taxa);
  const sums = Array.from({ length: sizes.taxa }, (_, taxon) => sumsOf(counts, taxon));
  const logFactors = Float64Array.from(sums, ({ crude, held }) =>
    held.every((sum) => sum > 0)
      ? Math.log((crude[1] as number) / (crude[0] as number)) -
        Math.log((held[1] as number) / (held[0] as number)) -
        Math.log((counts.all[1] as number) / (counts.all[0] as number))
      : 0,
  );
  const influences = new Float64Array(sizes.taxa * sizes.squares);
  visits.squares.forEach((square, visit) => {
    const period = pair.indexOf(visits.periods[visit] as number);
    const weight = weights[visit] as number;
    if (period < 0 || weight === 0) return;
    const sign = period === 1 ? 1 : -1;
    const share = shareOfOther(counts, period, visits.thirds[visit] as number);
    for (let at = visits.starts[visit] as number; at < (visits.starts[visit + 1] as number); at++) {
      const taxon = visits.taxa[at] as number;
      const { crude, held } = sums[taxon] as TaxonSums;
      if (!held.every((sum) => sum > 0)) continue;
      const cell = taxon * sizes.squares + square;
      const added = weight * (1 / (crude[period] as number) - share / (held[period] as number));
      influences[cell] = (influences[cell] as number) + sign * added;
    }
  });
  return { logFactors, influences };
}

/** Records by period and third, of each taxon and of all, weighted by the chance of their visit to be kept. */
interface RecordCounts {
  /** At (period × taxa + taxon) × 36 + third. */
  taxa: Float64Array;
  /** At period × 36 + third. */
  group: Float64Array;
  all: readonly number[];
  size: number;
}

interface TaxonSums {
  /** Records of the taxon in each period. */
  crude: readonly number[];
  /** The same with each third weighted by the other period's share of the group's records in it. */
  held: readonly number[];
}

function countRecords(
  { periods, thirds, starts, taxa }: GroupVisits,
  weights: Float64Array,
  pair: readonly number[],
  size: number,
): RecordCounts {
  const [ofTaxa, group] = [new Float64Array(2 * size * 36), new Float64Array(2 * 36)];
  weights.forEach((weight, visit) => {
    const period = pair.indexOf(periods[visit] as number);
    if (period < 0 || weight === 0) return;
    const third = thirds[visit] as number;
    for (let at = starts[visit] as number; at < (starts[visit + 1] as number); at++) {
      const cell = (period * size + (taxa[at] as number)) * 36 + third;
      ofTaxa[cell] = (ofTaxa[cell] as number) + weight;
      group[period * 36 + third] = (group[period * 36 + third] as number) + weight;
    }
  });
  const all = [0, 1].map((period) => group.subarray(period * 36, (period + 1) * 36).reduce((sum, n) => sum + n, 0));
  return { taxa: ofTaxa, group, all, size };
}

/** The other period's share of the group's records in a third of a month. */
function shareOfOther({ group }: RecordCounts, period: number, third: number): number {
  const [own, other] = [group[period * 36 + third] as number, group[(1 - period) * 36 + third] as number];
  return other / (own + other);
}

function sumsOf(counts: RecordCounts, taxon: number): TaxonSums {
  const sums = [0, 1].map((period) => {
    let [crude, held] = [0, 0];
    for (let third = 0; third < 36; third++) {
      const records = counts.taxa[(period * counts.size + taxon) * 36 + third] as number;
      if (records === 0) continue;
      crude += records;
      held += records * shareOfOther(counts, period, third);
    }
    return { crude, held };
  });
  return { crude: sums.map(({ crude }) => crude), held: sums.map(({ held }) => held) };
}
