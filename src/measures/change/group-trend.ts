import type { Trend, TrendMethod } from "./trend.ts";

/** What a method set against the group says of one of its taxa between two periods. */
export interface GroupFigure extends Pick<Trend, "n_from" | "n_to" | "n"> {
  /** Null where `reason` says why there is none. */
  figure: Pick<Trend, "low" | "high" | "estimate"> | null;
  reason: string;
}

/** What all trends of a pair of periods have in common. */
export interface PairOfTrends {
  method: TrendMethod;
  evidence_set: string;
  from_period: number;
  to_period: number;
}

/**
 * The trend of every listed taxon from what a method says of those of the group. Aggregates are no part of the group, and
 * a taxon that is in neither was recorded in no square.
 *
 * @param aggregates taxa that hold others of the list
 * @example trendsOfGroup(["a agg."], new Set(["a agg."]), new Map(), pair)[0]?.reason // => "a group is not set against its own members"
 */
export function trendsOfGroup(
  taxonIds: readonly string[],
  aggregates: ReadonlySet<string>,
  figures: ReadonlyMap<string, GroupFigure>,
  pair: PairOfTrends,
): Trend[] {
  return taxonIds.map((taxon_id) => {
    const told = figures.get(taxon_id) ?? {
      n_from: 0,
      n_to: 0,
      n: 0,
      figure: null,
      reason: "no square in either period",
    };
    const isAggregate = aggregates.has(taxon_id);
    const figure = isAggregate ? null : told.figure;
    return {
      taxon_id,
      ...pair,
      n_from: told.n_from,
      n_to: told.n_to,
      n: told.n,
      estimate: figure?.estimate ?? null,
      low: figure?.low ?? null,
      high: figure?.high ?? null,
      judged: figure !== null,
      reason: isAggregate ? "a group is not set against its own members" : figure === null ? told.reason : "",
    };
  });
}

/**
 * Why a group is too small, in words that end a sentence.
 *
 * @returns empty where it is not
 * @example whyTooSmall(22, 50) // => "group too small: 22 taxa, 50 are needed"
 */
export function whyTooSmall(taxa: number, needed: number): string {
  return taxa >= needed ? "" : `group too small: ${taxa} ${taxa === 1 ? "taxon" : "taxa"}, ${needed} are needed`;
}
