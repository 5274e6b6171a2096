import { scaleLinear } from "d3-scale";
import type { SeriesRow } from "../../../publishing/contracts.ts";
import { figured } from "./figure-words.ts";

/** One point of a series, in per cent of the chart's width and height. */
export interface SeriesMark {
  readonly time: string;
  readonly x: number;
  /** Undefined where there is no figure: the place is dotted. */
  readonly at: number | undefined;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly provisional: boolean;
}

/** A series drawn: its marks, and values and times to name. */
export interface SeriesChart {
  readonly marks: readonly SeriesMark[];
  readonly values: readonly { readonly label: string; readonly y: number }[];
  readonly times: readonly { readonly label: string; readonly x: number }[];
}

const TOP = 4;
const BOTTOM = 96;

/**
 * Places of a series of one method by one unit of time. Years stand at their distance, gaps included; periods one beside
 * the other. The scale of values begins at 0 where no interval goes below.
 *
 * @param rows in the order of time
 * @param labels of the periods, by id; a year is its own label
 * @returns undefined without a figure
 * @example seriesChart([], new Map()) // => undefined
 */
export function seriesChart(rows: readonly SeriesRow[], labels: ReadonlyMap<string, string>): SeriesChart | undefined {
  const values = rows.flatMap(({ estimate, low, high }) => [estimate, low, high]).filter((value) => value !== null);
  if (values.length === 0) return undefined;
  const y = scaleLinear([Math.min(0, ...values), Math.max(...values, Number.MIN_VALUE)], [BOTTOM, TOP]).nice(4);
  const byYear = rows.every(({ unit }) => unit === "year");
  const years = rows.map(({ time }) => Number(time));
  const [first, last] = byYear ? [Math.min(...years), Math.max(...years)] : [0, rows.length - 1];
  const x = scaleLinear([first - 0.5, last + 0.5], [0, 100]);
  const place = (value: number | null) => (value === null ? undefined : short(y(value)));
  const marks = rows.map(({ time, estimate, low, high, provisional }, index) => ({
    time,
    x: short(x(byYear ? Number(time) : index)),
    at: place(estimate),
    low: place(low),
    high: place(high),
    provisional,
  }));
  const ticks = y.ticks(4);
  const decimals = Math.max(0, -Math.floor(Math.log10(Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0)) || 1)));
  return {
    marks,
    values: ticks.map((value) => ({ label: figured(value, Math.min(3, decimals)), y: short(y(value)) })),
    times: byYear
      ? x
          .ticks(5)
          .filter((year) => Number.isInteger(year) && year >= first && year <= last)
          .map((year) => ({ label: String(year), x: short(x(year)) }))
      : rows.map(({ time }, index) => ({ label: labels.get(time) ?? time, x: short(x(index)) })),
  };
}

function short(number: number): number {
  return Math.round(number * 10) / 10;
}
