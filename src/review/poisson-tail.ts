/**
 * Probability that a Poisson variable is at least a number: 1 − Σ e^−λ λ^k / k! for k below it, summed from the top where
 * it is small so that nothing is lost to rounding.
 *
 * @param number from 0
 * @param mean λ, above 0
 * @returns 0 to 1
 * @example poissonTail(2, 1) // => 0.2642411 to seven places: 1 − 2/e
 */
export function poissonTail(number: number, mean: number): number {
  if (number <= 0) return 1;
  let term = Math.exp(-mean + number * Math.log(mean) - logFactorial(number));
  let sum = 0;
  for (let k = number; term > 1e-300 && (k <= mean || term > sum * 1e-17); k += 1) {
    sum += term;
    term *= mean / (k + 1);
  }
  return Math.min(1, sum);
}

function logFactorial(number: number): number {
  let sum = 0;
  for (let k = 2; k <= number; k += 1) sum += Math.log(k);
  return sum;
}
