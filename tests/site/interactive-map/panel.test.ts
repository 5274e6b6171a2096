import { describe, expect, it } from "vitest";
import { periodChoices } from "../../../src/site/interactive-map/panel.ts";

const periods = [{ label: "1970–1989" }, { label: "1990–2005" }, { label: "2006–2024" }];

describe("periodChoices", () => {
  it("offers both, then each of the two compared", () => {
    expect(periodChoices({ periods, compared: [1, 2] })).toEqual([
      { value: "both", words: "Both periods" },
      { value: "1", words: "1990–2005" },
      { value: "2", words: "2006–2024" },
    ]);
  });
  it("offers nothing where nothing is compared", () => {
    expect(periodChoices({ periods: periods.slice(0, 1), compared: null })).toEqual([]);
  });
});
