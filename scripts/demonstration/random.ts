/** A source of random numbers that gives the same numbers for the same seed and name, on every machine. */
export interface Random {
  /** From 0 up to, not including, 1. */
  next(): number;
  /** From `low` up to, not including, `high`. */
  between(low: number, high: number): number;
  /** A whole number from `low` to `high`, both included. */
  whole(low: number, high: number): number;
  /** True with the probability given. */
  chance(probability: number): boolean;
  /** One of a list that is not empty. */
  pick<T>(list: readonly T[]): T;
  /** Exponential with the mean given. */
  exponential(mean: number): number;
  /** Poisson with the mean given, counted up to 200. */
  poisson(mean: number): number;
}

/**
 * Starts one stream of random numbers. Each module draws from a stream of its own name,
 * so that a change in one leaves the numbers of the others as they were.
 * The generator is "small fast counter", 32 bits (Doty-Humphrey, PractRand), started from a hash of seed and name.
 *
 * @param seed any whole number
 * @param name of the stream
 * @example randomStream(1, "towns").next() === randomStream(1, "towns").next() // true
 */
export function randomStream(seed: number, name: string): Random {
  const next = smallFastCounter(`${seed}/${name}`);
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    whole: (low, high) => low + Math.floor((high - low + 1) * next()),
    chance: (probability) => next() < probability,
    pick: <T>(list: readonly T[]) => list[Math.floor(next() * list.length)] as T,
    exponential: (mean) => -mean * Math.log(1 - next()),
    poisson: (mean) => poisson(mean, next),
  };
}

/**
 * Sums of weights, for `drawFrom`.
 *
 * @param weights not negative, at least one above 0
 * @example runningTotals([1, 2, 1]) // Float64Array [1, 3, 4]
 */
export function runningTotals(weights: readonly number[]): Float64Array {
  let total = 0;
  return Float64Array.from(weights, (weight) => (total += weight));
}

/**
 * Draws an index with the probability of its weight.
 *
 * @param totals from `runningTotals`
 * @example drawFrom(runningTotals([0, 1]), randomStream(1, "any")) // 1
 */
export function drawFrom(totals: Float64Array, random: Random): number {
  const wanted = random.next() * (totals[totals.length - 1] as number);
  let low = 0;
  let high = totals.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((totals[middle] as number) > wanted) {
      high = middle;
    } else {
      low = middle + 1;
    }
  }
  return low;
}

/**
 * Hash of two whole numbers and a salt to a number from 0 up to 1: a random number that needs no order.
 *
 * @example hashed(3, 4, 5) === hashed(3, 4, 5) // true
 */
export function hashed(a: number, b: number, salt: number): number {
  let h = Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca77) ^ Math.imul(salt, 0xc2b2ae3d);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 4_294_967_296;
}

/**
 * Hash of a text to a whole number of 32 bits (Fowler–Noll–Vo 1a), a salt for `hashed`.
 *
 * @example saltOf("a") // 3826002220
 */
export function saltOf(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  }
  return h >>> 0;
}

function smallFastCounter(text: string): () => number {
  let a = saltOf(text);
  let b = saltOf(`${text}/b`);
  let c = saltOf(`${text}/c`);
  let counter = 1;
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 4_294_967_296;
  };
  for (let i = 0; i < 15; i++) {
    next();
  }
  return next;
}

function poisson(mean: number, next: () => number): number {
  const limit = Math.exp(-Math.min(mean, 100));
  let product = next();
  let count = 0;
  while (product > limit && count < 200) {
    product *= next();
    count += 1;
  }
  return count;
}
