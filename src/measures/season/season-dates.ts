import { medianShares } from "../statistics/median-interval.ts";
import { quantiles } from "../statistics/quantile.ts";
import { THIRD_DAYS, thirdOfDay } from "./season-calendar.ts";

/** Shares of its records or visits by which dates of a season are given. */
export const SEASON_SHARES = [0.1, 0.25, 0.5, 0.75, 0.9] as const;

/**
 * What a date of a season is made from.
 * - `records`: every record
 * - `visits`: every visit once, however many records it left
 * - `even_visits`: visits weighed as though every day of the year had been visited equally often: a visit counts for the
 *   days of its third of a month over the visits anybody made in it
 */
export const SEASON_BASES = ["records", "visits", "even_visits"] as const;
export type SeasonBasis = (typeof SEASON_BASES)[number];

/** What one day of the season holds, of all years; squares are summed over dates, which are the clusters. */
export interface SeasonDay {
  readonly day: number;
  readonly records: number;
  readonly record_squares: number;
  readonly record_dates: number;
  readonly visits: number;
  readonly visit_squares: number;
  readonly visit_dates: number;
}

/** When a season may be told, and from what. */
export interface SeasonRules {
  readonly minimum_records: number;
  readonly minimum_visits: number;
  /** First day of the year of a season. */
  readonly firstDay: number;
  /** Visits to the whole group in each third of a month. */
  readonly groupVisits: ArrayLike<number>;
}

/** The dates of a season from one basis, or why there are none. */
export interface SeasonDates {
  readonly basis: SeasonBasis;
  /** Records or visits they rest on. */
  readonly n: number;
  /** Days of the year at the shares of SEASON_SHARES; above 365 in the next year. */
  readonly days: readonly number[] | null;
  /** 95 % interval of the median. */
  readonly low: number | null;
  readonly high: number | null;
  readonly reason: string;
}

/** Share of the visits that may lie where too few visits were made for an even weight. */
const MOST_OUTSIDE = 0.1;
/** Share of the records in the first and in the last 31 days above which a season has no beginning and no end there. */
const AROUND_NEW_YEAR = 0.05;

/**
 * Days by which a tenth, a quarter, half, three quarters and nine tenths were recorded, quantiles of type 8, from each
 * basis. A first and a last date are not among them: they move apart with the number of records alone. The interval of
 * the median takes dates as the sampling unit, for what is recorded on one day shares its weather.
 *
 * @param days in rising order
 * @returns one a basis, in the order of SEASON_BASES
 * @example seasonDates(days, rules)[1]?.days?.[2] // => 114.5, half of the visits by 24 April
 */
export function seasonDates(days: readonly SeasonDay[], rules: SeasonRules): SeasonDates[] {
  return SEASON_BASES.map((basis) => {
    const sample = sampleOf(days, basis, rules);
    const reason = silence(sample, basis, rules);
    if (reason !== "") return { basis, n: sample.n, days: null, low: null, high: null, reason };
    const [low, high] = medianShares(sample);
    const found = quantiles(sample, [...SEASON_SHARES, low, high]);
    return {
      basis,
      n: sample.n,
      days: found.slice(0, -2),
      low: found.at(-2) ?? null,
      high: found.at(-1) ?? null,
      reason,
    };
  });
}

interface Sample {
  readonly values: readonly number[];
  readonly weights: Float64Array;
  /** Rows in it, and rows it cannot weigh. */
  readonly n: number;
  readonly outside: number;
  readonly total: number;
  readonly squares: number;
  readonly clusters: number;
}

function sampleOf(days: readonly SeasonDay[], basis: SeasonBasis, rules: SeasonRules): Sample {
  const ofRecords = basis === "records";
  const counts = days.map((one) => (ofRecords ? one.records : one.visits));
  const times = days.map(({ day }) => (basis === "even_visits" ? evenWeight(day, rules) : 1));
  const kept = counts.map((count, i) => (times[i] === 0 ? 0 : count));
  const n = kept.reduce((sum, count) => sum + count, 0);
  const all = counts.reduce((sum, count) => sum + count, 0);
  const raw = kept.reduce((sum, count, i) => sum + count * (times[i] as number), 0);
  const scale = raw > 0 ? n / raw : 0;
  const sum = (of: (one: SeasonDay, scaled: number) => number) =>
    days.reduce((total, one, i) => total + of(one, scale * (times[i] as number)), 0);
  return {
    values: days.map(({ day }) => day),
    weights: Float64Array.from(kept, (count, i) => count * scale * (times[i] as number)),
    n,
    outside: all - n,
    total: n,
    squares: sum((one, scaled) => scaled ** 2 * (ofRecords ? one.record_squares : one.visit_squares)),
    clusters: sum((one, scaled) => (scaled === 0 ? 0 : ofRecords ? one.record_dates : one.visit_dates)),
  };
}

/** Days of the third over the visits anybody made in it; 0 where these are too few to weigh by. */
function evenWeight(day: number, { groupVisits, minimum_visits }: SeasonRules): number {
  const third = thirdOfDay(day);
  const visits = groupVisits[third] as number;
  return visits < Math.max(1, minimum_visits) ? 0 : (THIRD_DAYS[third] as number) / visits;
}

function silence({ values, weights, n, outside, total }: Sample, basis: SeasonBasis, rules: SeasonRules): string {
  const many = basis === "records" ? ["record", "records"] : ["visit", "visits"];
  if (n + outside < rules.minimum_records)
    return `${n + outside} ${n + outside === 1 ? many[0] : many[1]} dated to the day, where ${rules.minimum_records} are needed`;
  if (outside > MOST_OUTSIDE * (n + outside) || n < rules.minimum_records)
    return `${outside} of ${n + outside} visits fall in thirds of a month in which fewer than ${rules.minimum_visits} visits were made to anything of the group`;
  const within = (from: number, to: number) =>
    values.reduce((sum, day, i) => sum + (day >= from && day < to ? (weights[i] as number) : 0), 0);
  const { firstDay } = rules;
  const ends = [within(firstDay, firstDay + 31), within(firstDay + 334, firstDay + 365)];
  return ends.every((end) => end > AROUND_NEW_YEAR * total)
    ? "it is recorded on both sides of the day the year begins with (setting season.year_starts)"
    : "";
}
