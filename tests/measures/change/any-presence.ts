import fc from "fast-check";
import type { Presence } from "../../../src/measures/change/presence.ts";

/** Records of a small group in a few squares and two periods, by chance. */
export function anyPresence(most = 8): fc.Arbitrary<Presence> {
  return fc
    .record({ taxa: fc.integer({ min: 1, max: most }), squares: fc.integer({ min: 1, max: most }) })
    .chain(({ taxa, squares }) =>
      fc
        .uint8Array({ min: 0, max: 1, minLength: 2 * taxa * squares, maxLength: 2 * taxa * squares })
        .map((recorded) => ({
          taxa: names("t", taxa),
          squares: names("s", squares),
          periods: 2,
          recorded,
        })),
    );
}

/** Names that sort in their order. */
export function names(letter: string, many: number): string[] {
  return Array.from({ length: many }, (_, index) => `${letter}${String(index).padStart(3, "0")}`);
}
