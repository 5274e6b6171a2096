import { expect, it } from "vitest";
import { saidOf } from "../../../../src/site/components/map-page/said.ts";

const COUNTS = {
  both: 12,
  new: 3,
  gone: 1,
  since: 4,
  before: 0,
  other: 1,
  bothCovered: 8,
  coveredBoth: 5,
  coveredOne: 2,
  coveredNeither: 7,
  total: 40,
};
const compared = { kind: "compared", index: -1, label: "Both" } as const;
const alone = { kind: "all", index: -1, label: "All dates" } as const;

it("says of a comparison what was found, and apart what cannot be compared", () => {
  const told = { time: compared, squares: { counts: COUNTS, compared: true }, tetrads: undefined, isCoverKnown: true };
  expect(saidOf("Ireland", told)).toBe(
    "Ireland: of 40 squares of 10 km it was found in both periods in **12**, **newly found in 3 and not refound in 1**. In 5 more it was recorded and cannot be compared.",
  );
});

it("counts blanks only where it is known what was covered, and 2 km squares where they are shown", () => {
  const told = { time: alone, squares: { counts: COUNTS, compared: false }, tetrads: 31, isCoverKnown: false };
  expect(saidOf("Ireland", told)).toBe(
    "Ireland, all dates: recorded in **12** of 40 squares of 10 km. Recorded in 31 squares of 2 km.",
  );
  expect(saidOf("Ireland", { ...told, tetrads: 0, isCoverKnown: true })).toContain(
    "5 were covered without a record of it, 7 were not covered. No record there names a 2 km square.",
  );
});
