import { type WeightedLine, weightedLine } from "./weighted-line.ts";

/**
 * How the scatter of taxa about the line is weighted.
 * - `fitted`: variance a + b/(Nπ(1 − π)), a and b from the squared residuals
 * - `binomial`: variance in proportion to 1/(Nπ(1 − π))
 * - `equal`: the same for all taxa
 */
export type Weighting = "fitted" | "binomial" | "equal";

/** Reweightings after which a fit that has not settled is given up. */
const MOST_ROUNDS = 500;

/** The line of a group, with the weights of its taxa. */
export interface GroupLine {
  line: WeightedLine;
  weights: number[];
  weighting: Weighting;
}

/**
 * Fits the line of a group, with weights that follow from it where they settle and are above 0; see `relativeChange`.
 *
 * @param from logits of the earlier period, `to` those of the recent one
 * @param squares N
 * @returns null where taxa were all equally common
 * @example fitGroupLine(from, to, 250)?.weighting // => "fitted"
 */
export function fitGroupLine(from: readonly number[], to: readonly number[], squares: number): GroupLine | null {
  const equal = weightedLine(
    from,
    to,
    from.map(() => 1),
  );
  if (equal === null) return null;
  const fitted = iterateWeights(from, to, squares, "fitted");
  if (typeof fitted === "object") return fitted;
  const binomial = fitted === "binomial" ? iterateWeights(from, to, squares, "binomial") : "equal";
  return typeof binomial === "object" ? binomial : { line: equal, weights: from.map(() => 1), weighting: "equal" };
}

/**
 * A line refitted with the weights it gives until its residuals settle.
 *
 * @returns else the weighting to try instead
 * @example iterateWeights(from, to, 250, "binomial") // the line with weights Nπ(1 − π)
 */
export function iterateWeights(
  from: readonly number[],
  to: readonly number[],
  squares: number,
  weighting: Weighting,
): GroupLine | Weighting {
  let weights = from.map(() => 1);
  let before: number[] | undefined;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const line = weightedLine(from, to, weights);
    if (line === null) return "equal";
    const now = standardised(line, weights);
    if (before !== undefined && now.every((z, index) => Math.abs(z - (before?.[index] as number)) < 1e-12))
      return { line, weights, weighting };
    before = now;
    const binomial = line.fitted.map((value) => (2 + Math.exp(value) + Math.exp(-value)) / squares);
    const variances = weighting === "binomial" ? binomial : varianceModel(line, binomial);
    if (typeof variances === "string") return variances;
    weights = variances.map((variance) => 1 / variance);
  }
  return "equal";
}

/** Variances a + b/(Nπ(1 − π)) fitted to the squared residuals; else the weighting to try instead. */
function varianceModel({ residuals }: WeightedLine, binomial: readonly number[]): number[] | Weighting {
  const model = weightedLine(
    binomial,
    residuals.map((residual) => residual ** 2),
    binomial.map(() => 1),
  );
  if (model === null) return "equal";
  if (model.fitted.every((variance) => variance > 0)) return model.fitted;
  return model.slope > 0 ? "binomial" : "equal";
}

/**
 * Scatter of taxa about a line, in units of the weights.
 *
 * @example scatterOf(line, weights) // 1.06 where the weights are those of the variance
 */
export function scatterOf({ residuals }: WeightedLine, weights: readonly number[]): number {
  const sum = residuals.reduce((total, residual, index) => total + residual ** 2 * (weights[index] as number), 0);
  return Math.sqrt(sum / (residuals.length - 2));
}

/**
 * Residuals over their standard deviation; 0 where all points lie on the line.
 *
 * @example standardised(line, weights)[0] // => -0.89
 */
export function standardised(line: WeightedLine, weights: readonly number[]): number[] {
  const scatter = scatterOf(line, weights);
  return line.residuals.map((residual, index) =>
    scatter > 1e-12 ? (residual * Math.sqrt(weights[index] as number)) / scatter : 0,
  );
}
