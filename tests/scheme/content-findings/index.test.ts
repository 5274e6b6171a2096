import { describe, expect, it } from "vitest";
import type { Account } from "../../../src/scheme/account.ts";
import { lengthOf } from "../../../src/scheme/content-findings/account-findings.ts";
import type { Content } from "../../../src/scheme/content-findings/content.ts";
import { contentFindings, findingInWords } from "../../../src/scheme/content-findings/index.ts";
import { readScheme } from "../../../src/scheme/scheme.ts";

const CASTES = ["queen", "worker", "male", "female"].map((id) => ({
  id,
  label: id,
  words: [id, `${id}s`, id.charAt(0)],
}));

function taxon(taxonID: string, castes: string[], within: string[] = []) {
  return { taxonID, scientificName: taxonID.toUpperCase(), castes, within } as unknown as Content["taxa"][number];
}
type Row = Content["characters"][number];
function character(taxonID: string, part: string, state: string, more: Partial<Row> = {}): Row {
  return {
    taxonID,
    castes: [],
    form: "",
    part,
    state,
    note: "",
    reliability: "supports",
    evidence: "sight",
    row: 2,
    ...more,
  };
}
function account(taxonID: string, front: Partial<Account["front"]>): [string, Account] {
  const whole = { taxonID, lead: "", evidence: "", sizes: [], look_alikes: [], ...front };
  return [taxonID, { file: `species/${taxonID}.md`, front: whole, sections: [] }];
}
function content(more: Partial<Content>): Content & { mediaFindings: [] } {
  return {
    settings: { body_plan: "bee", castes: CASTES },
    taxa: [taxon("a", ["queen", "male"]), taxon("b", ["queen", "male"])],
    outside: [],
    characters: [],
    accounts: new Map(),
    mediaFindings: [],
    ...more,
  };
}
const checks = (more: Partial<Content>) => contentFindings(content(more)).map(({ check, value }) => [check, value]);

describe("findings about characters", () => {
  it("tell of parts, castes, words and evidence that are none", () => {
    const characters = [
      character("a", "colar", "black"),
      character("a", "collar", "yellowish"),
      character("a", "T1", "varies", { note: "much." }),
      character("a", "T2", "varies", { note: "yellow or black: narrow." }),
      character("a", "face", "black", { castes: ["worker"] }),
      character("a", "t3", "iris sides", { evidence: "feeling" }),
      character("*", "eyes", "narrow", { castes: ["worker"] }),
      character("a", "voice", "high-pitched buzz"),
    ];
    expect(checks({ characters })).toEqual([
      ["caste_not_of_taxon", "worker"],
      ["long_state", "yellowish"],
      ["unknown_evidence", "feeling"],
      ["unknown_part", "colar"],
      ["varies_unsaid", "varies"],
    ]);
  });
  it("leave the parts of a scheme without a body plan alone", () => {
    expect(
      checks({ settings: { body_plan: "", castes: CASTES }, characters: [character("a", "leaf-edge", "toothed")] }),
    ).toEqual([]);
  });
  it("judge a taxon outside by its own body plan", () => {
    const outside = [
      { taxonID: "outside-x", scientificName: "X", castes: [], bodyPlan: "hoverfly" },
    ] as unknown as Content["outside"];
    const characters = [character("outside-x", "T5", "white"), character("outside-x", "T6", "white")];
    expect(checks({ outside, characters })).toEqual([["unknown_part", "T6"]]);
  });
});

describe("findings about accounts", () => {
  it("tell of sizes that are others, and of castes the taxon lacks", () => {
    const accounts = new Map([
      account("a", {
        evidence: "sight of workers",
        sizes: [
          { caste: "queen", mm: [10, 12], note: "" },
          { caste: "male", mm: [8, 9], note: "" },
        ],
      }),
    ]);
    const characters = [
      character("a", "size", "10–12 mm", { castes: ["queen"] }),
      character("a", "size", "8–10 mm", { castes: ["male"], row: 3 }),
    ];
    expect(checks({ accounts, characters })).toEqual([
      ["caste_not_of_taxon", "worker"],
      ["size_differs", "male 8–9 mm"],
    ]);
  });
  it("tell of evidence that is less than what settles it, by caste", () => {
    const settling = character("a", "antenna", "long", {
      castes: ["male"],
      reliability: "settles",
      evidence: "specimen",
    });
    const weaker = (evidence: string) =>
      checks({ accounts: new Map([account("a", { evidence })]), characters: [settling] });
    expect(weaker("sight")).toEqual([["evidence_weaker", "sight"]]);
    expect(weaker("a photograph for males")).toEqual([["evidence_weaker", "a photograph for males"]]);
    for (const enough of [
      "a specimen",
      "sight for queens",
      "sight for queens; a specimen for males",
      "a view of the antenna",
      "",
    ])
      expect(weaker(enough), enough).toEqual([]);
  });
  it("reads lengths", () => {
    expect(["11–17 mm", "8-9.5 mm", "12 mm", "small"].map(lengthOf)).toEqual([[11, 17], [8, 9.5], [12, 12], undefined]);
  });
});

describe("findings about look-alikes", () => {
  const names = (...ids: string[]) => ids.map((taxonID) => ({ taxonID, difference: "" }));
  it("tell of one that only one side names", () => {
    const accounts = new Map([account("a", { look_alikes: names("b") }), account("b", {})]);
    expect(checks({ accounts })).toEqual([["look_alike_one_side", "b"]]);
  });
  it("take a member for its group, and ask nothing of a taxon without an account", () => {
    const taxa = [taxon("a", []), taxon("b", []), taxon("c", [], ["a"])];
    const accounts = new Map([account("a", { look_alikes: names("b") }), account("b", { look_alikes: names("c") })]);
    expect(checks({ taxa, accounts })).toEqual([]);
  });
  it("tell once of two that nothing separates, unless an aggregate holds both", () => {
    const accounts = new Map([account("a", { look_alikes: names("b") }), account("b", { look_alikes: names("a") })]);
    const same = [character("a", "T1", "black"), character("b", "T1", "black")];
    expect(checks({ accounts, characters: same })).toEqual([["nothing_separates", "b"]]);
    const misleading = [
      ...same,
      character("a", "T4", "white", { reliability: "misleads" }),
      character("b", "T4", "buff"),
    ];
    expect(checks({ accounts, characters: misleading })).toEqual([["nothing_separates", "b"]]);
    expect(
      checks({ accounts, characters: [...same, character("a", "T4", "white"), character("b", "T4", "buff")] }),
    ).toEqual([]);
    expect(
      checks({ accounts, characters: same, taxa: [taxon("a", [], ["g"]), taxon("b", [], ["g"]), taxon("g", [])] }),
    ).toEqual([]);
  });
});

describe("the demonstration", () => {
  it("has no finding", () => {
    expect(contentFindings(readScheme("content")).map(findingInWords)).toEqual([]);
  });
});
