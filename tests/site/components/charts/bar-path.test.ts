import { describe, expect, it } from "vitest";
import { barPath, stepPath } from "../../../../src/site/components/charts/bar-path.ts";

describe("barPath", () => {
  it("stands each bar in its own column, however far the one before is", () => {
    const tops = ["1", undefined, undefined, "2", "3"];
    // SVG 1.1, 8.3.2 and 8.3.3: a closed path is back at its start, and m moves from there.
    expect(barPath(tops, 9)).toBe("M0.15 9V1h.7V9zm3 0V2h.7V9zm1 0V3h.7V9z");
    expect(barPath([undefined, "1"], 9)).toBe("M1.15 9V1h.7V9z");
  });
  it("is empty without bars", () => {
    expect(barPath([undefined, undefined], 9)).toBe("");
    expect(stepPath([])).toBe("");
  });
});
