import jStat from "jstat";
import { quantiles } from "../statistics/quantile.ts";
import { fitQuantile } from "../statistics/quantile-regression.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { theilSen } from "../statistics/theil-sen.ts";
import { recordingWindow } from "./recording-window.ts";
import { type Shift, type ShiftInput, silentShift, tooFewYears, yearsEnough } from "./shift.ts";
import { ofEnoughLevels, type ShiftDesign, shiftDesign } from "./shift-design.ts";

const SHARES = [0.1, 0.5, 0.9] as const;
const MEDIANS = { method: "yearly_medians", share: 0.5, adjusted: true } as const;
/** Draws of years from which the standard error is taken. */
const DRAWS = 200;
/** Share of the visits without a latitude, and outside the thirds of a month that all years cover, up to which a shift is told. */
const MOST_LEFT_OUT = 0.2;
/** Share of the year's variance up to which it may go along with latitude, territory and caste. */
const MOST_ENTANGLED = 0.8;

/**
 * How a season moved once latitude, territory, caste and the season of recording are allowed for: the quantile regression
 * of the day on the year at 10, 50 and 90 %, and the median slope through the years' medians after taking out what the
 * regression found of latitude, territory and caste. The sampling unit is the year, for all that is about in one year
 * shares its weather: the standard error is that of draws of whole years (Hagemann 2017, J. Am. Stat. Assoc. 112:446–456,
 * on why clusters must be drawn whole), the interval takes Student's distribution with two fewer degrees than years.
 *
 * @returns four lines, each silent with its reason where it cannot be told
 * @example tellShift({ rows, groupVisits, rules, name: "season/a/queen" })[1]?.shift // => −2.1 days a decade
 */
export function tellShift({ rows, groupVisits, rules, name }: ShiftInput): Shift[] {
  const lines = [MEDIANS, ...SHARES.map((share) => ({ method: "regression", share, adjusted: true }) as const)];
  const silent = (reason: string, years: readonly number[], n: number) =>
    lines.map((line) => silentShift(line, reason, years, n));
  const all = rows.reduce((sum, { visits }) => sum + visits, 0);
  const some = yearsEnough(rows, rules.minimum_records_a_year);
  const few = tooFewYears(some, rules);
  if (few !== "") return silent(few, some, all);
  const placed = rows.filter(({ band }) => band !== null);
  const withPlace = placed.reduce((sum, { visits }) => sum + visits, 0);
  if (withPlace < (1 - MOST_LEFT_OUT) * all)
    return silent(`${all - withPlace} of ${all} visits have no 10 km square to tell their latitude`, some, all);
  const window = recordingWindow(placed, some, groupVisits, rules.minimum_visits);
  if (window.outside > MOST_LEFT_OUT)
    return silent(
      `${Math.round(100 * window.outside)} % of its visits fall in thirds of a month that were visited fewer than ${rules.minimum_visits} times in some of the years`,
      some,
      all,
    );
  const within = ofEnoughLevels(
    placed.filter(({ season_year, season_day }) => window.weight(season_year, season_day) > 0),
  );
  const years = yearsEnough(within, rules.minimum_records_a_year);
  const design = shiftDesign(within, years, window);
  const { n, entangled } = design;
  const still = tooFewYears(years, rules);
  if (still !== "") return silent(still, years, n);
  if (entangled > MOST_ENTANGLED)
    return silent("latitude, territory or caste changed with the years, and cannot be told from them", years, n);
  return [yearlyMedians(design), ...SHARES.map((share) => regression(design, share, `${name}/${share}`))];
}

function regression(design: ShiftDesign, share: number, name: string): Shift {
  const { cells, years, n } = design;
  const fit = fitQuantile(cells, share);
  const random = seededRandom(name);
  const drawn = Array.from({ length: DRAWS }, () => {
    const weights = new Float64Array(years.length);
    for (let i = 0; i < years.length; i += 1) {
      const year = Math.floor(random() * years.length);
      weights[year] = (weights[year] as number) + 1;
    }
    return fitQuantile(cells, share, { weights, from: fit, tolerance: 1e-4 })[1] as number;
  });
  const mean = drawn.reduce((sum, slope) => sum + slope, 0) / DRAWS;
  const error = Math.sqrt(drawn.reduce((sum, slope) => sum + (slope - mean) ** 2, 0) / (DRAWS - 1));
  const half = error * jStat.studentt.inv(0.975, years.length - 2);
  const shift = fit[1] as number;
  return told({ method: "regression", share, adjusted: true }, design, [shift, shift - half, shift + half], n);
}

/** Median slope through the years' medians, of days as they would be at the middle latitude and the commonest caste. */
function yearlyMedians(design: ShiftDesign): Shift {
  const { cells, years, n } = design;
  const fit = fitQuantile(cells, 0.5);
  const days = years.map((): [day: number, weight: number][] => []);
  for (let cell = 0; cell < cells.first.length; cell += 1) {
    let allowed = 0;
    for (let j = 2; j < cells.size; j += 1)
      allowed += (fit[j] as number) * (cells.covariates[cell * cells.size + j] as number);
    const begin = cells.start[cell] as number;
    for (let at = begin; at < (cells.start[cell + 1] as number); at += 1) {
      const weight = (cells.totals[at] as number) - (at === begin ? 0 : (cells.totals[at - 1] as number));
      if (weight > 0)
        days[cells.cluster[cell] as number]?.push([(cells.first[cell] as number) + at - begin - allowed, weight]);
    }
  }
  const medians = days.map((own) => weightedMedian(own));
  const line = theilSen(years, medians);
  if (line?.low == null || line.high === null) return silentShift(MEDIANS, "its interval has no end", years, n);
  return told(MEDIANS, design, [10 * line.slope, 10 * line.low, 10 * line.high], n);
}

function weightedMedian(own: [day: number, weight: number][]): number {
  own.sort(([a, v], [b, w]) => a - b || v - w);
  const total = own.reduce((sum, [, weight]) => sum + weight, 0);
  // Scaled to the number of days they are: quantiles of type 8 need the size of the sample.
  const weights = own.map(([, weight]) => (weight * own.length) / total);
  return quantiles({ values: own.map(([day]) => day), weights }, [0.5])[0] as number;
}

function told(
  line: Pick<Shift, "method" | "share" | "adjusted">,
  { years }: ShiftDesign,
  [shift, low, high]: readonly [number, number, number],
  n: number,
): Shift {
  const [first_year, last_year] = [years[0] ?? null, years.at(-1) ?? null];
  return { ...line, first_year, last_year, years: years.length, n, shift, low, high, judged: true, reason: "" };
}
