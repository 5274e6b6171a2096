import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { partyKey } from "../../src/records/party-key.ts";

// Spellings of one person and of one party, from the ways names are commonly written; not measured on any source.
const SPELLINGS: readonly (readonly string[])[] = [
  ["Ann Lee", "LEE, Ann", "Ann LEE"],
  ["Ann Smith", "Smith, Ann", "SMITH Ann", "smith ann", "Ann  Smith.", "Ann Smith; Ann Smith"],
  ["A.B. Smith", "A. B. Smith", "Smith, A.B.", "AB Smith", "Smith A B", "Smith, AB"],
  ["Zoë O’Brien", "zoe o'brien", "O'BRIEN, ZOË"],
  [
    "Ann Smith & Bo Jones",
    "Bo Jones; Ann Smith",
    "Jones, Bo | Smith, Ann",
    "Ann Smith and Bo Jones",
    "Bo Jones, Ann Smith",
  ],
  ["A. Smith, B. Jones", "Smith, A., Jones, B.", "B Jones & A Smith"],
  ["Hillside School", "hillside school"],
  ["", " ", "-", "?"],
];

describe("partyKey", () => {
  it.each(SPELLINGS.map((spellings) => [spellings[0] ?? "", spellings] as const))(
    "is one for “%s” in all its spellings",
    (first, all) => expect(new Set(all.map(partyKey))).toEqual(new Set([partyKey(first)])),
  );

  it("tells the people of that list, and others, apart", () => {
    const others = ["A. Smith & B. Smith", "Li Wu", "Roland", "Roland Anders"];
    const keys = [...SPELLINGS.map(([first]) => first ?? ""), ...others].map(partyKey);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it("holds no name where none was written, and no “and” where there was one", () => {
    expect(partyKey("…")).toBe("");
    expect(partyKey("Ann Smith and Bo Anderson")).toBe("anderson ann bo smith");
  });

  it("gives a key its own key, and does not mind the order of words", () => {
    const name = fc.array(fc.constantFrom("Ann", "SMITH", "A.", "de", "O’Brien", "Zoë", "&", ";", ",", "and", "Żak"), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(name, (words) => {
        const key = partyKey(words.join(" "));
        expect(partyKey(key)).toBe(key);
        expect(key.split(" ")).toEqual(key.split(" ").sort());
      }),
    );
  });
});
