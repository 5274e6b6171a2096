import { describe, expect, it } from "vitest";
import { longDate, monthName, thirdDays, thirdLoosely } from "../../../../src/site/components/text/thirds.ts";

describe("thirdDays", () => {
  it("names the thirds of the examples of the writing guide", () => {
    expect([7, 11, 15, 20].map(thirdDays)).toEqual(["11–20 March", "21–30 April", "1–10 June", "21–31 July"]);
  });
  it("covers each day of a leap year once, by the calendar of Node", () => {
    const days = Array.from({ length: 36 }, (_, third) => {
      const [from = 0, to = 0] = thirdDays(third).split(" ")[0]?.split("–").map(Number) ?? [];
      return { month: Math.floor(third / 3), from, to };
    });
    for (let month = 0; month < 12; month++) {
      const own = days.filter((each) => each.month === month);
      expect(own.map(({ from }) => from)).toEqual([1, 11, 21]);
      expect(own.map(({ to }) => to)).toEqual([10, 20, new Date(Date.UTC(2024, month + 1, 0)).getUTCDate()]);
    }
  });
  it("refuses what is no third of a year", () => {
    for (const third of [-1, 36, 1.5, Number.NaN]) expect(() => thirdDays(third)).toThrow(RangeError);
  });
});

describe("other words of time", () => {
  it("says thirds loosely, months and dates", () => {
    expect([6, 7, 8].map(thirdLoosely)).toEqual(["early March", "mid March", "late March"]);
    expect(monthName(4)).toBe("May");
    expect(longDate("2025-03-01")).toBe("1 March 2025");
    expect(["spring 2025", "2025-13-01"].map(longDate)).toEqual(["spring 2025", "2025-13-01"]);
  });
});
