import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cleanName, editDistance, vernacularKey } from "../../src/names/name-text.ts";
import { nameKey, readName } from "../../src/names/read-name.ts";

describe("examples", () => {
  it("hold", () => {
    expect(readName("Bombus (Pyrobombus) cf. pratorum (L., 1761)")).toMatchObject({
      genus: "Bombus",
      subgenus: "Pyrobombus",
      epithets: ["pratorum"],
      authorship: "(L., 1761)",
      qualifier: "cf.",
    });
    expect(nameKey(readName("Bombus lucorum s.l."))).toBe("bombus lucorum agg.");
    expect(cleanName("  Bombus\u00a0 terrestris ")).toBe("Bombus terrestris");
    expect(vernacularKey("Buff-tailed Bumblebee")).toBe("bufftailedbumblebee");
    expect(editDistance("pratorum", "partorum", 3)).toBe(1);
  });
});

// Common practice in records, without a published source.
describe("a name", () => {
  it.each([
    "Bombus terrestris",
    "Bombus terrestris (Linnaeus, 1758)",
    "Bombus terrestris (Linnaeus) 1758",
    "Bombus terrestris L.",
    "Bombus terrestris de Geer",
    "bombus terrestris",
    "BOMBUS TERRESTRIS",
    "BOMBUS TERRESTRIS (LINNAEUS, 1758)",
    "Bombus  terrestris ",
    "Bombus\u00a0terrestris",
    "Bombus_terrestris",
    '"Bombus terrestris"',
    "Bombus (Bombus) terrestris (L.)",
    "Bombus terrestris s.s.",
    "Bombus terrestris sensu stricto",
  ])("%s is Bombus terrestris", (text) => {
    expect(nameKey(readName(text))).toBe("bombus terrestris");
    expect(readName(text).qualifier).toBeUndefined();
  });

  it("in NFC and NFD is the same", () => {
    const name = "Bombus distinguendus Mörawitz";
    expect(readName(name.normalize("NFD"))).toEqual(readName(name));
  });

  it.each([
    "agg.",
    "agg",
    "aggregate",
    "s.l.",
    "s. l.",
    "s.lat.",
    "sens. lat.",
    "sensu lato",
    "complex",
    "group",
    "species group",
  ])("with %s is the aggregate", (mark) => {
    expect(nameKey(readName(`Bombus lucorum ${mark}`))).toBe("bombus lucorum agg.");
    expect(nameKey(readName(`Bombus lucorum (Linnaeus, 1761) ${mark}`))).toBe("bombus lucorum agg.");
    expect(nameKey(readName("Bombus lucorum", mark))).toBe("bombus lucorum agg.");
  });

  it.each([
    ["Bombus cf. terrestris", "cf."],
    ["Bombus cf terrestris", "cf."],
    ["cf. Bombus terrestris", "cf."],
    ["Bombus aff. terrestris", "aff."],
    ["Bombus nr. terrestris", "nr"],
    ["Bombus nr terrestris", "nr"],
    ["Bombus terrestris?", "?"],
    ["Bombus ?terrestris", "?"],
    ["Bombus terrestris (?)", "?"],
    ["probably Bombus terrestris", "?"],
  ])("%s is qualified by %s", (text, qualifier) => {
    expect(readName(text)).toMatchObject({ qualifier, epithets: ["terrestris"] });
    expect(readName("Bombus terrestris", text)).toMatchObject({ qualifier, unreadQualifier: "" });
  });

  it.each(["Bombus affinis", "Bombus confusus", "Bombus cfidens", "Bombus grandis"])(
    "%s is not qualified: the letters are part of the epithet",
    (text) => {
      expect(readName(text)).toMatchObject({ qualifier: undefined, isAggregate: false, epithets: [text.slice(7)] });
    },
  );

  it.each([
    "Bombus terrestris/lucorum",
    "Bombus lucorum/terrestris",
    "Bombus terrestris / lucorum",
    "Bombus terrestris/B. lucorum",
    "Bombus lucorum/Bombus terrestris",
    "Bombus lucorum or terrestris",
    "Bombus terrestris/lucorum group",
  ])("%s is one open pair", (text) => {
    expect(nameKey(readName(text))).toBe("bombus lucorum/terrestris");
  });

  it.each(["Bombus terrestris × lucorum", "Bombus terrestris x lucorum", "Bombus ×terrestris", "× Bombus terrestris"])(
    "%s is a hybrid",
    (text) => {
      expect(readName(text).isHybrid).toBe(true);
    },
  );

  it("with an epithet in x is no hybrid", () => {
    expect(readName("Bombus xanthopus")).toMatchObject({ isHybrid: false, epithets: ["xanthopus"] });
  });

  it("of a genus alone, with or without sp., has no epithet", () => {
    expect(
      ["Bombus", "Bombus sp.", "Bombus spp.", "Bombus sp", "Bombus indet.", "Bombus Latreille, 1802"].map((text) =>
        nameKey(readName(text)),
      ),
    ).toEqual(Array(6).fill("bombus"));
  });

  it("of a subspecies keeps it apart", () => {
    expect(readName("Bombus muscorum ssp. smithianus White, 1851")).toMatchObject({
      epithets: ["muscorum"],
      infraspecific: "smithianus",
      authorship: "White, 1851",
    });
  });

  // The form of autonyms and cited species' authors in the International Code of Nomenclature for algae, fungi, and plants;
  // "L. f." is the younger Linnaeus, no form.
  it("of a subspecies is found behind the species' author", () => {
    expect(readName("Plantago major L. subsp. intermedia (Gilib.) Lange")).toMatchObject({
      epithets: ["major"],
      infraspecific: "intermedia",
      authorship: "(Gilib.) Lange",
    });
    expect(readName("Bombus terrestris (Linnaeus, 1758) ssp. audax")).toMatchObject({ infraspecific: "audax" });
    for (const authors of ["L. f. ex Smith", "L. f.", "(L. f.) Benth."])
      expect(readName(`Salix major ${authors}`)).toMatchObject({ infraspecific: "", authorship: authors });
  });

  it("says what of the qualifier's field was not understood", () => {
    expect(readName("Bombus terrestris", "confirmed by dissection").unreadQualifier).toBe("confirmed by dissection");
    expect(readName("Bombus terrestris", "cf. terrestris").unreadQualifier).toBe("");
  });
});

describe("edit distance", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 6 });

  it("is a distance: zero for the same text only, symmetric, at most the longer length", () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        const distance = editDistance(a, b, 10);
        expect(distance === 0).toBe(a === b);
        expect(editDistance(b, a, 10)).toBe(distance);
        expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
        expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
        expect(editDistance(a, b, 1)).toBe(Math.min(distance, 2));
      }),
    );
  });

  it("counts an exchange of neighbours once, and each other change once", () => {
    // The worked cases of the literature: kitten–sitting 3 (Levenshtein); ca–ac 1 (Damerau 1964).
    expect([editDistance("kitten", "sitting", 9), editDistance("ca", "ac", 9)]).toEqual([3, 1]);
  });
});
