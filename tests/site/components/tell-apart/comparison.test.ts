import { describe, expect, it } from "vitest";
import type { Character } from "../../../../src/publishing/contracts.ts";
import type { IdentifyTaxon } from "../../../../src/site/components/identify/identify-taxa.ts";
import { comparisonOf } from "../../../../src/site/components/tell-apart/comparison.ts";
import { lookingOrder } from "../../../../src/site/components/tell-apart/comparison-words.ts";
import { relation } from "../../../../src/site/components/tell-apart/described.ts";
import { viewsOf } from "../../../../src/site/components/tell-apart/views.ts";

const CASTES = [
  { id: "queen", label: "Queen", within: ["female"] },
  { id: "worker", label: "Worker", within: ["female"] },
  { id: "male", label: "Male", within: [] },
  { id: "female", label: "Female", within: [] },
];

function character(part: string, state: string, more: Partial<Character> = {}): Character {
  return { castes: [], form: "", part, state, note: "", reliability: "supports", evidence: "sight", ...more };
}

function taxon(slug: string, characters: Character[], more: Partial<IdentifyTaxon> = {}): IdentifyTaxon {
  return {
    slug,
    name: slug,
    short: slug,
    scientific: slug,
    outside: false,
    kind: "",
    aggregate: false,
    members: [],
    within: [],
    castes: ["queen", "worker", "male"],
    plan: "bee",
    characters,
    sizes: [],
    evidence: "",
    season: [],
    seasons: [],
    habitats: [],
    firstSeen: "",
    lookAlikes: [],
    records: 0,
    ...more,
  };
}

const compare = (taxa: IdentifyTaxon[], all = taxa) => {
  const [view] = viewsOf(taxa, CASTES);
  if (view === undefined) throw new Error("no view");
  return comparisonOf(taxa, view, all);
};
const row = (comparison: ReturnType<typeof compare>, part: string) =>
  comparison.rows.find((each) => each.part === part);

describe("rows of a comparison", () => {
  const [a, b, c, d] = ["black", "black", "orange", "black"].map((state, index) =>
    taxon(`t${index}`, [character("hind-leg", state), character("face", "black")]),
  ) as [IdentifyTaxon, IdentifyTaxon, IdentifyTaxon, IdentifyTaxon];

  it("mark the value of a minority, and none where all agree", () => {
    const four = compare([a, b, c, d]);
    expect(row(four, "hind-leg")?.cells.map(({ unlike }) => unlike)).toEqual([false, false, true, false]);
    expect(row(four, "face")).toMatchObject({ agrees: true, settles: false });
    expect(row(four, "face")?.cells.some(({ unlike }) => unlike)).toBe(false);
  });
  it("mark of a tie what is not as in the first column", () => {
    expect(row(compare([c, a]), "hind-leg")?.cells.map(({ unlike }) => unlike)).toEqual([false, true]);
    expect(
      row(compare([c, a, b, taxon("e", [character("hind-leg", "orange")])]), "hind-leg")?.cells.map(
        ({ unlike }) => unlike,
      ),
    ).toEqual([false, true, true, false]);
  });
  it("leave out what every taxon of the group has, until another is beside it", () => {
    const bee = (slug: string) => taxon(slug, [character("antennae", "long"), character("T1", "black")]);
    const fly = taxon("fly", [character("antennae", "stub", { reliability: "settles" })], {
      outside: true,
      castes: [],
      plan: "hoverfly",
    });
    expect(row(compare([bee("a"), bee("b")]), "antennae")).toBeUndefined();
    expect(row(compare([bee("a"), fly]), "antennae")).toMatchObject({ settles: true, drawn: true });
  });
});

describe("what settles a pair", () => {
  const settles = { reliability: "settles" as const };
  it("differs outright, is said to settle by one of the two, and misleads in neither", () => {
    const one = taxon("a", [
      character("T4", "red", settles),
      character("T5", "white", settles),
      character("T2", "black"),
    ]);
    const other = taxon("b", [
      character("T4", "orange"),
      character("T5", "buff", { reliability: "misleads" }),
      character("T2", "yellow"),
    ]);
    expect(compare([one, other]).verdicts[0]).toMatchObject({
      settling: ["T4"],
      supporting: ["T2"],
      misleading: ["T5"],
    });
  });
  it("is nothing where what varies takes the other in", () => {
    const one = taxon("a", [character("T4", "varies", { note: "white or buff.", ...settles })]);
    const other = taxon("b", [character("T4", "white")]);
    expect(compare([one, other]).verdicts[0]).toMatchObject({ settling: [], supporting: [], misleading: [] });
    expect(relation(["white", "buff"], ["white"])).toBe("overlap");
    expect(relation([], ["white"])).toBe("overlap");
  });
  it("names the nearest aggregate that holds both, through others", () => {
    const group = taxon("group", [], { aggregate: true, members: ["a", "sum"] });
    const sum = taxon("sum", [character("T1", "black")], { aggregate: true, within: ["group"] });
    const one = taxon("a", [character("T1", "black")], { within: ["group"] });
    const low = taxon("b", [character("T1", "black")], { within: ["sum"] });
    const all = [one, sum, low, group];
    expect(compare([one, low], all).verdicts[0]?.aggregate?.slug).toBe("group");
    expect(compare([sum, low], all).verdicts[0]).toMatchObject({ nested: true });
    expect(compare([one, taxon("z", [])], all).verdicts[0]?.aggregate).toBeUndefined();
  });
  it("is looked at in the order that leaves least to look at", () => {
    const states = [
      ["black", "clear"],
      ["orange", "clear"],
      ["none", "smoky"],
    ];
    const taxa = states.map(([leg = "", wings = ""], index) =>
      taxon(`t${index}`, [character("hind-leg", leg, settles), character("wings", wings, settles)]),
    );
    const { verdicts, rows } = compare(taxa);
    expect(lookingOrder(verdicts, rows)).toEqual(["hind-leg"]);
  });
});

describe("castes side by side", () => {
  it("are those both can have: a queen beside a female, never beside a male", () => {
    const social = taxon("a", [character("face", "black"), character("face", "yellow", { castes: ["male"] })]);
    const cuckoo = taxon("b", [character("face", "black")], { castes: ["female", "male"] });
    expect(viewsOf([social, cuckoo], CASTES).map(({ castes }) => castes)).toEqual([
      [["queen", "worker"], ["female"]],
      [["male"], ["male"]],
    ]);
  });
  it("are kept apart where one of them looks different", () => {
    const social = taxon("a", [
      character("T4", "buff", { castes: ["queen"] }),
      character("T4", "white", { castes: ["worker", "male"] }),
    ]);
    expect(viewsOf([social, taxon("b", [])], CASTES).map(({ id }) => id)).toEqual(["queen", "worker-male"]);
  });
  it("are none where a taxon tells none apart, and do not mix the sexes where only one is known", () => {
    const fly = taxon("fly", [], { castes: [] });
    const workers = taxon("honey", [], { castes: ["worker"] });
    const split = taxon("a", [character("face", "yellow", { castes: ["male"] })]);
    expect(viewsOf([fly, fly], CASTES)).toEqual([{ id: "all", castes: [[], []] }]);
    expect(viewsOf([split, workers], CASTES).map(({ castes }) => castes)).toEqual([[["queen", "worker"], ["worker"]]]);
  });
});
