import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  fileSize,
  grouped,
  inWords,
  percentage,
  signed,
  unbroken,
} from "../../../../src/site/components/text/numbers.ts";

describe("grouped and signed", () => {
  it("sets thousands apart and writes a true minus", () => {
    expect([0, 999, 1000, 1379, 1_234_567].map(grouped)).toEqual(["0", "999", "1,000", "1,379", "1,234,567"]);
    expect([99, 0, -1379].map(signed)).toEqual(["+99", "0", "−1,379"]);
  });
  it("keeps every digit of any whole number", () => {
    fc.assert(
      fc.property(fc.integer(), (number) => {
        expect(Number(grouped(number).replaceAll(",", "").replace("−", "-"))).toBe(number);
      }),
    );
  });
});

describe("percentage", () => {
  it("gives none of fewer than twenty things", () => {
    expect(percentage(15, 19)).toBeUndefined();
    expect(percentage(15, 20)).toBe("75 %");
    expect(percentage(0, 0)).toBeUndefined();
  });
  it("never rounds something to nothing, nor all but something to all", () => {
    expect(percentage(1, 1000)).toBe("under 1 %");
    expect(percentage(999, 1000)).toBe("over 99 %");
    expect(percentage(0, 1000)).toBe("0 %");
    expect(percentage(1000, 1000)).toBe("100 %");
  });
});

describe("other numbers", () => {
  it("writes small numbers in words", () => {
    expect([0, 1, 12, 13, 1379].map(inWords)).toEqual(["no", "one", "twelve", "13", "1,379"]);
  });
  it("gives sizes in units of a thousand", () => {
    expect([999, 41_300, 999_400, 999_600, 3_100_000].map(fileSize)).toEqual([
      "999 bytes",
      "41 kB",
      "999 kB",
      "1.0 MB",
      "3.1 MB",
    ]);
  });
  it("ties a number to its unit, and to no other word", () => {
    expect(unbroken("95 % of 10 km squares, 3 kittens")).toBe("95\u00a0% of 10\u00a0km squares, 3 kittens");
  });
});
