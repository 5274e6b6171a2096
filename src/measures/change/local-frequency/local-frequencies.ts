import { everRecorded, type Presence } from "../presence.ts";
import type { Neighbourhoods } from "./neighbourhoods.ts";

/** What a well recorded neighbourhood looks like, and which of its taxa measure effort. */
export interface FrequencyOptions {
  /** Φ, above 0 and below 1. */
  standard_frequency: number;
  /** Rescaled rank below which a taxon is a benchmark. */
  benchmark_share: number;
}

/** What neighbourhoods lead to expect of each square. Arrays over squares, or at square × taxa + taxon. */
export interface LocalFrequencies {
  /** Frequency-weighted mean frequency φ as recorded; 0 in a neighbourhood without records. */
  neighbourhoodFrequency: Float64Array;
  /** α, how many times the recording there was the neighbourhood would need to be well recorded; 1 without records. */
  effortMultiplier: Float64Array;
  /** Σ f′: taxa expected in a well recorded square. */
  expectedTaxa: Float64Array;
  /** f′, frequency of each taxon were the neighbourhood well recorded. */
  frequencies: Float64Array;
  /** 1 where a taxon is a benchmark of the square. */
  benchmarks: Uint8Array;
}

/**
 * Frequencies of taxa in the neighbourhood of each square, brought to one standard of recording, and the benchmark taxa
 * they give.
 *
 * Source: Hill (2012) Methods in Ecology and Evolution 3: 195–205. From its summary: discovery as a Poisson process, the
 * frequency-weighted mean frequency Σf²/Σf that takes a standard value where recording is complete, and benchmarks as the
 * commonest of a fixed share of the taxa expected. Known from descriptions of it: f′ = 1 − (1 − f)^α with α such that
 * Σf′²/Σf′ is the standard, and rank over expected taxa as the rescaled rank. Our readings: a taxon counts for f if
 * recorded in any period; equally frequent taxa rank in their order; f = 1 stays 1.
 *
 * @example localFrequencies(presence, neighbourhoods, { standard_frequency: 0.74, benchmark_share: 0.27 }).effortMultiplier[0] // 3.09 where records are few
 */
export function localFrequencies(
  presence: Presence,
  { starts, squares: neighbours, weights }: Neighbourhoods,
  options: FrequencyOptions,
): LocalFrequencies {
  const [taxa, squares] = [presence.taxa.length, presence.squares.length];
  const ever = everRecorded(presence);
  const found: LocalFrequencies = {
    neighbourhoodFrequency: new Float64Array(squares),
    effortMultiplier: new Float64Array(squares),
    expectedTaxa: new Float64Array(squares),
    frequencies: new Float64Array(squares * taxa),
    benchmarks: new Uint8Array(squares * taxa),
  };
  for (let square = 0; square < squares; square++) {
    const frequencies = found.frequencies.subarray(square * taxa, (square + 1) * taxa);
    let total = 0;
    for (let at = starts[square] as number; at < (starts[square + 1] as number); at++) {
      const [start, weight] = [(neighbours[at] as number) * taxa, weights[at] as number];
      total += weight;
      for (let taxon = 0; taxon < taxa; taxon++)
        if (ever[start + taxon] === 1) frequencies[taxon] = (frequencies[taxon] as number) + weight;
    }
    for (let taxon = 0; taxon < taxa; taxon++) frequencies[taxon] = Math.min(1, (frequencies[taxon] as number) / total);
    found.neighbourhoodFrequency[square] = weightedMean(frequencies);
    const multiplier = effortMultiplier(frequencies, options.standard_frequency);
    found.effortMultiplier[square] = multiplier;
    for (let taxon = 0; taxon < taxa; taxon++) frequencies[taxon] = scaled(frequencies[taxon] as number, multiplier);
    found.expectedTaxa[square] = frequencies.reduce((sum, frequency) => sum + frequency, 0);
    markBenchmarks(frequencies, found.benchmarks.subarray(square * taxa, (square + 1) * taxa), options.benchmark_share);
  }
  return found;
}

/** Frequency under recording α times as thorough, each find being a Poisson event. */
function scaled(frequency: number, multiplier: number): number {
  return -Math.expm1(multiplier * Math.log1p(-frequency));
}

/** Σf²/Σf; 0 where there is no frequency. */
function weightedMean(frequencies: Float64Array): number {
  let [sum, squares] = [0, 0];
  for (const frequency of frequencies) {
    sum += frequency;
    squares += frequency * frequency;
  }
  return sum === 0 ? 0 : squares / sum;
}

/**
 * α, by which recording must be multiplied for the frequency-weighted mean frequency to be the standard; 1 where nothing
 * is recorded. Where a taxon is everywhere no α may be small enough: then the smallest tried, 2⁻²⁰.
 *
 * @example effortMultiplier(Float64Array.of(0.5), 0.75) // => 2
 */
export function effortMultiplier(frequencies: Float64Array, standard: number): number {
  const present = frequencies.filter((frequency) => frequency > 0);
  if (present.length === 0) return 1;
  const logs = present.map((frequency) => Math.log1p(-frequency));
  const excess = (multiplier: number) => {
    let [sum, squares] = [0, 0];
    for (const log of logs) {
      const frequency = -Math.expm1(multiplier * log);
      sum += frequency;
      squares += frequency * frequency;
    }
    return squares / sum - standard;
  };
  let [low, high] = [1, 1];
  while (excess(high) < 0) high *= 2;
  while (low > 2 ** -20 && excess(low) > 0) low /= 2;
  return excess(low) > 0 ? low : rootBetween(excess, low, high);
}

/** Benchmarks: those whose rank over the taxa expected is below the share. */
function markBenchmarks(frequencies: Float64Array, benchmarks: Uint8Array, share: number): void {
  const expected = frequencies.reduce((sum, frequency) => sum + frequency, 0);
  const order = Array.from(frequencies, (_, taxon) => taxon).filter((taxon) => (frequencies[taxon] as number) > 0);
  order.sort((a, b) => (frequencies[b] as number) - (frequencies[a] as number) || a - b);
  order.forEach((taxon, rank) => {
    if ((rank + 1) / expected < share) benchmarks[taxon] = 1;
  });
}

/**
 * Root of a rising function between two points, by false position that halves the weight of an end that stays (the
 * Illinois rule of Dowell & Jarratt 1971, BIT 11: 168–174), to the last few bits.
 *
 * @example rootBetween((x) => x * x - 4, 0, 5) // 2, within 1e-12
 */
export function rootBetween(rising: (x: number) => number, low: number, high: number): number {
  let [a, b, atA, atB] = [low, high, rising(low), rising(high)];
  let stayed = 0;
  for (let step = 0; step < 200 && Math.abs(b - a) > 1e-14 * Math.abs(b); step++) {
    if (atA === 0) return a;
    if (atB === 0) return b;
    const between = (a * atB - b * atA) / (atB - atA);
    const value = rising(between);
    if (value < 0) {
      [a, atA] = [between, value];
      if (stayed === -1) atB /= 2;
      stayed = -1;
    } else {
      [b, atB] = [between, value];
      if (stayed === 1) atA /= 2;
      stayed = 1;
    }
  }
  return (a + b) / 2;
}
