import type { Database } from "../../../engine/database.ts";
import type { Scheme } from "../../../scheme/scheme.ts";
import { type GroupEvidence, readGroup, readGroupVisits } from "../group-evidence.ts";
import { type GroupFigure, trendsOfGroup, whyTooSmall } from "../group-trend.ts";
import { type Presence, squaresOfTaxa } from "../presence.ts";
import type { SeriesPoint, TellChange, Trend } from "../trend.ts";
import { type ChangeOfTaxon, changeAtEqualEffort } from "./change-at-equal-effort.ts";
import { type LocalFrequencies, localFrequencies } from "./local-frequencies.ts";
import { neighbourhoods } from "./neighbourhoods.ts";

type Minimums = Scheme["settings"]["change"]["local_frequency"];
type Pair = readonly [from: number, to: number];

/**
 * Change of the time factor of the taxa of the group between periods, in %, against the mean of the group, by frequencies
 * in neighbourhoods of 10 km squares at equal effort; see `changeAtEqualEffort`. The series gives the time factor of each
 * period, in % of that in the earlier of the compared periods.
 *
 * @example (await tellLocalFrequency({ database, scheme, set, pairs })).trends[0]?.reason // => "group too small: 22 taxa, 50 are needed"
 */
export const tellLocalFrequency: TellChange = async ({ database, scheme, set, pairs }) => {
  const { checklist, settings, taxa } = scheme;
  const minimums = settings.change.local_frequency;
  const group = await readGroup(database, settings.periods.length);
  const ids = taxa.map(({ taxonID }) => taxonID);
  const aggregates = new Set(ids.flatMap((id) => checklist.ancestors(id)));
  const change = await changesOfGroup(database, group, minimums);
  const told = new Map<string, Trend[]>();
  const tell = (pair: Pair): Trend[] => {
    const known = told.get(pair.join());
    if (known !== undefined) return known;
    const figures = figuresOf(group.presence, pair, change(pair), minimums);
    const [from_period, to_period] = pair;
    const trends = trendsOfGroup(ids, aggregates, figures, {
      method: "local_frequency",
      evidence_set: set.id,
      from_period,
      to_period,
    });
    told.set(pair.join(), trends);
    return trends;
  };
  const trends = pairs.flatMap(tell);
  const reference = pairs[0]?.[0];
  const isKept = set.id === "main" && reference !== undefined;
  return { trends, series: isKept ? seriesAgainst(reference, settings.periods.length, tell) : [] };
};

/** Works out changes between two periods; in words why not, where the group does not allow it. */
async function changesOfGroup(
  database: Database,
  { presence, positions }: GroupEvidence,
  minimums: Minimums,
): Promise<(pair: Pair) => { changes: ChangeOfTaxon[]; squares: number } | string> {
  const small = whyTooSmall(presence.taxa.length, minimums.minimum_taxa);
  if (small !== "") return () => small;
  const local = localFrequencies(presence, neighbourhoods(positions, presence, minimums), minimums);
  const benchmarks = meanBenchmarks(local, presence.squares.length);
  if (benchmarks < minimums.minimum_benchmarks)
    return () =>
      `too few benchmark taxa: ${benchmarks.toFixed(1)} a square in the mean, ${minimums.minimum_benchmarks} are needed`;
  const visits = await readGroupVisits(database, presence);
  const sizes = { squares: presence.squares.length, taxa: presence.taxa.length };
  const fewest = Math.ceil(minimums.minimum_taxa / 2);
  return (pair) => {
    const told = changeAtEqualEffort(local.frequencies, visits, pair, {
      ...sizes,
      minimumSquares: minimums.minimum_squares,
    });
    const known = told.changes.filter(({ change }) => change !== null).length;
    // Each is set against their mean: of a handful the mean would be mostly the taxon itself.
    return known < fewest ? `too few taxa with squares enough at equal effort: ${known}, ${fewest} are needed` : told;
  };
}

function meanBenchmarks({ benchmarks }: LocalFrequencies, squares: number): number {
  return benchmarks.reduce((sum, one) => sum + one, 0) / Math.max(1, squares);
}

function figuresOf(
  presence: Presence,
  pair: Pair,
  told: { changes: ChangeOfTaxon[]; squares: number } | string,
  minimums: Minimums,
): Map<string, GroupFigure> {
  const counts = squaresOfTaxa(presence);
  return new Map(
    presence.taxa.map((id, taxon) => {
      const [n_from = 0, n_to = 0] = pair.map((period) => counts[period * presence.taxa.length + taxon] as number);
      if (typeof told === "string") return [id, { n_from, n_to, n: 0, figure: null, reason: told }];
      const { change, ...squares } = told.changes[taxon] as ChangeOfTaxon;
      return [
        id,
        {
          n_from,
          n_to,
          n: told.squares,
          figure: change && {
            estimate: 100 * Math.expm1(change.estimate),
            low: 100 * Math.expm1(change.low),
            high: 100 * Math.expm1(change.high),
          },
          reason: change === null ? whyNone(squares, [n_from, n_to], minimums) : "",
        },
      ];
    }),
  );
}

function whyNone(
  { from, to }: Omit<ChangeOfTaxon, "change">,
  [recordedFrom, recordedTo]: readonly [number, number],
  { minimum_squares }: Minimums,
): string {
  if (recordedFrom === 0)
    return recordedTo === 0 ? "no square in either period" : "it is a newcomer: no square in the earlier period";
  const both = from + to;
  if (both < minimum_squares)
    return `${Math.floor(both)} ${Math.floor(both) === 1 ? "square" : "squares"} at equal effort in the two periods together, ${minimum_squares} are needed`;
  if (from === 0) return "no square at equal effort in the earlier period";
  return to === 0 ? "no square at equal effort in the later period" : "recorded in every square compared";
}

/** The time factor of each period against that of one of them; of taxa with no such change in any period there is none. */
function seriesAgainst(reference: number, periods: number, tell: (pair: Pair) => Trend[]): SeriesPoint[] {
  const others = Array.from({ length: periods }, (_, period) => period).filter((period) => period !== reference);
  const trends = others.flatMap((period) => tell([reference, period]));
  const point = ({ taxon_id }: Trend, time: number, n: number): SeriesPoint => ({
    taxon_id,
    method: "local_frequency",
    unit: "period",
    time,
    n,
    estimate: null,
    low: null,
    high: null,
    // Provisional years are no part of the set this is told from.
    provisional: false,
  });
  const told = trends
    .filter(({ judged }) => judged)
    .flatMap((trend) => [
      { ...point(trend, reference, trend.n_from), estimate: 100 },
      {
        ...point(trend, trend.to_period, trend.n_to),
        estimate: 100 + (trend.estimate as number),
        low: 100 + (trend.low as number),
        high: 100 + (trend.high as number),
      },
    ]);
  return [...new Map(told.map((one) => [`${one.taxon_id} ${one.time}`, one])).values()];
}
