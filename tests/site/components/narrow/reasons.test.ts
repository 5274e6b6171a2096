import { describe, expect, it } from "vitest";
import { helperOf } from "../../../../src/site/components/narrow/narrow.ts";
import { dayOf, reasonWords } from "../../../../src/site/components/narrow/reason-words.ts";
import { type Evidence, reasonsFor } from "../../../../src/site/components/narrow/reasons.ts";
import body from "../../../../src/site/words/en/body.ts";
import narrow from "../../../../src/site/words/en/narrow.ts";
import { formatMessage } from "../../../../src/site/words/message.ts";
import { EVEN, row, taxon } from "./invented-taxa.ts";

const words: Readonly<Record<string, string>> = { ...body, ...narrow };
const speech = {
  say: (key: string, values = {}) => formatMessage(words[key] ?? key, "en-GB", values),
  ...{ language: "en-GB", casteName: (caste: string) => caste, nearestKm: 150 },
};
const season = EVEN.map((_, i) => (i >= 12 && i < 24 ? 10 : 0));
const bee = taxon("bee", {
  castes: ["queen"],
  season,
  characters: [row("tail", "red"), row("collar", "black"), row("face", "varies"), row("wings", "clear")],
});
const other = taxon("other", {
  characters: [
    row("tail", "white"),
    row("collar", "yellow"),
    row("face", "black"),
    row("face", "white", { castes: ["x"] }),
    row("wings", "smoky"),
    row("hind-leg", "none"),
    row("hind-leg", "orange", { castes: ["x"] }),
  ],
});
const helper = helperOf([bee, other]);
const said = (evidence: Partial<Evidence>, states: [string, string][] = []) =>
  reasonsFor(
    helper,
    { taxon: bee, chance: 0.5, caste: "queen", form: "" },
    { answers: { states: new Map(states) }, visits: EVEN, ...evidence },
  ).map((reason) => `${reason.stand}: ${reasonWords(reason, speech)}`);

describe("reasons", () => {
  it("say of each answer whether it agrees, what was expected, and what is not told", () => {
    expect(
      said({}, [
        ["tail", "red"],
        ["collar", "black"],
      ]),
    ).toEqual(["agrees: tail red and collar black agree"]);
    expect(
      said({}, [
        ["tail", "white"],
        ["face", "black"],
        ["hind-leg", "none"],
      ]),
    ).toEqual(["against: tail: white, not red", "unknown: hind leg: the table does not tell", "unknown: face varies"]);
  });

  it("say whether it is in season, from the records", () => {
    expect(said({ third: 14 })).toEqual(["agrees: in season: queen"]);
    expect(said({ third: 2 })).toEqual(["against: out of season: most records from 1 May to 31 August"]);
  });

  it("say what is recorded in the square, or how far the nearest is, and never that it is absent", () => {
    const nearby = (here: number, lastYear?: number, nearestKm?: number) =>
      said({ nearby: { here, lastYear, nearestKm } });
    expect(nearby(3, 2021, 0)).toEqual(["agrees: recorded in this 10 km square in 2021"]);
    expect(nearby(1, undefined, 0)).toEqual(["agrees: recorded in this 10 km square"]);
    expect(nearby(0, undefined, 12)).toEqual(["unknown: nearest square 12 km"]);
    expect(nearby(0, undefined, 61)).toEqual(["against: nearest square 61 km"]);
    expect(nearby(0)).toEqual(["against: no square within 150 km"]);
  });

  it("say nothing of the place of a taxon of which none is told", () => {
    expect(said({ nearby: undefined })).toEqual([]);
  });

  it("name the days of a third of the month", () => {
    expect([dayOf(14, "first", "en-GB"), dayOf(5, "last", "en-GB"), dayOf(24, "last", "fr")]).toEqual([
      "21 May",
      "28 February",
      "10 septembre",
    ]);
  });
});
