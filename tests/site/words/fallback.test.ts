import { describe, expect, it } from "vitest";
import { hasMarks, markEnglish, markLanguage, showMarks, withoutMarks } from "../../../src/site/words/fallback.ts";

const words = markEnglish("Season");

describe("words that are not translated", () => {
  it("become elements with a language of their own", () => {
    expect(showMarks(`<p>${words}</p>`)).toBe('<p><span lang="en">Season</span></p>');
    expect(showMarks(`<svg><text>${words}</text></svg>`)).toBe(
      '<svg><text><tspan lang="en">Season</tspan></text></svg>',
    );
  });
  it("stay text in attributes and where only text may stand", () => {
    expect(showMarks(`<a title="${words}">x</a>`)).toBe('<a title="Season">x</a>');
    expect(showMarks(`<title>${words}</title><p>${words}</p>`)).toBe(
      '<title>Season</title><p><span lang="en">Season</span></p>',
    );
  });
  it("leave no mark behind", () => {
    expect(hasMarks(showMarks(`<svg><desc>${words}</desc></svg><b>${words}<i>x</i></b>`))).toBe(false);
    expect(hasMarks(words)).toBe(true);
  });
  it("have the language they are marked with, one within another too", () => {
    const name = markLanguage("Kartäuserhummel", "de");
    expect(showMarks(`<p>${markEnglish(`The ${name} here`)}</p>`)).toBe(
      '<p><span lang="en">The <span lang="de">Kartäuserhummel</span> here</span></p>',
    );
    expect(withoutMarks(markEnglish(`The ${name}`))).toBe("The Kartäuserhummel");
    expect(markLanguage("", "de")).toBe("");
  });
  it("reach over elements between their two marks", () => {
    expect(showMarks(`<p>${markEnglish("Type: <a>Licence</a>.")}</p>`)).toBe(
      '<p><span lang="en">Type: <a>Licence</a>.</span></p>',
    );
  });
  it("become a block round blocks", () => {
    expect(showMarks(`<li>${markEnglish(`<p>In ${markLanguage("mai", "fr")}.</p>`)}</li>`)).toBe(
      '<li><div lang="en"><p>In <span lang="fr">mai</span>.</p></div></li>',
    );
  });
  it("stay text in an attribute that holds a bracket", () => {
    expect(showMarks(`<a title="1 > 0 ${words}">${words}</a>`)).toBe(
      '<a title="1 > 0 Season"><span lang="en">Season</span></a>',
    );
  });
});
