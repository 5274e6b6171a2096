import type { SeriesRow, TrendMethod } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import type { Sentence } from "../text/sentences.ts";
import { figured } from "./figure-words.ts";
import { methodWords } from "./lines.ts";

const SHOWS = {
  squares_compared: "figures.shows-squares",
  local_frequency: "figures.shows-local",
  reporting_rate: "figures.shows-reporting",
  relative_change: "figures.shows-relative",
} as const;

/**
 * What a method's series shows, as a caption begins, with its unit.
 *
 * @example seriesShows("squares_compared") // => "Squares with it, as % of those covered"
 */
export function seriesShows(method: TrendMethod): string {
  return say(SHOWS[method]);
}

/**
 * Why a series has no figure at some time, in words that end a sentence after a colon. Where every list names it, or the lists
 * of a time differ too little, there is no rate either, however many there are.
 *
 * @example whyNoPoint("squares_compared") // => "too few squares"
 */
export function whyNoPoint(method: TrendMethod): string {
  return say(methodWords(method).counts === "list" ? "figures.no-point-lists" : "figures.no-point-squares");
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
  if (years.length === 0) return series.length === 0 ? "" : say("figures.series-periods");
  if (told.length === years.length) return say("figures.series-all", { n: years.length });
  return say("figures.series-some", { told: told.length, all: years.length });
}
