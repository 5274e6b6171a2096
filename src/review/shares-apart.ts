/** Which of many shares are further above their expectation than chance and ordinary differences bring about. */

/** One set's share: how many of its records are of a taxon, and the share its neighbours let expect. */
export interface SetShare {
  readonly records: number;
  readonly ofTaxon: number;
  /** 0 to 1. */
  readonly expected: number;
}

/**
 * How far a share lies above its expectation, in standard deviations of chance: 2 √n (arcsin √(k/n) − arcsin √p).
 *
 * Source: the variance-stabilised proportion of funnel plots, Spiegelhalter (2005), Funnel plots for comparing
 * institutional performance, Statistics in Medicine 24, 1185–1202.
 *
 * @returns negative below the expectation
 * @example excess({ records: 100, ofTaxon: 50, expected: 0.25 }) // 20 (π/4 − π/6) = 5.235…
 */
export function excess({ records, ofTaxon, expected }: SetShare): number {
  return 2 * Math.sqrt(records) * (Math.asin(Math.sqrt(ofTaxon / records)) - Math.asin(Math.sqrt(expected)));
}

/**
 * How much more the other sets differ than chance lets them, for each set: a factor of the variance. It is the mean of
 * their squared excesses, the outermost tenth on each side drawn in to the next; at least 1, and 1 without others. A set
 * does not count for itself, so that the one looked for cannot hide in its own spread.
 *
 * Source: multiplicative over-dispersion with winsorised scores, Spiegelhalter (2005), Handling over-dispersion of
 * performance indicators, Quality and Safety in Health Care 14, 347–351; leaving the set itself out is ours.
 *
 * @example overDispersions([-2, 2, -2, 2]) // [4, 4, 4, 4]
 */
export function overDispersions(excesses: readonly number[]): number[] {
  const sorted = excesses.toSorted((a, b) => a - b);
  const tenth = Math.floor(sorted.length / 10);
  const [least = 0, most = 0] = [sorted[tenth], sorted[sorted.length - 1 - tenth]];
  const squares = excesses.map((one) => Math.max(least, Math.min(most, one)) ** 2);
  const sum = squares.reduce((before, one) => before + one, 0);
  return squares.map((own) => Math.max(1, squares.length < 2 ? 1 : (sum - own) / (squares.length - 1)));
}

/**
 * The chance of a standard normal value above z. Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.2.17,
 * absolute error below 7.5e-8.
 *
 * @example upperTail(1.96) // 0.02500
 */
export function upperTail(z: number): number {
  if (z < 0) return 1 - upperTail(-z);
  const t = 1 / (1 + 0.2316419 * z);
  const polynomial = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * polynomial;
}

/**
 * Which of many chances are small enough that at most a stated share of those chosen is expected to be due to chance.
 *
 * Source: Benjamini and Hochberg (1995), Controlling the false discovery rate, Journal of the Royal Statistical Society B
 * 57, 289–300.
 *
 * @returns for each chance, in order, whether it is chosen
 * @example chosenChances([0.001, 0.04, 0.03], 0.05) // [true, true, true]: 0.04 is not above 3/3 of 0.05
 */
export function chosenChances(chances: readonly number[], falseShare: number): boolean[] {
  const sorted = chances.toSorted((a, b) => a - b);
  const last = sorted.findLastIndex((chance, index) => chance <= (falseShare * (index + 1)) / sorted.length);
  const limit = sorted[last] ?? -1;
  return chances.map((chance) => chance <= limit);
}

/**
 * Which sets' shares are far above what their neighbours let expect: by chance, allowing for how much sets ordinarily
 * differ and for how many were looked at, and by a factor.
 *
 * @param rules factor a share must reach, and share of the chosen that chance may bring
 * @returns for each set, in order, whether it is far above
 */
export function sharesApart(sets: readonly SetShare[], rules: { times: number; falseShare: number }): boolean[] {
  const excesses = sets.map(excess);
  const spreads = overDispersions(excesses).map(Math.sqrt);
  const chosen = chosenChances(
    excesses.map((one, index) => upperTail(one / (spreads[index] ?? 1))),
    rules.falseShare,
  );
  return sets.map(
    ({ records, ofTaxon, expected }, index) => chosen[index] === true && ofTaxon / records >= rules.times * expected,
  );
}
