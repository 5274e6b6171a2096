import { scaleLinear } from "d3-scale";
import type { Period } from "../../../publishing/contracts.ts";
import { barPath, stepPath } from "./bar-path.ts";

/** Height of a chart of years in its own units. */
export const YEARS_HEIGHT = 100;

/** Path data of a chart of years, in a box as wide as it has years and 100 high. */
export interface YearChart {
  readonly first: number;
  readonly last: number;
  readonly bars: string;
  readonly provisional: string;
  readonly effortArea: string;
  readonly effortLine: string;
}

interface YearRow {
  readonly year: number;
  readonly records: number;
}

/**
 * Bars of records by year over a step of visits, each on a scale of its own. A year without a row has none.
 *
 * @param years records by year, any order
 * @param effort visits to the whole group by year
 * @param provisional years that are not complete, drawn open
 * @returns undefined without records
 * @example yearChart([{ year: 2000, records: 4 }], [], [])?.bars // "M0.15 100V4h.7V100z"
 */
export function yearChart(
  years: readonly YearRow[],
  effort: readonly { year: number; visits: number }[],
  provisional: readonly number[],
): YearChart | undefined {
  const recorded = years.filter(({ records }) => records > 0);
  if (recorded.length === 0) return undefined;
  const known = [
    ...recorded.map(({ year }) => year),
    ...effort.filter(({ visits }) => visits > 0).map(({ year }) => year),
  ];
  const [first, last] = [Math.min(...known), Math.max(...known)];
  const all = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const records = all.map((year) => years.find((row) => row.year === year)?.records ?? 0);
  const visits = all.map((year) => effort.find((row) => row.year === year)?.visits ?? 0);
  const yRecords = scaleLinear([0, Math.max(1, ...records)], [YEARS_HEIGHT, 4]);
  const yVisits = scaleLinear([0, Math.max(1, ...visits)], [YEARS_HEIGHT, 4]);
  const top = (index: number) => ((records[index] ?? 0) > 0 ? short(yRecords(records[index] ?? 0)) : undefined);
  const drawn = (open: boolean) =>
    barPath(
      all.map((year, index) => (provisional.includes(year) === open ? top(index) : undefined)),
      YEARS_HEIGHT,
    );
  const step = stepPath(visits.map((number) => short(yVisits(number))));
  return {
    first,
    last,
    bars: drawn(false),
    provisional: drawn(true),
    effortArea: `M0 ${YEARS_HEIGHT}${step}V${YEARS_HEIGHT}z`,
    effortLine: `M0 ${short(yVisits(visits[0] ?? 0))}${step}`,
  };
}

/** A bracket under the years: positions in per cent of the chart's width. */
export interface Bracket {
  readonly from: number;
  readonly to: number;
  readonly label: string;
  readonly used: boolean;
  readonly records: number;
}

/**
 * Brackets for the periods, and thin ones for the years outside every period. A period open at the left counts the years
 * before the first drawn too.
 *
 * @param chart first and last year
 * @param periods of the atlas, in order
 * @param years records by year
 * @example brackets({ first: 1990, last: 2009 }, [{ id: "a", label: "1990–1999", from: 1990, to: 1999 }], []).map(({ from, to }) => [from, to]) // [[0, 50], [50, 100]]
 */
export function brackets(
  { first, last }: Pick<YearChart, "first" | "last">,
  periods: readonly Period[],
  years: readonly YearRow[],
): Bracket[] {
  const width = last - first + 1;
  const made: Bracket[] = [];
  const add = (from: number, to: number, used: boolean, label: string, counted = from) => {
    if (to < from) return;
    const records = years
      .filter(({ year }) => year >= counted && year <= to)
      .reduce((sum, row) => sum + row.records, 0);
    made.push({ from: (100 * (from - first)) / width, to: (100 * (to + 1 - first)) / width, used, label, records });
  };
  let next = first;
  for (const period of periods) {
    const from = Math.max(first, period.from ?? first);
    const to = Math.min(last, period.to);
    if (to < from) continue;
    add(next, from - 1, false, spanned(next, from - 1));
    add(from, to, true, period.label, period.from === null ? Number.NEGATIVE_INFINITY : from);
    next = to + 1;
  }
  add(next, last, false, spanned(next, last));
  return made;
}

function spanned(from: number, to: number): string {
  return from === to ? String(from) : `${from}–${to}`;
}

/** One decimal is finer than a pixel. */
function short(number: number): string {
  return String(Math.round(number * 10) / 10);
}

/** Years drawn before the first period, so that the periods keep room. */
const YEARS_BEFORE = 20;

/**
 * The first year a chart draws: twenty years before the first period that has a beginning.
 *
 * @param periods of the atlas, in order
 * @returns −Infinity where no period begins
 * @example firstDrawn([{ id: "p1", label: "1990–2005", from: 1990, to: 2005 }]) // 1970
 */
export function firstDrawn(periods: readonly Period[]): number {
  const starts = periods.flatMap(({ from }) => (from === null ? [] : [from]));
  return starts.length === 0 ? -Infinity : Math.min(...starts) - YEARS_BEFORE;
}
