import { describe, expect, it } from "vitest";
import type { Character } from "../../../../src/publishing/contracts.ts";
import { type StarterTaxon, startersByMonth } from "../../../../src/site/components/take-part/starters.ts";

const counts = (entries: Record<number, number>) => Array.from({ length: 36 }, (_, third) => entries[third] ?? 0);
const character = (given: Partial<Character>): Character => ({
  castes: [],
  form: "",
  part: "tail",
  state: "white",
  note: "",
  reliability: "settles",
  evidence: "sight",
  ...given,
});
const caste = (id: string, records: number[]) => ({
  caste: id,
  records,
  total: records.reduce((sum, one) => sum + one, 0),
});
const taxon = (slug: string, given: Partial<StarterTaxon>): StarterTaxon => ({
  slug,
  is_aggregate: false,
  generalised_to: "none",
  castes: ["queen", "worker"],
  characters: [character({})],
  within: [],
  season_by_caste: [caste("queen", counts({ 9: 100, 12: 5 })), caste("worker", counts({ 15: 200 }))],
  ...given,
});
const months = (taxa: StarterTaxon[], records = new Map(taxa.map(({ slug }) => [slug, 10]))) =>
  startersByMonth(taxa, records, 3);
const told = (taxa: StarterTaxon[]) =>
  months(taxa).map((list) =>
    list.map(({ slug, settled }) => `${slug}: ${settled.map(({ castes }) => castes.join("+")).join(", ")}`),
  );

describe("startersByMonth", () => {
  it("names a taxon in the months in which a caste that a character settles is about", () => {
    const list = told([taxon("tree", {})]);
    expect(list[3]).toEqual(["tree: queen"]);
    expect(list[4]).toEqual([]); // 5 of 105 queens: under 8 %
    expect(list[5]).toEqual(["tree: worker"]);
    expect(list.filter((names) => names.length > 0)).toHaveLength(2);
  });

  it("leaves out castes that nothing settles by sight or in a photograph, and those that need a specimen", () => {
    expect(told([taxon("queens", { characters: [character({ castes: ["queen"] })] })])[5]).toEqual([]);
    for (const characters of [
      [],
      [character({ reliability: "supports" })],
      [character({ evidence: "specimen" })],
      [character({}), character({ part: "antenna", evidence: "specimen" })],
      [character({ form: "black" })],
    ])
      expect(told([taxon("none", { characters })]).flat()).toEqual([]);
  });

  it("never names a group, nor a taxon that is shown coarser, nor one without records in the place", () => {
    expect(told([taxon("group", { is_aggregate: true })]).flat()).toEqual([]);
    expect(told([taxon("shy", { generalised_to: "10 km" })]).flat()).toEqual([]);
    expect(months([taxon("tree", {})], new Map()).flat()).toEqual([]);
  });

  it("leaves out what is scarce in the place, and what only the group's mark settles", () => {
    const taxa = [taxon("common", {}), taxon("scarce", {})];
    const list = startersByMonth(
      taxa,
      new Map([
        ["common", 1000],
        ["scarce", 99],
      ]),
      3,
    );
    expect(list[3]?.map(({ slug }) => slug)).toEqual(["common"]);
    const group = taxon("group", { is_aggregate: true, characters: [character({ reliability: "supports" })] });
    expect(told([taxon("member", { within: ["group"] }), group]).flat()).toEqual([]);
    const other = taxon("group", { is_aggregate: true, characters: [character({ state: "buff" })] });
    expect(told([taxon("member", { within: ["group"] }), other])[3]).toEqual(["member: queen"]);
  });

  it("gives the easier of two characters, and puts the most recorded first", () => {
    const two = taxon("two", { characters: [character({ part: "face", evidence: "photograph" }), character({})] });
    expect(months([two])[3]?.[0]?.settled[0]?.by.part).toBe("tail");
    const order = months(
      [taxon("a", {}), taxon("b", {})],
      new Map([
        ["a", 1],
        ["b", 2],
      ]),
    );
    expect(order[3]?.map(({ slug }) => slug)).toEqual(["b", "a"]);
  });
});
