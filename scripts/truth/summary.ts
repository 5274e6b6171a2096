import { ESTIMANDS } from "./estimands.ts";
import type { ToldBy, TrialResult, Verdict } from "./run.ts";
import { labelOf } from "./scenarios.ts";

/** What a method said of the species whose squares changed by the same factor. */
export interface ByChange {
  /** Real change of the number of 2 km squares, %. */
  readonly change: number;
  readonly judged: number;
  readonly more: number;
  readonly fewer: number;
  readonly median_estimate: number | null;
  readonly coverage: number | null;
}

/** How a method did in a scenario, over all seeds. Shares run from 0 to 1; errors are of chance among seeds. */
export interface Performance {
  readonly scenario: string;
  /** The scenario in words. */
  readonly label: string;
  readonly method: ToldBy;
  readonly estimand: string;
  /** Species of all seeds, and those of them the method spoke of. */
  readonly species: number;
  readonly judged: number;
  readonly more: number;
  readonly fewer: number;
  readonly called: number | null;
  readonly called_error: number | null;
  readonly mean_estimate: number | null;
  readonly median_estimate: number | null;
  /** Estimate less truth, in the estimate's unit; null for a method whose figure has no true value. */
  readonly mean_bias: number | null;
  readonly median_bias: number | null;
  readonly coverage: number | null;
  readonly coverage_error: number | null;
  readonly by_change: readonly ByChange[];
  /** Species called more or fewer, seed by seed in order. */
  readonly called_by_seed: readonly number[];
}

/**
 * Sums up what each method said in each scenario.
 *
 * @param results trials with different seeds
 * @returns rows by scenario in the order of results, then by method
 */
export function summarise(results: readonly TrialResult[]): Performance[] {
  const scenarios = [...new Set(results.map(({ scenario }) => scenario))];
  return scenarios.flatMap((scenario) => {
    const trials = results.filter((result) => result.scenario === scenario);
    return (Object.keys(ESTIMANDS) as ToldBy[]).flatMap((method) => {
      const bySeed = trials.map(({ verdicts }) => verdicts.filter((verdict) => verdict.method === method));
      return bySeed.every((verdicts) => verdicts.length === 0) ? [] : [performanceOf(scenario, method, bySeed)];
    });
  });
}

function performanceOf(scenario: string, method: ToldBy, bySeed: readonly Verdict[][]): Performance {
  const { of, truth } = ESTIMANDS[method];
  const all = bySeed.flat();
  const judged = all.filter(isJudged);
  const estimates = judged.flatMap(({ estimate }) => (estimate === null ? [] : [estimate]));
  const biases = judged.flatMap((verdict) => {
    const real = truth(verdict);
    return verdict.estimate === null || real === null ? [] : [verdict.estimate - real];
  });
  const covers = (verdict: Verdict) => coversTruth(verdict, truth(verdict));
  return {
    scenario,
    label: labelOf(scenario),
    method,
    estimand: of,
    species: all.length,
    judged: judged.length,
    more: count(judged, ({ direction }) => direction === "more"),
    fewer: count(judged, ({ direction }) => direction === "fewer"),
    called: share(judged, isCalled),
    called_error: errorOfShare(bySeed, isCalled),
    mean_estimate: mean(estimates),
    median_estimate: median(estimates),
    mean_bias: mean(biases),
    median_bias: median(biases),
    coverage: share(judged, covers),
    coverage_error: errorOfShare(bySeed, covers),
    by_change: [...new Set(all.map(({ change }) => change))]
      .sort((a, b) => a - b)
      .map((change) =>
        byChange(
          change,
          judged.filter((verdict) => verdict.change === change),
          covers,
        ),
      ),
    called_by_seed: bySeed.map((verdicts) =>
      count(verdicts, (verdict) => isJudged(verdict) && isCalled(verdict) === true),
    ),
  };
}

function byChange(change: number, judged: readonly Verdict[], covers: (verdict: Verdict) => boolean | null): ByChange {
  return {
    change: Math.round(100 * (change - 1)),
    judged: judged.length,
    more: count(judged, ({ direction }) => direction === "more"),
    fewer: count(judged, ({ direction }) => direction === "fewer"),
    median_estimate: median(judged.flatMap(({ estimate }) => (estimate === null ? [] : [estimate]))),
    coverage: share(judged, covers),
  };
}

function isJudged({ direction }: Verdict): boolean {
  return direction !== null;
}

function isCalled({ direction }: Verdict): boolean | null {
  return direction === "more" || direction === "fewer";
}

function coversTruth({ low, high }: Verdict, truth: number | null): boolean | null {
  return truth === null || low === null || high === null ? null : low <= truth && truth <= high;
}

function count(verdicts: readonly Verdict[], is: (verdict: Verdict) => boolean): number {
  return verdicts.filter(is).length;
}

/** Share of those for which there is an answer. */
function share(verdicts: readonly Verdict[], is: (verdict: Verdict) => boolean | null): number | null {
  const answers = verdicts.map(is).filter((answer) => answer !== null);
  return answers.length === 0 ? null : answers.filter(Boolean).length / answers.length;
}

/** Standard error of a share over seeds: species of one seed share its recorders, so that they are not independent. */
function errorOfShare(bySeed: readonly Verdict[][], is: (verdict: Verdict) => boolean | null): number | null {
  const shares = bySeed.flatMap((verdicts) => share(verdicts.filter(isJudged), is) ?? []);
  const middle = mean(shares);
  if (middle === null || shares.length < 2) return null;
  const squares = shares.reduce((sum, one) => sum + (one - middle) ** 2, 0);
  return Math.sqrt(squares / (shares.length - 1) / shares.length);
}

function mean(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}

function median(values: readonly number[]): number | null {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length / 2;
  const low = sorted[Math.ceil(middle) - 1];
  const high = sorted[Math.floor(middle)];
  return low === undefined || high === undefined ? null : (low + high) / 2;
}
