import { quantiles } from "../statistics/quantile.ts";
import { theilSen } from "../statistics/theil-sen.ts";
import { type Shift, type ShiftInput, silentShift, tooFewYears, yearsEnough } from "./shift.ts";

const LINE = { method: "yearly_medians", share: 0.5, adjusted: false } as const;

/**
 * How the medians of the years moved, nothing allowed for: it is shown beside the adjusted lines, and moves with where
 * people record, which castes they state and when they go out.
 *
 * @example shiftAsRecorded({ rows, rules }).shift // => −0.4 days a decade
 */
export function shiftAsRecorded({ rows, rules }: Pick<ShiftInput, "rows" | "rules">): Shift {
  const years = yearsEnough(rows, rules.minimum_records_a_year);
  const n = rows.reduce((sum, { visits }) => sum + visits, 0);
  const few = tooFewYears(years, rules);
  if (few !== "") return silentShift(LINE, few, years, n);
  const byYear = Map.groupBy(rows, ({ season_year }) => season_year);
  const line = theilSen(
    years,
    years.map((year) => medianDay(byYear.get(year) ?? [])),
  );
  if (line?.low == null || line.high === null) return silentShift(LINE, "its interval has no end", years, n);
  const [shift, low, high] = [10 * line.slope, 10 * line.low, 10 * line.high];
  const [first_year, last_year] = [years[0] ?? null, years.at(-1) ?? null];
  return { ...LINE, first_year, last_year, years: years.length, n, shift, low, high, judged: true, reason: "" };
}

function medianDay(rows: ShiftInput["rows"]): number {
  const sorted = rows.toSorted((a, b) => a.season_day - b.season_day);
  const sample = { values: sorted.map(({ season_day }) => season_day), weights: sorted.map(({ visits }) => visits) };
  return quantiles(sample, [0.5])[0] as number;
}
