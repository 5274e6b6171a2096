/** Values with the number of times each was found; in rising order, weights not below 0. */
export interface WeightedValues {
  readonly values: ArrayLike<number>;
  /** How often each counts; whole numbers or, for a weighted sample, any that add up to the size of the sample. */
  readonly weights: ArrayLike<number>;
}

/**
 * Quantiles of type 8 (Hyndman & Fan 1996, Am. Stat. 50:361–365): nearly free of bias in the median, whatever the
 * distribution. A value that counts several times stands in the sample as often; where weights are no whole numbers,
 * the k-th value is the first up to which they add up to k or more.
 *
 * @param shares from 0 to 1
 * @returns one value a share; NaN where weights add up to less than 1
 * @example quantiles({ values: [1, 2, 3, 4], weights: [1, 1, 1, 1] }, [0.25, 0.5]) // => [1.4166…, 2.5]
 */
export function quantiles({ values, weights }: WeightedValues, shares: readonly number[]): number[] {
  const totals = new Float64Array(weights.length);
  let total = 0;
  for (let i = 0; i < totals.length; i += 1) {
    total += weights[i] as number;
    totals[i] = total;
  }
  // Sums of weights that are no whole numbers end a hair from the size they were scaled to.
  const size = Math.abs(total - Math.round(total)) < 1e-6 ? Math.round(total) : total;
  if (size < 1) return shares.map(() => Number.NaN);
  return shares.map((share) => {
    const place = Math.min(Math.max((size + 1 / 3) * share + 1 / 3, 1), size);
    const whole = Math.floor(place + 1e-9);
    const lower = values[firstReaching(totals, whole)] as number;
    const upper = values[firstReaching(totals, Math.min(whole + 1, size))] as number;
    return lower + Math.max(0, place - whole) * (upper - lower);
  });
}

/** Index of the first running total that reaches a place. */
function firstReaching(totals: Float64Array, place: number): number {
  let low = 0;
  let high = totals.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((totals[middle] as number) >= place - 1e-6) high = middle;
    else low = middle + 1;
  }
  return low;
}
