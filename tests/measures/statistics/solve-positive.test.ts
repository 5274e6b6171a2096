import { describe, expect, it } from "vitest";
import { addRidge, solvePositive } from "../../../src/measures/statistics/solve-positive.ts";

describe("solvePositive", () => {
  it("solves a system worked by hand", () => {
    // 4x + 2y = 2 and 2x + 3y = 5 give x = −0.5, y = 2.
    const found = solvePositive(Float64Array.of(4, 0, 2, 3), Float64Array.of(2, 5), 2);
    expect(found?.[0]).toBeCloseTo(-0.5, 14);
    expect(found?.[1]).toBeCloseTo(2, 14);
  });

  it("gives nothing where one unknown follows from the other, unless a ridge parts them", () => {
    const singular = () => Float64Array.of(1, 1, 1, 1);
    expect(solvePositive(singular(), Float64Array.of(1, 1), 2)).toBeNull();
    expect(solvePositive(addRidge(singular(), 2, 0.5), Float64Array.of(1, 1), 2)?.[0]).toBeCloseTo(0.4, 14);
  });
});
