import { describe, expect, it } from "vitest";
import { hasEnglish, markEnglish, showEnglish } from "../../../src/site/words/fallback.ts";

const words = markEnglish("Season");

describe("words that are not translated", () => {
  it("become elements with a language of their own", () => {
    expect(showEnglish(`<p>${words}</p>`)).toBe('<p><span lang="en">Season</span></p>');
    expect(showEnglish(`<svg><text>${words}</text></svg>`)).toBe(
      '<svg><text><tspan lang="en">Season</tspan></text></svg>',
    );
  });
  it("stay text in attributes and where only text may stand", () => {
    expect(showEnglish(`<a title="${words}">x</a>`)).toBe('<a title="Season">x</a>');
    expect(showEnglish(`<title>${words}</title><p>${words}</p>`)).toBe(
      '<title>Season</title><p><span lang="en">Season</span></p>',
    );
  });
  it("leave no mark behind", () => {
    expect(hasEnglish(showEnglish(`<svg><desc>${words}</desc></svg><b>${words}<i>x</i></b>`))).toBe(false);
    expect(hasEnglish(words)).toBe(true);
  });
});
