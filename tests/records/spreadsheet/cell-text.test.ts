import { describe, expect, it } from "vitest";
import { cellText } from "../../../src/records/spreadsheet/cell-text.ts";

describe("a cell", () => {
  // What a person sees in a spreadsheet, which keeps 15 figures (ECMA-376 part 1, 18.17.5.2, and IEEE 754 doubles).
  it.each([
    [0.1 + 0.2, "0.3"],
    [1.1 * 3, "3.3"],
    [51.477_811_1, "51.4778111"],
    [-0.000_123, "-0.000123"],
    [2021, "2021"],
    [231_853_286, "231853286"],
    [123_456_789_012_345, "123456789012345"],
    [1e-7, "1e-7"],
    [Number.NaN, ""],
    [true, "true"],
    [false, "false"],
    [null, ""],
    ["3/5/2021", "3/5/2021"],
    [" TQ38 ", " TQ38 "],
  ])("of %j is %j", (value, text) => {
    expect(cellText(value)).toBe(text);
  });

  it("that is a date is that of ISO 8601, with the time it has", () => {
    expect(cellText(new Date(Date.UTC(2021, 4, 3)))).toBe("2021-05-03");
    expect(cellText(new Date(Date.UTC(2021, 4, 3, 14, 7)))).toBe("2021-05-03T14:07:00");
    expect(cellText(new Date(Date.UTC(2021, 4, 2, 23, 59, 59, 999)))).toBe("2021-05-03");
  });

  it("that is a time of day alone has no date", () => {
    expect(cellText(new Date(Date.UTC(1899, 11, 31, 12, 30)))).toBe("12:30:00");
    expect(cellText(new Date(Date.UTC(1904, 0, 1, 6)))).toBe("06:00:00");
  });
});
