import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { associatedOfKind, readSurroundings } from "../../src/names/surroundings.ts";

const flower = {
  id: "flower",
  relations: ["visits flower of", "flower visited"],
  terms: [
    { id: "red-clover", words: ["red clover", "Trifolium pratense"] },
    { id: "knapweed", words: ["knapweed", "black-knapweed"] },
  ],
};

describe("readSurroundings", () => {
  // Common practice, without a source: lists in a cell are parted by a bar or a semicolon.
  for (const [cell, terms, unread] of [
    ["", [], []],
    ["Red Clover", ["red-clover"], []],
    ["trifolium pratense; Black knapweed", ["red-clover", "knapweed"], []],
    ["red clover | Trifolium pratense", ["red-clover"], []],
    ["clover", [], ["clover"]],
    [" | ;", [], []],
  ] as const)
    it(`reads “${cell}”`, () => expect(readSurroundings(cell, flower)).toEqual({ terms, unread }));

  it("reads every word of a term however it is written, and never loses a part", () => {
    const word = fc.constantFrom(...flower.terms.flatMap(({ words }) => words), "nettle");
    const written = fc.tuple(word, fc.boolean()).map(([text, loud]) => (loud ? text.toUpperCase() : ` ${text} `));
    fc.assert(
      fc.property(fc.array(written), (parts) => {
        const { terms, unread } = readSurroundings(parts.join("|"), flower);
        const nettles = parts.filter((part) => part.trim().toLowerCase() === "nettle").length;
        expect(unread).toHaveLength(nettles);
        expect(terms.length).toBeLessThanOrEqual(parts.length - nettles);
      }),
    );
  });
});

describe("associatedOfKind", () => {
  // Darwin Core, associatedTaxa: "host: Quercus alba" is among its examples; relations are written before a colon.
  it("takes the parts whose relation is of the kind", () => {
    expect(associatedOfKind("host: Quercus alba | Flower-visited: Trifolium pratense", flower)).toBe(
      "Trifolium pratense",
    );
    expect(associatedOfKind("Trifolium pratense", flower)).toBe("");
  });
});
