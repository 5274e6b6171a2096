import type { SeriesRow, TrendMethod } from "../../../publishing/contracts.ts";
import type { Sentence } from "../text/sentences.ts";
import { figured } from "./figure-words.ts";
import { METHOD_WORDS } from "./lines.ts";

/** What each method's series shows, as a caption begins, with its unit. */
export const SERIES_WORDS: Readonly<Record<TrendMethod, string>> = {
  squares_compared: "Squares with it, as % of those covered",
  local_frequency:
    "Time factor at equal effort, % of that of the earlier compared period, against the mean of the group",
  reporting_rate: "Share of complete lists that name it, %, at equal list length and season",
  relative_change: "Squares against the group’s, in standard deviations",
};

/**
 * Why a series has no figure at some time, in words that end a sentence after a colon. Where every list names it, or the lists
 * of a time differ too little, there is no rate either, however many there are.
 *
 * @example whyNoPoint("squares_compared") // => "too few squares"
 */
export function whyNoPoint(method: TrendMethod): string {
  return METHOD_WORDS[method].counts === "list" ? "too few lists, or too much alike" : "too few squares";
}

/** One series: a method by year or by period. */
export interface Series {
  readonly method: TrendMethod;
  readonly unit: SeriesRow["unit"];
  readonly rows: readonly SeriesRow[];
}

/**
 * The series among some points, in the points' order; those without any figure are left out.
 *
 * @example seriesOf([]) // => []
 */
export function seriesOf(rows: readonly SeriesRow[]): Series[] {
  const groups = Map.groupBy(rows, ({ method, unit }) => `${method}/${unit}`);
  return [...groups.values()].flatMap((own) => {
    const [first] = own;
    if (first === undefined || own.every(({ estimate }) => estimate === null)) return [];
    return [{ method: first.method, unit: first.unit, rows: own }];
  });
}

/**
 * A figure of a series: three figures that count, whatever its unit.
 *
 * @example seriesNumber(23.456) // => "23.5"
 */
export function seriesNumber(number: number): string {
  const size = Math.abs(number);
  return figured(number, size >= 100 ? 0 : size >= 10 ? 1 : 2);
}

/**
 * What the series by year rest on, in a sentence.
 *
 * @example seriesSentence([]) // => ""
 */
export function seriesSentence(series: readonly Series[]): Sentence {
  const years = series.find(({ unit }) => unit === "year")?.rows ?? [];
  const told = years.filter(({ estimate }) => estimate !== null);
  if (years.length === 0) return series.length === 0 ? "" : "Period by period, each with its 95 % interval.";
  if (told.length === years.length)
    return `${years.length === 1 ? "The **one year** has" : `All **${years.length} years** have`} enough to say.`;
  return `**${told.length} of ${years.length} years** ${told.length === 1 ? "has" : "have"} enough to say; the others are dotted.`;
}
