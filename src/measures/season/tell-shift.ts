import { theilSen } from "../statistics/theil-sen.ts";
import { FEWEST_TOGETHER, type RecordingWindow, recordingWindow } from "./recording-window.ts";
import { type Shift, type ShiftInput, silentShift, tooFewYears, yearsEnough } from "./shift.ts";
import { ofEnoughLevels, type ShiftDesign, shiftDesign } from "./shift-design.ts";
import { fitWithDraws, halfWidth, mediansAllowedFor, type ShiftFit } from "./shift-fit.ts";

const SHARES = [0.1, 0.5, 0.9] as const;
const MEDIANS = { method: "yearly_medians", share: 0.5, adjusted: true } as const;
/** Share of the visits without a latitude up to which a shift is told. */
const MOST_WITHOUT_PLACE = 0.2;
/** Share of the visits outside the thirds of a month that all years cover, up to which nothing is cut off worth the name. */
const MOST_OUTSIDE = 0.02;
/** Share of the year's variance up to which it may go along with latitude, territory and caste. */
const MOST_ENTANGLED = 0.8;

/**
 * How a season moved once latitude, territory, caste and the season of recording are allowed for: the quantile regression
 * of the day on the year at 10, 50 and 90 %, and the median slope through the years' medians after taking out what the
 * regression found of latitude, territory and caste. The sampling unit is the year, for all that is about in one year
 * shares its weather: the standard error is that of draws of whole years, the interval takes Student's distribution with two fewer degrees than years.
 *
 * Early years in which too little of the season was visited are left out.
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
  if (withPlace < (1 - MOST_WITHOUT_PLACE) * all)
    return silent(`${all - withPlace} of ${all} visits have no 10 km square to tell their latitude`, some, all);
  const { window, kept } = workableWindow(placed, some, groupVisits, rules);
  if (window.outside > MOST_OUTSIDE)
    return silent(
      `even in the last ${kept.length} years ${Math.round(100 * window.outside)} % of its visits fall in thirds of a month that were visited fewer than ${FEWEST_TOGETHER} times in some of them`,
      kept,
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
  const fits = SHARES.map((share) => fitWithDraws(design, share, name));
  return [
    yearlyMedians(design, fits[SHARES.indexOf(MEDIANS.share)] as ShiftFit),
    ...SHARES.map((share, i) => regression(design, share, fits[i] as ShiftFit)),
  ];
}

/** Leaves out the earliest years, one by one, until the rest were visited all through the season; they may not suffice. */
function workableWindow(
  rows: ShiftInput["rows"],
  years: readonly number[],
  groupVisits: ShiftInput["groupVisits"],
  { minimum_years }: ShiftInput["rules"],
): { window: RecordingWindow; kept: readonly number[] } {
  for (let from = 0; ; from += 1) {
    const kept = years.slice(from);
    const window = recordingWindow(rows, kept, groupVisits);
    if (window.outside <= MOST_OUTSIDE || kept.length <= minimum_years) return { window, kept };
  }
}

function regression(design: ShiftDesign, share: number, fit: ShiftFit): Shift {
  const shift = fit.effects[1] as number;
  const half = halfWidth(fit, design.years.length, ([, slope]) => slope as number);
  return told({ method: "regression", share, adjusted: true }, design, [shift, shift - half, shift + half]);
}

/**
 * Median slope through the years' medians, of days as they would be at the middle latitude and the commonest caste. Its
 * interval is wider than Sen's by what is not known of latitude, territory and caste, as far as these changed with the years.
 */
function yearlyMedians(design: ShiftDesign, fit: ShiftFit): Shift {
  const { years, n, drift } = design;
  const line = theilSen(years, mediansAllowedFor(design, fit.effects));
  if (line?.low == null || line.high === null) return silentShift(MEDIANS, "its interval has no end", years, n);
  const allowed = halfWidth(fit, years.length, (effects) =>
    drift.reduce((sum, slope, j) => sum + (j < 2 ? 0 : slope * (effects[j] as number)), 0),
  );
  const [shift, low, high] = [10 * line.slope, 10 * line.low, 10 * line.high];
  return told(MEDIANS, design, [
    shift,
    shift - Math.hypot(shift - low, allowed),
    shift + Math.hypot(high - shift, allowed),
  ]);
}

function told(
  line: Pick<Shift, "method" | "share" | "adjusted">,
  { years, n }: ShiftDesign,
  [shift, low, high]: readonly [number, number, number],
): Shift {
  const [first_year, last_year] = [years[0] ?? null, years.at(-1) ?? null];
  return { ...line, first_year, last_year, years: years.length, n, shift, low, high, judged: true, reason: "" };
}
