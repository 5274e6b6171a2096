import { poissonMultiplier } from "./poisson-multiplier.ts";

/** Frequency above which a taxon is as good as everywhere: rates have to be finite. */
const HIGHEST_FREQUENCY = 0.99;
/** After so many rounds factors move by far less than their errors. */
const ROUNDS = 3;

/** What effort and factors are worked out from: one of two periods. */
export interface PeriodFinds {
  /** Chance of each taxon to be found in each square, at square × taxa + taxon. */
  expected: Float64Array;
  /** What the season of recording multiplies each taxon's rate by. */
  season: Float64Array;
}

/** Effort of squares and factors of taxa, with what each taxon's rate is worth in each square. */
export interface EffortAndFactors {
  /** Of each square; 0 for squares that are not compared. */
  effort: Float64Array;
  /** Of each taxon; 0 where never found, Infinity where found in every square. */
  factors: Float64Array;
  /** Rate of each taxon in each square at its factor, at square × taxa + taxon. */
  rates: Float64Array;
  /** How fast the finds of each square rise with the logarithm of its effort. */
  rises: Float64Array;
}

/**
 * Rates of Poisson finds at unit effort from frequencies.
 *
 * @example findRates(Float64Array.of(0, 0.5)) // => Float64Array [0, 0.6931471805599453]
 */
export function findRates(frequencies: Float64Array): Float64Array {
  return frequencies.map((frequency) => -Math.log1p(-Math.min(HIGHEST_FREQUENCY, frequency)));
}

/**
 * Whether the effort of a square can be known: some of its taxa are found, and not as good as all.
 *
 * @param rates of the square's taxa
 * @param expected chances of them to be found
 * @example canTellEffort(Float64Array.of(0.7, 0.7), Float64Array.of(1, 0)) // => true
 */
export function canTellEffort(rates: Float64Array, expected: Float64Array): boolean {
  let [found, able] = [0, 0];
  for (let taxon = 0; taxon < rates.length; taxon++) {
    found += expected[taxon] as number;
    if ((rates[taxon] as number) > 0) able++;
  }
  return found > 0 && found < able - 1e-6;
}

/**
 * Effort of each square and factor of each taxon by turns, so that a square's taxa add up to those found in it and a
 * taxon's squares to those it is found in. A taxon that truly changes thereby changes no square's effort.
 *
 * @param rates at unit effort, from `findRates`
 * @param squares indices of those compared
 * @example effortAndFactors(rates, [0, 1], finds).effort[0] // 1 where a square is recorded as well as its neighbourhood
 */
export function effortAndFactors(
  rates: Float64Array,
  squares: readonly number[],
  finds: PeriodFinds,
): EffortAndFactors {
  const taxa = finds.season.length;
  const all = rates.length / taxa;
  const [effort, factors] = [new Float64Array(all), new Float64Array(taxa).fill(1)];
  const [row, column] = [new Float64Array(taxa), new Float64Array(squares.length)];
  for (let round = 0; round < ROUNDS; round++) {
    for (const square of squares) {
      let found = 0;
      for (let taxon = 0; taxon < taxa; taxon++) {
        const factor = Math.min(1e6, factors[taxon] as number) * (finds.season[taxon] as number);
        row[taxon] = (rates[square * taxa + taxon] as number) * factor;
        found += finds.expected[square * taxa + taxon] as number;
      }
      effort[square] = Math.min(1e6, poissonMultiplier(row, found));
    }
    for (let taxon = 0; taxon < taxa; taxon++) {
      let found = 0;
      squares.forEach((square, index) => {
        const season = finds.season[taxon] as number;
        column[index] = (rates[square * taxa + taxon] as number) * (effort[square] as number) * season;
        found += finds.expected[square * taxa + taxon] as number;
      });
      factors[taxon] = poissonMultiplier(column, found);
    }
  }
  return { effort, factors, ...atFactors(rates, squares, { effort, factors, season: finds.season }) };
}

/**
 * How fast finds rise with the logarithm of their rate: rate × exp(−rate).
 *
 * @example riseOf(1) // => 0.36787944117144233
 */
export function riseOf(rate: number): number {
  return rate * Math.exp(-rate);
}

function atFactors(
  rates: Float64Array,
  squares: readonly number[],
  { effort, factors, season }: Record<"effort" | "factors" | "season", Float64Array>,
): Pick<EffortAndFactors, "rates" | "rises"> {
  const taxa = season.length;
  const [scaled, rises] = [new Float64Array(rates.length), new Float64Array(effort.length)];
  for (const square of squares)
    for (let taxon = 0; taxon < taxa; taxon++) {
      const rate = (rates[square * taxa + taxon] as number) * (effort[square] as number);
      if (rate === 0) continue;
      const own = rate * Math.min(1e6, factors[taxon] as number) * (season[taxon] as number);
      scaled[square * taxa + taxon] = own;
      rises[square] = (rises[square] as number) + riseOf(own);
    }
  return { rates: scaled, rises };
}
