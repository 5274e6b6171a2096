import type { ToldBy, Verdict } from "./run.ts";

/** What a method means to tell, and what its figure is therefore held against. */
export interface Estimand {
  /** In words, as printed. */
  readonly of: string;
  /** The true value in the unit of the estimate; null where there is none in that unit. */
  readonly truth: (verdict: Verdict) => number | null;
}

/** By method: an index in standard deviations has no true value, only a true direction. */
export const ESTIMANDS: Readonly<Record<ToldBy, Estimand>> = {
  raw_counts: { of: "10 km squares lived in, %", truth: ({ hectads }) => hectads },
  squares_compared: { of: "10 km squares lived in, %", truth: ({ hectads }) => hectads },
  relative_change: { of: "direction against the group", truth: () => null },
  local_frequency: {
    of: "2 km squares lived in, %",
    truth: ({ tetrads }) => tetrads,
  },
  reporting_rate: { of: "chance to meet it on a visit, %", truth: ({ encounters }) => encounters },
};
