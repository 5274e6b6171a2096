/** Visits of one taxon and caste on one day of the season in one year, in places alike. */
export interface SettledRow {
  readonly caste: string;
  readonly season_year: number;
  readonly season_day: number;
  readonly territory: string;
  /** Latitude in half degrees, rounded down; null where the place is not shown. */
  readonly band: number | null;
  readonly visits: number;
}

/** When a shift may be told. */
export interface ShiftRules {
  readonly minimum_years: number;
  readonly minimum_records_a_year: number;
}

/** A taxon's settled rows, and everyday visits to the whole group by year and third of the month. */
export interface ShiftInput {
  /** Of one caste, or of all that are stated. */
  readonly rows: readonly SettledRow[];
  readonly groupVisits: ReadonlyMap<number, ArrayLike<number>>;
  readonly rules: ShiftRules;
  /** Name of the stream of chance. */
  readonly name: string;
}

/**
 * The lines a shift is told by.
 * - `yearly_medians`: median slope (Theil–Sen) through the medians of the years
 * - `regression`: quantile regression of the day on the year
 */
export const SHIFT_METHODS = ["yearly_medians", "regression"] as const;
export type ShiftMethod = (typeof SHIFT_METHODS)[number];

/** What one method says of how a season moved. */
export interface Shift {
  readonly method: ShiftMethod;
  /** Share of the visits whose date is followed: 0.5 for the median. */
  readonly share: number;
  /** Whether latitude, territory, caste and the season of recording are allowed for. */
  readonly adjusted: boolean;
  readonly first_year: number | null;
  readonly last_year: number | null;
  readonly years: number;
  /** Visits it rests on. */
  readonly n: number;
  /** Days a decade, below 0 for earlier; null where the method is silent. */
  readonly shift: number | null;
  /** 95 % interval. */
  readonly low: number | null;
  readonly high: number | null;
  readonly judged: boolean;
  readonly reason: string;
}

/**
 * Years with visits enough, in order.
 *
 * @example yearsEnough([{ season_year: 2001, visits: 7, … }], 5) // => [2001]
 */
export function yearsEnough(rows: readonly Pick<SettledRow, "season_year" | "visits">[], fewest: number): number[] {
  const counts = new Map<number, number>();
  for (const { season_year, visits } of rows) counts.set(season_year, (counts.get(season_year) ?? 0) + visits);
  return [...counts].flatMap(([year, visits]) => (visits >= fewest ? [year] : [])).sort((a, b) => a - b);
}

/**
 * Why too few years do for a shift; empty where they are enough.
 *
 * @example tooFewYears([2001, 2002], rules) // => "2 years with 5 visits or more, where 10 are needed"
 */
export function tooFewYears(years: readonly number[], rules: ShiftRules): string {
  return years.length >= rules.minimum_years
    ? ""
    : `${years.length} ${years.length === 1 ? "year" : "years"} with ${rules.minimum_records_a_year} visits or more, where ${rules.minimum_years} are needed`;
}

/**
 * What every line of a silent method says.
 *
 * @example silentShift({ method: "regression", share: 0.5, adjusted: true }, "…").judged // => false
 */
export function silentShift(
  line: Pick<Shift, "method" | "share" | "adjusted">,
  reason: string,
  years: readonly number[] = [],
  n = 0,
): Shift {
  return {
    ...line,
    first_year: years[0] ?? null,
    last_year: years.at(-1) ?? null,
    ...{ years: years.length, n, shift: null, low: null, high: null, judged: false, reason },
  };
}
