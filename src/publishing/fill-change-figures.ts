import type { Database } from "../engine/database.ts";
import { generalisationsOf, hiddenAt } from "../scheme/generalisations.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { type ChangeCounts, changeCounts } from "./change-counts.ts";
import { changeFigures, type JudgingRules } from "./change-rows.ts";

/** What the settings ask of a figure of change. */
export function judgingRules({ settings: { periods, coverage, change } }: Pick<Scheme, "settings">): JudgingRules {
  return {
    periods: periods.map(({ id }) => id),
    minimumVisits: coverage.minimum_visits,
    minimumComparable: change.minimum_comparable_squares,
    minimumTetradShare: change.minimum_tetrad_share,
  };
}

/**
 * Fills `change_figures` from `change_counts`: each row's net change and turnover with their intervals, or why they cannot
 * be judged, as the pages show them.
 */
export async function fillChangeFigures(database: Database, scheme: Scheme): Promise<void> {
  const rules = judgingRules(scheme);
  const rows = [...(await changeCounts(database))].flatMap(([taxon_id, counts]) => {
    const listed = generalisationsOf(scheme, taxon_id);
    return counts.map((row) => ({ taxon_id, ...row, ...changeFigures(row, rules, hiddenAt(row, listed)) }));
  });
  const columns = {
    taxon_id: "text",
    from_period: "integer",
    to_period: "integer",
    minimum_visits: "integer",
    resolution_m: "integer",
    territory: "text",
    comparable: "integer",
    net: "integer",
    net_percent: "double",
    interval_low: "integer",
    interval_high: "integer",
    turnover: "double",
    turnover_low: "double",
    turnover_high: "double",
    judged: "boolean",
    reason: "text",
  } as const satisfies Partial<Record<keyof (ChangeCounts & ReturnType<typeof changeFigures>) | "taxon_id", string>>;
  const filler = await database.fill("change_figures", columns);
  const names = Object.keys(columns) as (keyof typeof columns)[];
  filler.add(Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name])])));
  filler.done();
}
