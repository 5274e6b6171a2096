import type { TaxonFile } from "../../../src/publishing/contracts.ts";

/** A repeatable stream of numbers from 0 to below 1 (mulberry32). */
export function stream(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export const total = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);

export function hump(peak: number, width: number, height: number): number[] {
  return Array.from({ length: 36 }, (_, third) => Math.round(height * Math.exp(-(((third - peak) / width) ** 2))));
}

export function yearsOf(size: number): TaxonFile["years"] {
  return Array.from({ length: 35 }, (_, index) => ({
    year: 1990 + index,
    records: Math.round(size * (1 + index / 6)),
    visits: Math.round(size * (2 + index / 3)),
  }));
}
