import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answerChances } from "../../../../src/site/components/narrow/answer-chances.ts";
import { casteChance } from "../../../../src/site/components/narrow/caste-chance.ts";
import { namedStates, type PartFact, partFacts } from "../../../../src/site/components/narrow/part-facts.ts";
import { questionsOf } from "../../../../src/site/components/narrow/questions.ts";
import { row, taxon } from "./invented-taxa.ts";

const fact = (states: string[], reliability: PartFact["reliability"] = "supports"): PartFact => ({
  ...{ states, varies: states.length > 1, reliability, evidence: "sight" },
});
const about = (id: string, states: string[], parts = [id]) => ({ id, parts, states });
const close = (chances: number[] | undefined, expected: number[]) =>
  expected.forEach((one, i) => expect(chances?.[i]).toBeCloseTo(one, 9));

describe("the chance of an answer", () => {
  it("is wrong once in 16, once in 6, twice in 5 by what the character does", () => {
    const long = about("tongue", ["long", "short"]);
    const of = (reliability: PartFact["reliability"]) =>
      answerChances(long, new Map([["tongue", fact(["long"], reliability)]]));
    close(of("settles"), [15 / 16, 1 / 16]);
    close(of("supports"), [5 / 6, 1 / 6]);
    close(of("misleads"), [3 / 5, 2 / 5]);
  });

  it("goes to what the colour is taken for in three wrong answers of four, the rest to any", () => {
    // Black is taken for brown. Wrong 1/6: 3/4 of it brown, 1/4 of it shared by brown, white and red.
    close(answerChances(about("face", ["black", "white", "red", "brown"]), new Map([["face", fact(["black"])]])), [
      5 / 6,
      1 / 72,
      1 / 72,
      1 / 8 + 1 / 72,
    ]);
  });

  it("names the other shade once in four", () => {
    close(answerChances(about("collar", ["yellow", "lemon"]), new Map([["collar", fact(["lemon"])]])), [
      5 / 24 + 1 / 6,
      15 / 24,
    ]);
  });

  it("is shared by the states of a part that varies, and by parts that are seen as one", () => {
    const leg = about("leg", ["a", "b", "c"]);
    close(answerChances(leg, new Map([["leg", fact(["a", "b"])]])), [5 / 12 + 1 / 24, 5 / 12 + 1 / 24, 1 / 12]);
    const tail = about("tail", ["a", "b"], ["T4", "T5", "T6"]);
    const facts = new Map([
      ["T4", fact(["a"])],
      ["T5", fact(["b"])],
      ["T6", fact(["b"])],
    ]);
    close(answerChances(tail, facts), [(5 / 6 + 1 / 6 + 1 / 6) / 3, (1 / 6 + 5 / 6 + 5 / 6) / 3]);
  });

  it("is not known where the table does not tell, or only that it varies", () => {
    expect(answerChances(about("leg", ["a", "b"]), new Map())).toBeUndefined();
    expect(answerChances(about("leg", ["a", "b"]), new Map([["leg", fact([])]]))).toBeUndefined();
  });

  it("sums to 1 over the answers and is never 0", () => {
    const words = fc.uniqueArray(
      fc.constantFrom("black", "red", "orange", "white", "lemon", "yellow", "none", "long"),
      { minLength: 2 },
    );
    fc.assert(
      fc.property(
        words,
        fc.nat(),
        fc.constantFrom<PartFact["reliability"]>("settles", "supports", "misleads"),
        (states, at, reliability) => {
          const own = [states[at % states.length] ?? "", states[(at + 1) % states.length] ?? ""].slice(0, 1 + (at % 2));
          const chances = answerChances(about("a", states), new Map([["a", fact(own, reliability)]])) ?? [];
          expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
          expect(Math.min(...chances)).toBeGreaterThan(0);
        },
      ),
    );
  });
});

describe("what the table says of a part", () => {
  const bee = taxon("bee", {
    castes: ["queen", "male"],
    characters: [
      row("face", "black"),
      row("face", "varies", { castes: ["male"], note: "black or lemon: narrow." }),
      row("T2", "red"),
      row("T2", "orange", { form: "worn", reliability: "misleads" }),
      row("leg", "absent"),
      row("coat", "varies", { note: "short or long." }),
    ],
  });
  const known = namedStates([bee, taxon("other", { characters: [row("face", "lemon")] })]);
  it("is of the caste before it is of all, and of the form before the usual one", () => {
    expect(partFacts(bee, "queen", "", known).get("face")).toMatchObject({ states: ["black"], varies: false });
    expect(partFacts(bee, "male", "", known).get("face")).toMatchObject({ states: ["black", "lemon"], varies: true });
    expect(partFacts(bee, "male", "worn", known).get("T2")).toMatchObject({
      states: ["orange"],
      reliability: "misleads",
    });
    expect(partFacts(bee, "male", "worn", known).get("face")).toMatchObject({ states: ["black", "lemon"] });
  });

  it("has one word for what is not there, and none for a variation without known states", () => {
    expect(partFacts(bee, "queen", "", known).get("leg")?.states).toEqual(["none"]);
    expect(partFacts(bee, "queen", "", known).get("coat")?.states).toEqual([]);
  });
});

describe("questions", () => {
  it("take the end of the abdomen as one, and leave out what has one answer or is described freely", () => {
    const words = ["a", "b", "c", "d", "e", "f"];
    const taxa = words.map((word) =>
      taxon(word, {
        characters: [
          row("coat", word),
          row("T4", "white"),
          row("T6", "red"),
          row("voice", "high"),
          row("size", `${word} mm`),
        ],
      }),
    );
    expect(questionsOf(taxa)).toEqual([{ id: "tail", parts: ["T4", "T5", "T6"], states: ["white", "red"] }]);
  });
});

describe("the caste that is said", () => {
  it("is right nine times in ten; a female may be of any female caste, and a cuckoo passes for a queen", () => {
    expect([casteChance("queen", "queen"), casteChance("queen", "male"), casteChance("female", "worker")]).toEqual([
      0.9, 0.1, 0.9,
    ]);
    expect([casteChance("queen", "female"), casteChance(undefined, "male"), casteChance("male", "")]).toEqual([
      0.5, 1, 0.5,
    ]);
  });
});
