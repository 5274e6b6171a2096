import type { MethodClaim, TrendMethod, TrendRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { change } from "./figure-words.ts";

/** Which way a line points: its interval lies above 0, below, or holds it; null where the method is silent. */
export type Direction = "more" | "fewer" | "none" | null;

/** What a method is called where its line is shown, and in what it is told. */
interface MethodWords {
  readonly name: string;
  readonly unit: "%" | "SD";
  /** Things its numbers count. */
  readonly counts: "square" | "list";
  /** Place on the methods page. */
  readonly anchor: string;
  readonly more: string;
  readonly fewer: string;
}

/** What each method is told in, and the keys of its words, in the order of the lines. */
const METHODS = {
  squares_compared: { unit: "%", counts: "square", anchor: "squares-compared", kind: "squares" },
  local_frequency: { unit: "%", counts: "square", anchor: "local-frequencies", kind: "relative" },
  reporting_rate: { unit: "%", counts: "list", anchor: "reporting-rate", kind: "lists" },
  // Said of every figure that is relative to the group: it says nothing of a decline that all share.
  relative_change: { unit: "SD", counts: "square", anchor: "change-relative-to-the-group", kind: "relative" },
} as const;

const NAMES = {
  squares_compared: "lines.squares-compared",
  local_frequency: "lines.local-frequencies",
  reporting_rate: "lines.reporting-rate",
  relative_change: "lines.relative-change",
} as const;

/** The methods of change in the order of their lines. */
export const TREND_METHODS = Object.keys(METHODS) as TrendMethod[];

/**
 * What a method is called and told in, in the language of the build.
 *
 * @example methodWords("reporting_rate").name // => "Reporting rate"
 */
export function methodWords(method: TrendMethod): MethodWords {
  const { unit, counts, anchor, kind } = METHODS[method];
  return {
    name: say(NAMES[method]),
    unit,
    counts,
    anchor,
    more: say(`lines.more-${kind}`),
    fewer: say(`lines.fewer-${kind}`),
  };
}

/** One method's answer for one pair of periods, as the panel shows it. */
export interface Line extends MethodWords {
  readonly method: TrendMethod;
  readonly trend: TrendRow;
  readonly direction: Direction;
  /** Whether the figure is shown to be corrected for recording. */
  readonly isCorrected: boolean;
  /** What is said of its correction for recording. */
  readonly correction: string;
}

/**
 * Which way a trend points.
 *
 * @example directionOf({ judged: true, low: -12, high: -3 }) // => "fewer"
 */
export function directionOf({ judged, low, high }: Pick<TrendRow, "judged" | "low" | "high">): Direction {
  if (!judged || low === null || high === null) return null;
  if (low > 0) return "more";
  return high < 0 ? "fewer" : "none";
}

/**
 * The lines of one pair of periods from one set of evidence, in the order they are shown.
 *
 * @param claims what each method may claim; one that is not among them is untested
 * @param set evidence set, `main` for the headline figures
 * @returns nothing in an atlas of one period
 * @example linesOf(trends, claims, ["p1", "p2"]).map(({ name }) => name)[0] // => "Squares compared"
 */
export function linesOf(
  trends: readonly TrendRow[],
  claims: readonly MethodClaim[],
  [from, to]: readonly [string, string],
  set = "main",
): Line[] {
  const own = trends.filter((row) => row.from_period === from && row.to_period === to && row.evidence_set === set);
  return TREND_METHODS.flatMap((method) => {
    const trend = own.find((row) => row.method === method);
    if (trend === undefined) return [];
    const isCorrected = claimOf(claims, method) === "kept";
    const correction = correctionOf(claims, method);
    return [{ ...methodWords(method), method, trend, direction: directionOf(trend), isCorrected, correction }];
  });
}

/**
 * What may be said of a method's correction for recording; untested where nothing is known of it.
 *
 * @example correctionOf([], "reporting_rate") // => "its correction for recording is untested"
 */
export function correctionOf(claims: readonly MethodClaim[], method: TrendMethod): string {
  return say(`lines.claim-${claimOf(claims, method)}`);
}

function claimOf(claims: readonly MethodClaim[], method: TrendMethod): MethodClaim["claim"] {
  return claims.find((row) => row.method === method)?.claim ?? "untested";
}

/**
 * The numbers a line rests on, in each period and in both. Lists of two periods add up, since none is of both; a trend from
 * lists counts their squares beside them, which are no lists.
 *
 * @example numbersOf({ trend: { n_from: 300, n_to: 500, n: 40 }, counts: "list" }) // => [300, 500, 800]
 */
export function numbersOf({
  trend: { n_from, n_to, n },
  counts,
}: {
  trend: Pick<TrendRow, "n_from" | "n_to" | "n">;
  counts: Line["counts"];
}): [from: number, to: number, both: number] {
  return [n_from, n_to, counts === "list" ? n_from + n_to : n];
}

/** What a line says, in words. @example saysOf({ direction: "none", more: "more squares", fewer: "" }) // => "no direction" */
export function saysOf({ direction, more, fewer }: Pick<Line, "direction" | "more" | "fewer">): string {
  if (direction === null) return "";
  return direction === "none" ? say("lines.no-direction") : direction === "more" ? more : fewer;
}

/**
 * An estimate, or an end of its interval, in the line's unit: whole per cent, tenths of a standard deviation.
 *
 * @example lineNumber("%", 11.4) // => "+11"
 */
export function lineNumber(unit: Line["unit"], number: number): string {
  return change(number, unit === "%" ? 0 : 1);
}
