import { describe, expect, it } from "vitest";
import type { Character } from "../../../../src/publishing/contracts.ts";
import { partName, partNotes, settledBy } from "../../../../src/site/components/identify/characters-said.ts";

const labels = new Map([
  ["queen", "Queen"],
  ["worker", "Worker"],
  ["female", "Female"],
]);
function character(part: string, state: string, more: Partial<Character> = {}): Character {
  return { castes: [], form: "", part, state, note: "", reliability: "supports", evidence: "sight", ...more };
}

describe("settledBy", () => {
  it("says which character, in whom", () => {
    expect(
      settledBy([character("hind-leg", "black", { castes: ["queen", "worker"], reliability: "settles" })], labels),
    ).toBe("What settles it: **hind leg black** (queen, worker).");
  });
  it("says what is absent in the note's words", () => {
    const leg = character("hind-leg", "none", {
      castes: ["female"],
      note: "No pollen basket: the leg is hairy.",
      reliability: "settles",
    });
    expect(settledBy([leg], labels)).toBe("What settles it: **hind leg: no pollen basket** (female).");
  });
  it("is silent where nothing settles it", () => {
    expect(settledBy([character("T1", "red")], labels)).toBe("");
  });
});

describe("partNotes", () => {
  it("holds what the ribbon cannot show, and says what misleads and what needs a specimen", () => {
    const characters = [
      character("T4", "red"),
      character("T4", "orange", { form: "worn", note: "Red fades.", reliability: "misleads" }),
      character("coat", "short", { evidence: "specimen" }),
      character("size", "20–22 mm"),
      character("T1", "varies", { castes: ["queen"], note: "yellow or black." }),
    ];
    expect(partNotes(characters, new Set(["T4", "T1"]), labels)).toEqual([
      { part: "T4 (worn)", text: "orange. Red fades. Misleads." },
      { part: "Coat", text: "short. Needs a specimen." },
      { part: "T1 (queen)", text: "varies: yellow or black." },
    ]);
  });
  it("writes part ids as words", () => {
    expect(["hind-leg", "T1"].map(partName)).toEqual(["hind leg", "T1"]);
  });
});
