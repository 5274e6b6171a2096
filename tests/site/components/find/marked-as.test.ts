import { describe, expect, it } from "vitest";
import { markedAs } from "../../../../src/site/components/find/marked-as.ts";
import { markEnglish, markLanguage } from "../../../../src/site/words/fallback.ts";

describe("markedAs", () => {
  it("is the language of words that are marked, and nothing for others", () => {
    expect(markedAs(markEnglish("Season"))).toBe("en");
    expect(markedAs(markLanguage("cacynen", "cy"))).toBe("cy");
    expect(markedAs("Season")).toBeUndefined();
  });
});
