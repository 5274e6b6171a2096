import type { ChangeRow } from "../../../publishing/contracts.ts";
import { type IntervalMark, type IntervalScale, ratioScale, type Span } from "./interval-scale.ts";

/** A scale of change in doublings: a halving lies as far from no change as a doubling. */
export interface ChangeScale extends Pick<IntervalScale, "zero" | "ticks"> {
  mark(row: ChangeRow): IntervalMark | undefined;
}

/**
 * A scale that holds the intervals of all given rows, at most from an eighth to eight times.
 *
 * @param rows of one table or page; rows that cannot be judged are passed over
 * @returns places from 0 to 100; `mark` is undefined for a row that cannot be judged
 * @example changeScale(rows).ticks.map(({ label }) => label) // ["−50 %", "0", "+100 %"]
 */
export function changeScale(rows: readonly ChangeRow[]): ChangeScale {
  const { zero, ticks, mark } = ratioScale(rows.map(shareOf).filter((share) => share !== undefined));
  return {
    zero,
    ticks,
    mark(row) {
      const share = shareOf(row);
      return share === undefined ? undefined : mark(share);
    },
  };
}

/** Net change and its interval as shares of the squares of the earlier period. */
function shareOf({ judged, net, retained, lost, interval_low, interval_high }: ChangeRow): Span | undefined {
  const earlier = retained + lost;
  if (!judged || interval_low === null || interval_high === null || earlier === 0) return undefined;
  return { low: interval_low / earlier, high: interval_high / earlier, at: net / earlier };
}
