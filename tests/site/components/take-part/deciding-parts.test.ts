import { describe, expect, it } from "vitest";
import type { Character } from "../../../../src/publishing/contracts.ts";
import { decidingParts, howToPhotograph } from "../../../../src/site/components/take-part/deciding-parts.ts";

const character = (part: string, given: Partial<Character> = {}): Character => ({
  castes: [],
  form: "",
  part,
  state: "black",
  note: "",
  reliability: "settles",
  evidence: "photograph",
  ...given,
});

describe("decidingParts", () => {
  it("lists parts that settle in a photograph, those that decide most first, with the castes they decide", () => {
    const taxa = [
      {
        slug: "a",
        characters: [
          character("face", { castes: ["male"] }),
          character("hind-leg", { castes: ["queen"] }),
          character("T2", { reliability: "supports" }),
        ],
      },
      {
        slug: "b",
        characters: [
          character("hind-leg", { castes: ["queen"] }),
          character("hind-leg", { castes: ["worker"] }),
          character("antenna", { evidence: "specimen" }),
        ],
      },
    ];
    expect(decidingParts(taxa)).toEqual([
      {
        part: "hind-leg",
        decides: [
          { slug: "a", castes: ["queen"] },
          { slug: "b", castes: ["queen", "worker"] },
        ],
      },
      { part: "face", decides: [{ slug: "a", castes: ["male"] }] },
    ]);
  });
});

describe("howToPhotograph", () => {
  it("knows the parts of bees and of long bodies, and has a word for any other", () => {
    expect(
      ["face", "T4", "S8", "tail", "hind-leg", "wings", "antenna", "collar", "elytra"].map(howToPhotograph),
    ).toEqual(["face", "abdomen", "abdomen", "abdomen", "leg", "wings", "antenna", "thorax", "other"]);
  });
});
