import { scaleLinear } from "d3-scale";

/** A figure with its interval, in the unit of its scale. */
export interface Span {
  readonly low: number;
  readonly high: number;
  readonly at: number;
}

/** Where the mark of one interval stands, in per cent of the width. */
export interface IntervalMark {
  readonly from: number;
  readonly to: number;
  readonly at: number;
  readonly kind: "more" | "fewer" | "none";
}

/** An axis of change that several intervals share. */
export interface IntervalScale {
  readonly zero: number;
  /** Values to name, with their places. */
  readonly ticks: readonly { readonly label: string; readonly at: number }[];
  mark(span: Span): IntervalMark;
}

const LEAST = -0.95;

/**
 * A scale of shares in doublings, so that a halving lies as far from no change as a doubling; at most from an eighth to
 * eight times, beyond which marks stand at its end.
 *
 * @param spans changes as shares of the earlier state: −0.5 is a halving
 * @returns places from 0 to 100
 * @example ratioScale([{ low: -0.4, high: 0.9, at: 0 }]).ticks.map(({ label }) => label) // => ["−50 %", "0", "+100 %"]
 */
export function ratioScale(spans: readonly Span[]): IntervalScale {
  const widest = Math.max(0.2, ...spans.flatMap(ends).map((ratio) => Math.abs(doublings(ratio))));
  const reach = [0.35, 1, 2, 3].find((limit) => widest <= limit) ?? 3;
  const named = reach < 1 ? [-0.2, 0, 0.25] : reach === 1 ? [-0.5, 0, 1] : reach === 2 ? [-0.5, 0, 1] : [-0.75, 0, 3];
  return scaleOf(reach, doublings, named, (ratio) => `${Math.abs(ratio) * 100} %`);
}

/**
 * A scale in standard deviations, the same to both sides, at most 6.
 *
 * @example deviationScale([{ low: -1.2, high: 0.4, at: -0.4 }]).ticks.map(({ label }) => label) // => ["−1", "0", "+1"]
 */
export function deviationScale(spans: readonly Span[]): IntervalScale {
  const widest = Math.max(1, ...spans.flatMap(ends).map(Math.abs));
  const reach = [1.5, 3, 6].find((limit) => widest <= limit) ?? 6;
  const named = reach < 2 ? [-1, 0, 1] : reach === 3 ? [-2, 0, 2] : [-4, 0, 4];
  return scaleOf(reach, (number) => number, named, String);
}

function ends({ low, high, at }: Span): number[] {
  return [low, high, at];
}

function scaleOf(
  reach: number,
  transform: (value: number) => number,
  named: readonly number[],
  words: (size: number) => string,
): IntervalScale {
  const x = scaleLinear([-reach, reach], [3, 97]).clamp(true);
  const place = (value: number) => Math.round(x(transform(value)) * 10) / 10;
  const label = (value: number) => (value === 0 ? "0" : `${value > 0 ? "+" : "−"}${words(Math.abs(value))}`);
  return {
    zero: place(0),
    ticks: named.map((value) => ({ label: label(value), at: place(value) })),
    mark({ low, high, at }) {
      const kind = low > 0 ? "more" : high < 0 ? "fewer" : "none";
      return { from: place(low), to: place(high), at: place(at), kind };
    },
  };
}

function doublings(ratio: number): number {
  return Math.log2(1 + Math.max(LEAST, ratio));
}
