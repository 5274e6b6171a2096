import fc from "fast-check";
import type { GroupVisits } from "../../../../src/measures/change/local-frequency/equal-effort.ts";

/** One visit that recorded a taxon of the group. */
export interface Visit {
  square: number;
  period: number;
  third: number;
  taxa: readonly number[];
}

/** Visits in the order of squares, as they are read. */
export function laidOut(visits: readonly Visit[]): GroupVisits {
  const sorted = visits.toSorted((a, b) => a.square - b.square);
  let end = 0;
  const starts = [0];
  for (const { taxa } of sorted) {
    end += taxa.length;
    starts.push(end);
  }
  return {
    squares: Int32Array.from(sorted, ({ square }) => square),
    periods: Uint8Array.from(sorted, ({ period }) => period),
    thirds: Uint8Array.from(sorted, ({ third }) => third),
    starts: Int32Array.from(starts),
    taxa: Int32Array.from(sorted.flatMap(({ taxa }) => taxa)),
  };
}

/** Visits by chance to some squares in two periods. */
export function anyVisits(squares: number, taxa: number, most: number): fc.Arbitrary<Visit[]> {
  const visit = fc.record({
    square: fc.integer({ min: 0, max: squares - 1 }),
    period: fc.integer({ min: 0, max: 1 }),
    third: fc.integer({ min: 9, max: 26 }),
    taxa: fc.uniqueArray(fc.integer({ min: 0, max: taxa - 1 }), { minLength: 1, maxLength: taxa }),
  });
  return fc.array(visit, { minLength: 1, maxLength: most });
}
