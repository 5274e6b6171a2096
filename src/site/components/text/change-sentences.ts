import type { ChangeRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { grouped, signed } from "./numbers.ts";
import type { Sentence } from "./sentence.ts";

/** Which way a figure of change points: `none` where its interval holds no change, `unjudged` where there is no interval. */
export type ChangeDirection = "more" | "fewer" | "none" | "unjudged";

/** Direction of change in squares. @example changeDirection(null) // "unjudged" */
export function changeDirection(row: ChangeRow | null): ChangeDirection {
  if (row === null || !row.judged || row.interval_low === null || row.interval_high === null) return "unjudged";
  if (row.interval_low > 0) return "more";
  return row.interval_high < 0 ? "fewer" : "none";
}

/** The same in words, for lists. @example changeWord(row) // "more" */
export function changeWord(row: ChangeRow | null): string {
  return say("text.change-word", { direction: changeDirection(row) });
}

/**
 * How the squares of a taxon changed between two periods, or why that cannot be judged.
 *
 * @example changeSentence(row) // "Of 910 comparable squares it was found in both periods in 631, **newly found in 189 and not refound in 90**: a net change of +99 squares (95 % interval 66 to 132)."
 */
export function changeSentence(row: ChangeRow): Sentence {
  const { comparable, retained, gained, lost, net, interval_low: low, interval_high: high } = row;
  if (!row.judged || low === null || high === null)
    return say("text.change-unjudged", {
      kilometres: row.resolution_m / 1000,
      reason: row.reason || say("text.change-too-few"),
    });
  const counts = { comparable, retained, gained, lost };
  if (low <= 0 && high >= 0) return say("text.change-none", { ...counts, low: signed(low), high: signed(high) });
  return say("text.change", {
    ...counts,
    net: signed(net),
    squares: Math.abs(net),
    low: grouped(low),
    high: grouped(high),
  });
}

/**
 * Squares that hold the taxon and say nothing about change.
 *
 * @returns empty where there is none
 * @example notComparable(row) // "**442 more squares cannot be compared:** in one period too little else was recorded there, or it has no settled record. They say where it was recorded, not how it has changed."
 */
export function notComparable({ not_comparable_since, not_comparable_before }: ChangeRow): Sentence {
  const n = not_comparable_since + not_comparable_before;
  return n === 0 ? "" : say("text.not-comparable", { n });
}
