/**
 * Thresholds of criterion B in square kilometres, smallest first: extent of occurrence (B1) and area of occupancy (B2) for
 * Critically Endangered, Endangered and Vulnerable (IUCN 2012, Red List Categories and Criteria, version 3.1, 2nd ed.).
 */
export const EXTENT_THRESHOLDS: readonly number[] = [100, 5_000, 20_000];
export const OCCUPANCY_THRESHOLDS: readonly number[] = [10, 500, 2_000];

/**
 * The smallest threshold that a figure is below: strictly less, a figure on a threshold is not below it. Evidence, never a
 * category: two of three further conditions must hold, and figures made of records are minimum figures.
 *
 * @param km2 null where the figure is not given
 * @param thresholds smallest first
 * @returns null where it is below none
 * @example smallestThresholdAbove(4_999, EXTENT_THRESHOLDS) // => 5000
 */
export function smallestThresholdAbove(km2: number | null, thresholds: readonly number[]): number | null {
  return km2 === null ? null : (thresholds.find((threshold) => km2 < threshold) ?? null);
}
