import { describe, expect, it } from "vitest";
import { helperOf, weigh } from "../../src/site/components/narrow/narrow.ts";
import { outcomeOf } from "../../src/site/components/narrow/outcome.ts";
import { questionsOf } from "../../src/site/components/practice/questions.ts";
import { comparisonOf } from "../../src/site/components/tell-apart/comparison.ts";
import { confusedPairs, preparedComparisons } from "../../src/site/components/tell-apart/prepared.ts";
import { viewsOf } from "../../src/site/components/tell-apart/views.ts";
import { demonstrationTaxa } from "../support/demonstration-taxa.ts";

const { all, castes } = demonstrationTaxa();
const named = (slugs: readonly string[]) =>
  slugs.map((slug) => {
    const taxon = all.find((each) => each.slug === slug);
    if (taxon === undefined) throw new Error(slug);
    return taxon;
  });
const views = (slugs: readonly string[]) => {
  const taxa = named(slugs);
  return viewsOf(taxa, castes).map((view) => comparisonOf(taxa, view, all));
};

describe("look-alikes of the demonstration", () => {
  it("part by a character that does not mislead, or share an aggregate to record, in every view", () => {
    const pairs = confusedPairs(all);
    expect(pairs.length).toBeGreaterThan(40);
    const open = pairs.flatMap((taxa) =>
      viewsOf(taxa, castes).flatMap((view) => {
        const [verdict] = comparisonOf(taxa, view, all).verdicts;
        const parts = [...(verdict?.settling ?? []), ...(verdict?.supporting ?? [])];
        return parts.length > 0 || verdict?.aggregate !== undefined
          ? []
          : [`${taxa.map(({ slug }) => slug).join("+")} ${view.id}`];
      }),
    );
    expect(open).toEqual([]);
  });
  it("outside the group are settled at a look", () => {
    for (const taxa of confusedPairs(all).filter(([, other]) => other.outside))
      for (const view of viewsOf(taxa, castes)) {
        const [verdict] = comparisonOf(taxa, view, all).verdicts;
        const parts = [...(verdict?.settling ?? []), ...(verdict?.supporting ?? [])];
        expect(parts, `${taxa[0].slug} and ${taxa[1].slug}, ${view.id}`).not.toEqual([]);
      }
  });
  // What settles these pairs is common practice among recorders of bumblebees.
  it("are told as recorders tell them: queens by the tail, workers not at all", () => {
    const [queen, worker, male] = views(["bombus-terrestris", "bombus-lucorum-agg"]);
    expect(queen?.verdicts[0]?.settling).toEqual(["T4"]);
    expect(worker?.verdicts[0]).toMatchObject({ settling: [], aggregate: { slug: "bombus-terrestris-lucorum" } });
    expect(male?.verdicts[0]?.settling).toEqual(["face"]);
    expect(views(["bombus-lapidarius", "bombus-ruderarius"])[0]?.verdicts[0]?.settling).toEqual(["hind-leg"]);
  });
  it("leave to the antenna, and to no drawing, what settles males of two cuckoos", () => {
    const [, male] = views(["bombus-vestalis", "bombus-bohemicus"]);
    expect(male?.verdicts[0]?.settling).toEqual(["antenna"]);
    const asked = questionsOf(all, castes).map(({ id }) => id);
    expect(asked).toContain("bombus-vestalis:female");
    expect(asked.filter((id) => /(vestalis|bohemicus):male/.test(id))).toEqual([]);
  });
  it("come to their group where a white-tailed worker is told with either shade of yellow", () => {
    const helper = helperOf(all.map((taxon) => ({ ...taxon, season: [], seasons: [] })));
    const everywhere = new Map(all.map(({ slug }) => [slug, 0.2]));
    for (const shade of ["yellow", "lemon"]) {
      const states = new Map([
        ["tail", "white"],
        ["collar", shade],
        ["T2", shade],
      ]);
      const told = weigh(
        helper,
        { frequencies: { everywhere, visits: 1000 }, visits: [] },
        { caste: "worker", states },
      );
      expect(outcomeOf(helper, told).group?.taxon.slug).toBe("bombus-terrestris-lucorum");
    }
  });
  it("show of the bumblebee hoverfly the form that is like the bee beside it", () => {
    const form = (slug: string) => views([slug, "volucella-bombylans"])[0]?.columns[1]?.form;
    expect(form("bombus-lapidarius")).toBe("red-tailed");
    expect(form("bombus-lucorum-agg")).toBe("");
  });
  it("have a page each, and so has every pair of a small atlas", () => {
    const prepared = preparedComparisons(all);
    const own = all.filter(({ outside }) => !outside).length;
    const pairs = prepared.filter(({ by }) => by === "pair");
    const withOutsiders = confusedPairs(all).filter(([, other]) => other.outside).length;
    expect(pairs).toHaveLength((own * (own - 1)) / 2 + withOutsiders);
    expect(new Set(prepared.map(({ path }) => path)).size).toBe(prepared.length);
    expect(prepared.every(({ taxa }) => taxa.length >= 2 && taxa.length <= 4)).toBe(true);
  });
});
