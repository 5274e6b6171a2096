import type { Scheme } from "../../../scheme/scheme.ts";
import { readGroup } from "../group-evidence.ts";
import { type GroupFigure, trendsOfGroup, whyTooSmall } from "../group-trend.ts";
import { type Presence, squaresInBoth } from "../presence.ts";
import type { TellChange } from "../trend.ts";
import { relativeChange, type SquareCounts } from "./relative-change.ts";

type Minimums = Scheme["settings"]["change"]["relative"];

/**
 * The relative change index of the taxa of the group between periods, in standard deviations, from the 10 km squares with a
 * record of any of them in both periods; see `relativeChange`. It has no series: it belongs to a pair of periods.
 *
 * @example (await tellRelativeChange({ database, scheme, set, pairs })).trends[0]?.reason // => "group too small: 22 taxa with 5 squares or more in the earlier period, 30 are needed"
 */
export const tellRelativeChange: TellChange = async ({ database, scheme, set, pairs }) => {
  const { checklist, settings, taxa } = scheme;
  const { presence } = await readGroup(database, settings.periods.length);
  const ids = taxa.map(({ taxonID }) => taxonID);
  const aggregates = new Set(ids.flatMap((id) => checklist.ancestors(id)));
  const trends = pairs.flatMap((pair) =>
    trendsOfGroup(ids, aggregates, indicesOf(presence, pair, settings.change.relative), {
      method: "relative_change",
      evidence_set: set.id,
      from_period: pair[0],
      to_period: pair[1],
    }),
  );
  return { trends, series: [] };
};

function indicesOf(
  presence: Presence,
  pair: readonly [from: number, to: number],
  minimums: Minimums,
): Map<string, GroupFigure> {
  const squares = squaresInBoth(presence, ...pair);
  const counts = presence.taxa.map((_, taxon): SquareCounts => {
    const [from = 0, to = 0] = pair.map((period) =>
      squares.reduce((sum, square) => sum + recordedIn(presence, period, square, taxon), 0),
    );
    return { from, to };
  });
  const enough = counts.filter(({ from }) => from >= minimums.minimum_squares).length;
  const small = whyTooSmall(enough, minimums.minimum_taxa).replace(
    ",",
    ` with ${minimums.minimum_squares} squares or more in the earlier period,`,
  );
  const index = small === "" ? relativeChange(counts, squares.length, minimums) : null;
  return new Map(
    presence.taxa.map((id, taxon) => {
      const { from, to } = counts[taxon] as SquareCounts;
      const estimate = index?.indices[taxon] ?? null;
      return [
        id,
        {
          n_from: from,
          n_to: to,
          n: squares.length,
          figure:
            index === null || estimate === null
              ? null
              : { estimate, low: estimate - index.reach, high: estimate + index.reach },
          reason: small || whyNone(from, minimums) || "all taxa of the group are equally common",
        },
      ];
    }),
  );
}

function recordedIn({ taxa, squares, recorded }: Presence, period: number, square: number, taxon: number): number {
  return recorded[(period * squares.length + square) * taxa.length + taxon] as number;
}

function whyNone(from: number, { minimum_squares }: Minimums): string {
  if (from === 0) return "no square in the earlier period among those recorded in both";
  return from < minimum_squares
    ? `${from} ${from === 1 ? "square" : "squares"} in the earlier period, ${minimum_squares} are needed`
    : "";
}
