import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { settlingEvidence } from "../../src/review/settling-evidence.ts";
import { readScheme } from "../../src/scheme/scheme.ts";

const scheme = readScheme(fileURLToPath(new URL("../../content", import.meta.url)));

it("names the easiest evidence, the part, its state and what a look-alike shows there", () => {
  // characters.csv of the demonstration: males of bohemicus settle by the antenna, a specimen.
  expect(settlingEvidence(scheme, "invented-bohemicus", "male")).toEqual({
    level: 3,
    part: "antenna",
    words: "a specimen of the antenna: 3 equal to 5, not 3 shorter than 5 as in Bombus vestalis",
  });
});

it("takes what less evidence can show before what needs more", () => {
  const row = { taxonID: "a", castes: [], form: "", state: "red", note: "", reliability: "settles" as const };
  const characters = [
    { ...row, part: "coat", evidence: "specimen" },
    { ...row, part: "hind-leg", evidence: "photograph" },
    { ...row, part: "face", evidence: "sight", castes: ["male"] },
  ];
  const some = { characters, accounts: new Map(), taxa: [] };
  expect(settlingEvidence(some, "a", "queen")?.words).toBe("a photograph of the hind leg: red");
  expect(settlingEvidence(some, "a", "male")?.words).toBe("a clear view of the face: red");
  // A record that states no caste may be no male.
  expect(settlingEvidence(some, "a", "")?.part).toBe("hind-leg");
});

it("says what the account asks for where no character settles, and nothing where the scheme says nothing", () => {
  const account = {
    file: "",
    sections: [],
    front: { taxonID: "a", lead: "", evidence: "the underside", sizes: [], look_alikes: [] },
  };
  expect(settlingEvidence({ characters: [], accounts: new Map([["a", account]]), taxa: [] }, "a", "")).toEqual({
    level: 2,
    part: "",
    words: "the underside",
  });
  expect(settlingEvidence({ characters: [], accounts: new Map(), taxa: [] }, "a", "")).toBeUndefined();
});
