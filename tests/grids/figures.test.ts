import { describe, expect, it } from "vitest";
import { readFigures, tidyReference, writeFigures } from "../../src/grids/figures.ts";

describe("tidyReference", () => {
  it.each([
    ["ｔｑ 388, 773", "TQ388773"],
    ["30u yc 08.07", "30UYC0807"],
    ["TQ\u200B3877", "TQ3877"],
    ["TQ388,77", "TQ388,77"],
    ["TQ-1234", "TQ-1234"],
    ["651409,313177", "651409,313177"],
    ["TQ38..77", "TQ38..77"],
  ])("makes “%s” “%s”", (text, tidy) => expect(tidyReference(text)).toBe(tidy));
});

describe("writeFigures", () => {
  it.each([
    [38_880.9, 77_349.9, 100, "388773"],
    [99_999.99, 99_999.99, 1_000, "9999"],
    [5, 9, 1, "0000500009"],
    [38_000, 86_000, 2_000, "38Y"],
    [0, 0, 100_000, ""],
  ] as const)("truncates %s %s at %s m to “%s”", (east, north, size, figures) => {
    expect(writeFigures(east, north, size)).toBe(figures);
  });

  it("has no way to write 50 km", () => expect(() => writeFigures(0, 0, 50_000)).toThrow(RangeError));
});

describe("examples", () => {
  it("readFigures", () => expect(readFigures("38SW")).toEqual({ east: 30000, north: 80000, size: 5000 }));
  it("writeFigures", () => expect(writeFigures(38880, 77340, 100)).toBe("388773"));
});
