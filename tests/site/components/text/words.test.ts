import { describe, expect, it } from "vitest";
import { capital, counted, countedInWords, listed, plural, small } from "../../../../src/site/components/text/words.ts";

describe("plural", () => {
  it("follows the regular rules of English, and the words that have no plural", () => {
    const nouns = ["worker", "moth", "dragonfly", "jay", "moss", "box", "larch", "species", "subspecies", "sheep"];
    expect(nouns.map(plural)).toEqual([
      "workers",
      "moths",
      "dragonflies",
      "jays",
      "mosses",
      "boxes",
      "larches",
      "species",
      "subspecies",
      "sheep",
    ]);
  });
});

describe("plural of the trade's Latin words", () => {
  it.each([
    ["larva", "larvae"],
    ["larvae", "larvae"],
    ["pupa", "pupae"],
    ["exuvia", "exuviae"],
  ])("%s: %s", (noun, many) => expect(plural(noun)).toBe(many));
});

describe("counted", () => {
  it("takes the singular for one alone", () => {
    expect([0, 1, 2].map((number) => counted(number, "visit"))).toEqual(["0 visits", "1 visit", "2 visits"]);
    expect(counted(1379, "10 km square")).toBe("1,379 10 km squares");
    expect(counted(2, "child", "children")).toBe("2 children");
    expect([0, 1, 12, 13].map((number) => countedInWords(number, "group"))).toEqual([
      "no groups",
      "one group",
      "twelve groups",
      "13 groups",
    ]);
  });
});

describe("lists and letters", () => {
  it("puts and before the last", () => {
    expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(listed)).toEqual(["", "a", "a and b", "a, b and c"]);
  });
  it("changes one letter, and no name in capitals", () => {
    expect(capital("three species")).toBe("Three species");
    expect([small("Queen"), small("DNA sample"), small("T3")]).toEqual(["queen", "DNA sample", "T3"]);
  });
});
