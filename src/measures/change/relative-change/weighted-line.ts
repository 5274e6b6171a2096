/** A straight line fitted by weighted least squares. */
export interface WeightedLine {
  intercept: number;
  slope: number;
  fitted: number[];
  residuals: number[];
  /** h, how far each point draws the line to itself. */
  leverages: number[];
}

/**
 * Fits a straight line by weighted least squares.
 *
 * @param weights above 0
 * @returns null where the points do not differ in x
 * @example weightedLine([0, 1, 2], [1, 3, 5], [1, 1, 1])?.slope // => 2
 */
export function weightedLine(
  x: readonly number[],
  y: readonly number[],
  weights: readonly number[],
): WeightedLine | null {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value, index) => sum + value * (weights[index] as number), 0) / total;
  const [middle, level] = [mean(x), mean(y)];
  const away = x.map((value) => value - middle);
  const spread = away.reduce((sum, value, index) => sum + value ** 2 * (weights[index] as number), 0);
  if (!(spread > 1e-12 * total)) return null;
  const slope =
    away.reduce((sum, value, index) => sum + value * ((y[index] as number) - level) * (weights[index] as number), 0) /
    spread;
  const fitted = away.map((value) => level + slope * value);
  return {
    intercept: level - slope * middle,
    slope,
    fitted,
    residuals: y.map((value, index) => value - (fitted[index] as number)),
    leverages: away.map((value, index) => (weights[index] as number) * (1 / total + value ** 2 / spread)),
  };
}
