import { describe, expect, it } from "vitest";
import { lookNext } from "../../../../src/site/components/narrow/look-next.ts";
import { helperOf, weigh } from "../../../../src/site/components/narrow/narrow.ts";
import { EVEN, row, taxon } from "./invented-taxa.ts";

const settles = { reliability: "settles", evidence: "photograph" } as const;
const one = taxon("one", { characters: [row("tail", "long"), row("leg", "thick", settles), row("eye", "large")] });
const other = taxon("other", {
  characters: [row("tail", "long"), row("leg", "thin", settles), row("eye", "varies", { note: "large or small." })],
});
const third = taxon("third", { characters: [row("tail", "short"), row("eye", "small")] });
const setting = {
  frequencies: {
    everywhere: new Map([
      ["one", 0.3],
      ["other", 0.3],
      ["third", 0.001],
    ]),
    visits: 1e6,
  },
  visits: EVEN,
};
const look = (asked: string[], taxa = [one, other, third]) => {
  const helper = helperOf(taxa);
  return lookNext(helper, weigh(helper, setting, { states: new Map() }), new Set(asked));
};

describe("what to look at next", () => {
  it("is what parts the likely ones best, with what each answer means and what can show it", () => {
    const next = look([]);
    expect(next?.question.id).toBe("leg");
    expect(next?.meanings.map(({ states, taxa }) => [states.join(), taxa.map(({ slug }) => slug).join()])).toEqual([
      ["thick", "one"],
      ["thin", "other"],
    ]);
    expect([next?.evidence, next?.failsFor]).toEqual(["photograph", []]);
  });

  it("is never what was asked already, and says for whom it fails", () => {
    const next = look(["leg"]);
    expect(next?.question.id).toBe("eye");
    expect(next?.failsFor.map(({ slug }) => slug)).toEqual(["other"]);
    expect(look(["leg", "eye", "tail"])).toBeUndefined();
  });

  it("gains as many bits as entropy falls", () => {
    // Two taxa with 0.49 each and something else with 0.02, the answer thick or thin, wrong once in 16.
    const h = (...shares: number[]) => shares.reduce((sum, share) => sum - share * Math.log2(share), 0);
    const answer = 0.49 * (15 / 16) + 0.49 / 16 + 0.01;
    const left = h((0.49 * 15) / 16 / answer, 0.49 / 16 / answer, 0.01 / answer);
    const gain = h(0.49, 0.49, 0.02) - left;
    expect(look([], [one, other])?.gain).toBeCloseTo(gain, 6);
  });
});
