import type { ToldBy, Verdict } from "./run.ts";

/** What a method means to tell, and what its figure is therefore held against. */
export interface Estimand {
  /** What the method says it corrects for. */
  readonly claim: "nothing" | "effort, relative to the group" | "effort";
  /** In words, as printed. */
  readonly of: string;
  /** The true value in the unit of the estimate; null where there is none in that unit. */
  readonly truth: (verdict: Verdict) => number | null;
}

/** By method: an index in standard deviations has no true value, only a true direction. */
export const ESTIMANDS: Readonly<Record<ToldBy, Estimand>> = {
  raw_counts: { claim: "nothing", of: "10 km squares lived in, %", truth: ({ hectads }) => hectads },
  squares_compared: { claim: "nothing", of: "10 km squares lived in, %", truth: ({ hectads }) => hectads },
  relative_change: { claim: "effort, relative to the group", of: "direction against the group", truth: () => null },
  local_frequency: {
    claim: "effort, relative to the group",
    of: "2 km squares lived in, %",
    truth: ({ tetrads }) => tetrads,
  },
  reporting_rate: { claim: "effort", of: "chance to meet it on a visit, %", truth: ({ encounters }) => encounters },
};
