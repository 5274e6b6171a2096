import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { helperOf, weigh } from "../../../../src/site/components/narrow/narrow.ts";
import { outcomeOf } from "../../../../src/site/components/narrow/outcome.ts";
import { EVEN, row, taxon } from "./invented-taxa.ts";

const common = taxon("common", { characters: [row("tail", "left"), row("leg", "thick", { reliability: "settles" })] });
const rare = taxon("rare", { characters: [row("tail", "right"), row("leg", "thin", { reliability: "settles" })] });
const pair = taxon("pair", { aggregate: true, members: ["common", "rare"] });
const everywhere = {
  everywhere: new Map([
    ["common", 0.5],
    ["rare", 0.1],
    ["pair", 0.5],
  ]),
  visits: 999_999,
};
const setting = { frequencies: everywhere, visits: EVEN };
const chancesOf = (states: [string, string][], taxa = [common, rare, pair]) => {
  const helper = helperOf(taxa);
  return outcomeOf(helper, weigh(helper, setting, { states: new Map(states) }));
};
const near = (chance: number | undefined, expected: number) => expect(chance).toBeCloseTo(expected, 4);

/**
 * Worked by hand. Rates: −ln(1 − 0.5) = 0.693147 and −ln(1 − 0.1) = 0.105361, so of the 0.98 for the two taxa
 * (2 in 100 are something else) 0.98 × 0.693147 / 0.798508 = 0.850694 and 0.129306.
 */
describe("two taxa", () => {
  it("stand before any answer as often as they are met", () => {
    const { candidates, elsewhere } = chancesOf([]);
    expect(candidates.map(({ taxon: { slug } }) => slug)).toEqual(["common", "rare"]);
    near(candidates[0]?.chance, 0.850694);
    near(candidates[1]?.chance, 0.129306);
    near(elsewhere, 0.02);
  });

  it("are turned round by two answers as Bayes's rule has it", () => {
    // tail right: 1/6 of common's answers, 5/6 of rare's, 1/2 of something else's.
    // 0.850694/6 = 0.141782; 0.129306 × 5/6 = 0.107755; 0.01: sum 0.259537.
    const once = chancesOf([["tail", "right"]]);
    near(once.candidates[0]?.chance, 0.141782 / 0.259537);
    near(once.candidates[1]?.chance, 0.107755 / 0.259537);
    // leg thin besides: 1/16, 15/16, 1/2. 0.008861; 0.101020; 0.005: sum 0.114881.
    const twice = chancesOf([
      ["tail", "right"],
      ["leg", "thin"],
    ]);
    expect(twice.candidates[0]?.taxon.slug).toBe("rare");
    near(twice.candidates[0]?.chance, 0.10102 / 0.114881);
    near(twice.elsewhere, 0.005 / 0.114881);
  });

  it("come together as the group that holds them, offered where neither is settled", () => {
    const { group } = chancesOf([["tail", "right"]]);
    expect(group?.taxon.slug).toBe("pair");
    near(group?.chance, (0.141782 + 0.107755) / 0.259537);
    expect(chancesOf([["leg", "thick"]]).group).toBeUndefined();
  });

  it("keep their odds to the others by an answer the table does not tell of one of them", () => {
    const silent = taxon("silent", { characters: [row("leg", "thick", { reliability: "settles" })] });
    const [before, after] = [chancesOf([], [common, silent]), chancesOf([["tail", "left"]], [common, silent, rare])];
    const odds = ({ candidates }: typeof before) => {
      const of = (slug: string) => candidates.find((one) => one.taxon.slug === slug)?.chance ?? 0;
      return of("silent") / of("common");
    };
    // Against common, which agrees with 5/6, silent gets the mean of common's 5/6 and rare's 1/6 by their priors.
    const mean = (Math.LN2 * (5 / 6) + 0.105361 / 6) / (Math.LN2 + 0.105361);
    near(odds(after) / odds(before), mean / (5 / 6));
  });
});

const states = fc.uniqueArray(
  fc.constantFrom<[string, string]>(["tail", "left"], ["leg", "thin"], ["hair", "black"], ["wing", "clear"]),
  { selector: ([id]) => id },
);
const invented = fc.array(
  fc.record({
    tail: fc.constantFrom("left", "right", "varies", ""),
    leg: fc.constantFrom("thick", "thin", "none", ""),
    hair: fc.constantFrom("black", "white", "yellow", ""),
    castes: fc.constantFrom<string[]>([], ["queen", "worker", "male"], ["female", "male"]),
    season: fc.array(fc.nat(50), { minLength: 36, maxLength: 36 }),
    frequency: fc.double({ min: 0, max: 1, noNaN: true }),
    outside: fc.boolean(),
  }),
  { minLength: 1, maxLength: 6 },
);
const made = (list: typeof invented extends fc.Arbitrary<infer T> ? T : never) =>
  list.map(({ tail, leg, hair, castes, season, outside }, i) =>
    taxon(`taxon-${i}`, {
      castes,
      outside,
      season: outside ? EVEN.map(() => 0) : season,
      characters: Object.entries({ tail, leg, hair }).flatMap(([part, state]) =>
        state === "" ? [] : [row(part, state)],
      ),
    }),
  );

describe("any sighting", () => {
  it("gives chances that sum to 1 and are never 0, whatever the order of its answers", () => {
    fc.assert(
      fc.property(
        invented,
        states,
        fc.option(fc.nat(35)),
        fc.constantFrom(undefined, "queen", "male"),
        (list, told, third, caste) => {
          const helper = helperOf(made(list));
          const where = {
            frequencies: {
              everywhere: new Map(list.map(({ frequency }, i) => [`taxon-${i}`, frequency])),
              visits: 100,
            },
            visits: EVEN,
            third: third ?? undefined,
          };
          const weighed = weigh(helper, where, { caste, states: new Map(told) });
          expect(weighed.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
          expect(weighed.every(({ chance }) => chance > 0)).toBe(true);
          const turned = weigh(helper, where, { caste, states: new Map(told.toReversed()) });
          turned.forEach(({ chance }, i) => expect(chance).toBeCloseTo(weighed[i]?.chance ?? 0, 12));
          const { candidates, elsewhere } = outcomeOf(helper, weighed);
          expect(candidates.length).toBe(list.length);
          expect(candidates.reduce((sum, { chance }) => sum + chance, elsewhere)).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it("is not changed by an answer to what no taxon is described by", () => {
    fc.assert(
      fc.property(invented, states, (list, told) => {
        const helper = helperOf(made(list));
        const where = { frequencies: { everywhere: new Map(), visits: 100 }, visits: EVEN };
        const without = weigh(helper, where, { states: new Map(told) });
        const withIt = weigh(helper, where, { states: new Map([...told, ["voice", "high"]]) });
        expect(withIt).toEqual(without);
      }),
    );
  });
});
