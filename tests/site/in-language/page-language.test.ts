import { describe, expect, it } from "vitest";
import { namesIn, type PageLanguage, wordsIn } from "../../../src/site/in-language/page-language.ts";
import { markLanguage } from "../../../src/site/words/fallback.ts";

const page = (tag: string, first = "en-GB"): PageLanguage => ({ first, tag, words: undefined });
const tree = {
  scientific_name: "Bombus hypnorum",
  vernacular_name: "Tree bumblebee",
  short_name: "Tree",
  vernacular_names: [
    { name: "Tree bumblebee", language: "en" },
    { name: "bourdon des arbres", language: "fr" },
    { name: "cacynen y coed", language: "cy" },
  ],
};

describe("wordsIn", () => {
  it("are the page's own, or the first language's, marked", () => {
    expect(wordsIn(page("fr"), "Reine", "Queen")).toBe("Reine");
    expect([wordsIn(page("fr"), "", "Queen"), wordsIn(page("fr"), undefined, "Queen")]).toEqual([
      markLanguage("Queen", "en-GB"),
      markLanguage("Queen", "en-GB"),
    ]);
    expect(wordsIn(page("en-GB"), undefined, "Queen")).toBe("Queen");
    expect(wordsIn(page("fr"), "", "")).toBe("");
  });
});

describe("namesIn", () => {
  it("keeps the first language's names on its own pages", () => {
    const { vernacular_name, short_name, other_names } = namesIn(page("en-GB"), tree);
    expect([vernacular_name, short_name]).toEqual(["Tree bumblebee", "Tree"]);
    expect(other_names.map(({ language }) => language)).toEqual(["fr", "cy"]);
  });
  it("takes the name of the page's language, whatever its region, and lists the others", () => {
    const { vernacular_name, short_name, other_names } = namesIn(page("fr-BE"), tree);
    expect([vernacular_name, short_name]).toEqual(["Bourdon des arbres", "Bourdon des arbres"]);
    expect(other_names.map(({ language }) => language)).toEqual(["en", "cy"]);
  });
  it("marks the first language's name where the page's has none", () => {
    const { vernacular_name, short_name, other_names } = namesIn(page("ga"), tree);
    expect([vernacular_name, short_name]).toEqual([
      markLanguage("Tree bumblebee", "en-GB"),
      markLanguage("Tree", "en-GB"),
    ]);
    expect(other_names.map(({ language }) => language)).toEqual(["fr", "cy"]);
  });
  it("marks no scientific name", () => {
    const bare = {
      ...tree,
      vernacular_name: tree.scientific_name,
      short_name: tree.scientific_name,
      vernacular_names: [],
    };
    expect(namesIn(page("fr"), bare).vernacular_name).toBe("Bombus hypnorum");
  });
});
