/**
 * Mean of estimates that differ by more than their errors: weights 1/(variance + τ²), τ² by the moments of DerSimonian &
 * Laird (1986, Controlled Clinical Trials 7: 177–188).
 *
 * @param variances above 0
 * @returns the mean, and the weights, which sum to 1
 * @example meanOfGroup([0, 2], [1, 1]) // => { mean: 1, weights: [0.5, 0.5] }
 */
export function meanOfGroup(
  estimates: readonly number[],
  variances: readonly number[],
): { mean: number; weights: readonly number[] } {
  const fixed = variances.map((variance) => 1 / variance);
  const total = sum(fixed);
  const centre = sum(estimates.map((estimate, index) => estimate * (fixed[index] as number))) / total;
  const scatter = sum(estimates.map((estimate, index) => (estimate - centre) ** 2 * (fixed[index] as number)));
  const spare = total - sum(fixed.map((weight) => weight ** 2)) / total;
  const between = spare > 0 ? Math.max(0, (scatter - (estimates.length - 1)) / spare) : 0;
  const weights = variances.map((variance) => 1 / (variance + between));
  const all = sum(weights);
  const shares = weights.map((weight) => weight / all);
  return { mean: sum(estimates.map((estimate, index) => estimate * (shares[index] as number))), weights: shares };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
