import { describe, expect, it } from "vitest";
import { pairsOfPeriods } from "../../../src/measures/change/pairs-of-periods.ts";
import type { Scheme } from "../../../src/scheme/scheme.ts";

const scheme = (ids: string[], compared?: [string, string]) =>
  ({
    settings: { periods: ids.map((id) => ({ id })), ...(compared === undefined ? {} : { compared }) },
  }) as unknown as Scheme;

describe("pairsOfPeriods", () => {
  it("gives the compared pair first, then each period with the next, each pair once", () => {
    expect(pairsOfPeriods(scheme(["a"]))).toEqual([]);
    expect(pairsOfPeriods(scheme(["a", "b"]))).toEqual([[0, 1]]);
    expect(pairsOfPeriods(scheme(["a", "b", "c"]))).toEqual([
      [0, 2],
      [0, 1],
      [1, 2],
    ]);
    expect(pairsOfPeriods(scheme(["a", "b", "c"], ["b", "c"]))).toEqual([
      [1, 2],
      [0, 1],
    ]);
  });
});
