import { describe, expect, it } from "vitest";
import { quarterName, quarterOffset } from "../../src/grids/quarter.ts";
import { REFERENCES } from "./grid-cases.ts";

/** Common practice: no published rule was found for the names of 5 km quarters. */
describe("5 km quarters", () => {
  it.each(Object.entries(REFERENCES.quarters))("%s is at %s", (name, offset) => {
    const [east, north] = offset;
    expect(quarterOffset(name)).toEqual(offset);
    expect(quarterName(east, north)).toBe(name);
    expect(quarterName(east + 4999, north + 4999)).toBe(name);
  });

  it.each(["S", "WS", "sw", "", "constructor"])("do not include “%s”", (name) =>
    expect(quarterOffset(name)).toBeUndefined(),
  );

  it("are not given outside a hectad", () => expect(() => quarterName(10_000, 0)).toThrow(RangeError));
});

describe("examples", () => {
  it("quarterName", () => expect(quarterName(7200, 300)).toBe("SE"));
});
