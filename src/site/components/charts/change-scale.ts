import { scaleLinear } from "d3-scale";
import type { ChangeRow } from "../../../publishing/contracts.ts";

/** Where the marks of one row of change stand, in per cent of the width. */
export interface ChangeMark {
  readonly from: number;
  readonly to: number;
  readonly at: number;
  readonly kind: "more" | "fewer" | "none";
}

/** A scale of change in doublings: a halving lies as far from no change as a doubling. */
export interface ChangeScale {
  readonly zero: number;
  /** Percentages to name, with their places. */
  readonly ticks: readonly { readonly label: string; readonly at: number }[];
  mark(row: ChangeRow): ChangeMark | undefined;
}

const LEAST = -0.95;

/**
 * A scale that holds the intervals of all given rows, at most from a tenth to eight times.
 *
 * @param rows of one table or page; rows that cannot be judged are passed over
 * @returns places from 0 to 100; `mark` is undefined for a row that cannot be judged
 * @example changeScale(rows).ticks.map(({ label }) => label) // ["−50 %", "0", "+100 %"]
 */
export function changeScale(rows: readonly ChangeRow[]): ChangeScale {
  const judged = rows.flatMap((row) => {
    const ratios = ratiosOf(row);
    return ratios === undefined ? [] : [ratios.low, ratios.high, ratios.net];
  });
  const widest = Math.max(0.2, ...judged.map((ratio) => Math.abs(doublings(ratio))));
  const reach = [0.35, 1, 2, 3].find((limit) => widest <= limit) ?? 3;
  const x = scaleLinear([-reach, reach], [3, 97]).clamp(true);
  const place = (ratio: number) => Math.round(x(doublings(ratio)) * 10) / 10;
  const named =
    reach < 1 ? [-0.2, 0, 0.25] : reach === 1 ? [-0.5, 0, 1] : reach === 2 ? [-0.75, -0.5, 0, 1, 3] : [-0.75, 0, 3];
  return {
    zero: place(0),
    ticks: named.map((ratio) => ({
      label: ratio === 0 ? "0" : `${ratio > 0 ? "+" : "−"}${Math.abs(ratio) * 100} %`,
      at: place(ratio),
    })),
    mark(row) {
      const ratios = ratiosOf(row);
      if (ratios === undefined) return undefined;
      const kind = ratios.low > 0 ? "more" : ratios.high < 0 ? "fewer" : "none";
      return { from: place(ratios.low), to: place(ratios.high), at: place(ratios.net), kind };
    },
  };
}

/** Net change and its interval as shares of the squares of the earlier period. */
function ratiosOf({
  judged,
  net,
  retained,
  lost,
  interval_low,
  interval_high,
}: ChangeRow): { low: number; high: number; net: number } | undefined {
  const earlier = retained + lost;
  if (!judged || interval_low === null || interval_high === null || earlier === 0) return undefined;
  return { low: interval_low / earlier, high: interval_high / earlier, net: net / earlier };
}

function doublings(ratio: number): number {
  return Math.log2(1 + Math.max(LEAST, ratio));
}
