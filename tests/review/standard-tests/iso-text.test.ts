import { describe, expect, it } from "vitest";
import { durationInSeconds, eventParts, isoInterval } from "../../../src/review/standard-tests/iso-text.ts";

describe("isoInterval", () => {
  it("takes no text that is ISO 8601 only but for its blanks", () => {
    expect(
      ["1998-07-12 14:07", " 1998", "1998\u0000", "1998-07-12T14:07"].map((text) => isoInterval(text) !== undefined),
    ).toEqual([false, false, false, true]);
  });
});

describe("durationInSeconds", () => {
  // By hand: 5 h 30 min; 1 h across midnight; 10:00Z to 12:00 one hour east is 1 h; a zone stated once holds for both ends.
  it.each([
    ["2007-11-13T09:00/14:30", 19_800],
    ["2007-11-13T23:30/2007-11-14T00:30", 3600],
    ["2007-11-13T10:00Z/2007-11-13T12:00+01:00", 3600],
    ["2007-11-13T10:00+01:00/2007-11-13T12:00", 7200],
    ["2007-11-13T10:00/2007-11-14", 172_800],
    ["2007/2008", 31_536_000 + 31_622_400],
  ])("of %s", (text, seconds) => {
    expect(durationInSeconds(text)).toBe(seconds);
  });
});

describe("eventParts", () => {
  it("gives days of the year only where both ends are stated to the day", () => {
    expect(eventParts("2021-03-01/04")).toEqual({ year: "2021", month: "3", startDayOfYear: "60", endDayOfYear: "63" });
    expect(eventParts("2020-12-31/2021-01")).toEqual({});
    expect(eventParts("2021-01/2021-12")).toEqual({ year: "2021" });
    expect(eventParts("not a date")).toEqual({});
  });
});
