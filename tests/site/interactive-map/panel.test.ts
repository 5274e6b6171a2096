import { describe, expect, it } from "vitest";
import { viewChoices } from "../../../src/site/interactive-map/panel.ts";
import { ENGLISH } from "../../../src/site/words/catalogue.ts";
import { sayFrom } from "../../../src/site/words/client.ts";

const periods = [{ label: "1970–1989" }, { label: "1990–2005" }, { label: "2006–2024" }];
const say = sayFrom(ENGLISH, "en-GB");

describe("viewChoices", () => {
  it("offers both periods, each of the two compared, and the visits", () => {
    expect(viewChoices({ periods, compared: [1, 2] }, say)).toEqual([
      { value: "both", words: "Both periods" },
      { value: "1", words: "1990–2005" },
      { value: "2", words: "2006–2024" },
      { value: "visits", words: "Visits" },
    ]);
  });
  it("offers all dates and the visits where nothing is compared", () => {
    expect(viewChoices({ periods: periods.slice(0, 1), compared: null }, say).map(({ value }) => value)).toEqual([
      "any",
      "visits",
    ]);
  });
});
