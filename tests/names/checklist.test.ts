import { describe, expect, it } from "vitest";
import { buildChecklist } from "../../src/names/checklist.ts";
import { isNameRefusal } from "../../src/names/match-name.ts";
import { authorshipKey, indexNames } from "../../src/names/name-index.ts";
import { nearestNames } from "../../src/names/nearest-names.ts";
import { readName } from "../../src/names/read-name.ts";
import { buildTaxonGraph } from "../../src/names/taxon-graph.ts";
import { BUMBLEBEES, CHECKLIST, taxon } from "./bumblebees.ts";

/** "taxon as kind note …", or "reason". */
function match(name: string, qualifier?: string, checklist = CHECKLIST): string {
  const answer = checklist.match(name, qualifier);
  if (isNameRefusal(answer)) return answer.reason;
  return [`${answer.taxonId} as ${answer.matchedAs}`, ...answer.notes.map(({ code }) => code)].join(" ");
}

/** A refusal, or an empty one where the name was matched. */
function refused(name: string, qualifier?: string) {
  const answer = CHECKLIST.match(name, qualifier);
  return isNameRefusal(answer) ? answer : { refused: "", wayOut: "", nearest: [] };
}

describe("examples", () => {
  it("hold", () => {
    const pratorum = BUMBLEBEES.find(({ taxonId }) => taxonId === "pratorum");
    const only = pratorum === undefined ? [] : [pratorum];
    expect(buildChecklist(only).match("B. pratorum")).toMatchObject({
      taxonId: "pratorum",
      matchedAs: "accepted",
      notes: [{ code: "genus_abbreviated" }],
    });
    expect(buildChecklist(only).match("Bombus cf. pratorum")).toMatchObject({
      reason: "qualified",
      refused: 'name "Bombus cf. pratorum" is qualified (cf.)',
      nearest: [],
    });
    expect(indexNames(only).scientific.get("bombus pratorum")).toEqual([
      { taxonId: "pratorum", kind: "accepted", name: "Bombus pratorum", authorship: "linnaeus,1761" },
    ]);
    expect(authorshipKey("(Linnaeus, 1758)")).toBe("linnaeus,1758");
    expect(nearestNames(readName("Bombus partorum"), indexNames(only))).toEqual(["Bombus pratorum"]);
    const graph = buildTaxonGraph(
      new Map([
        ["lucorum", ["lucorum-agg"]],
        ["lucorum-agg", []],
      ]),
    );
    expect(graph.descendants("lucorum-agg")).toEqual(["lucorum"]);
  });
});

describe("matching", () => {
  it.each([
    ["Bombus terrestris", "terrestris as accepted"],
    ["Bombus terrestris (L.)", "terrestris as accepted"],
    ["Bombus Terrestris", "terrestris as accepted"],
    ["B. terrestris", "terrestris as accepted genus_abbreviated"],
    ["Bombus (Pyrobombus) pratorum", "pratorum as accepted"],
    ["Bombus agrorum", "pascuorum as synonym"],
    ["Psithyrus vestalis", "vestalis as synonym"],
    ["P. vestalis", "vestalis as synonym genus_abbreviated"],
    ["Bombus lucorum", "lucorum as accepted"],
    ["Bombus lucorum s.s.", "lucorum as accepted strict_sense"],
    ["Bombus lucorum s.l.", "lucorum-agg as aggregate"],
    ["White-tailed bumblebee", "lucorum-agg as aggregate"],
    ["Bombus lucorum/terrestris", "terrestris-lucorum as aggregate"],
    ["terrestris/lucorum", "terrestris-lucorum as aggregate genus_left_out"],
    ["buff tailed bumble-bee", "terrestris as vernacular"],
    ["Bourdon terrestre", "terrestris as vernacular"],
    ["Brown carder group", "brown-carders as aggregate"],
    ["Bombus terrestris audax", "terrestris as accepted infraspecific_set_aside"],
    ["Bombus pratorum (Fabricius, 1793)", "pratorum as accepted authorship_differs"],
    ["Bombus sp.", "bombus as accepted"],
    ["B. major", "bee-fly as accepted genus_abbreviated"],
    ["", "empty"],
    ["Bombus sylvarum", "not_in_checklist"],
    ["terrestris", "not_in_checklist"],
    ["Bombus terrestris × lucorum", "hybrid"],
  ])("%s: %s", (name, expected) => {
    expect(match(name)).toBe(expected);
  });

  it("never counts a qualified name as the species, and names the aggregate above", () => {
    for (const [name, qualifier] of [
      ["Bombus cf. lucorum", ""],
      ["Bombus lucorum", "aff."],
      ["Bombus lucorum?", ""],
      ["Bombus lucorum", "cf. lucorum"],
    ] as const) {
      expect(match(name, qualifier)).toBe("qualified");
      expect(refused(name, qualifier).nearest).toEqual(["Bombus lucorum agg.", "Bombus terrestris/lucorum"]);
      expect(refused(name, qualifier).wayOut).toBe("settle the identification, or record it as Bombus lucorum agg.");
    }
    expect(refused("Buff-tailed bumblebee?").wayOut).toBe(
      "settle the identification, or record it as Bombus terrestris/lucorum",
    );
    expect(refused("Bombus pratorum", "?").wayOut).toContain("has no aggregate above it");
  });

  it("refuses a qualifier it cannot read", () => {
    expect(refused("Bombus pratorum", "worn specimen").refused).toBe(
      'name "Bombus pratorum" has a qualifier "worn specimen" that is not read',
    );
  });

  it("lists near names and picks none", () => {
    expect(refused("Bombus pratorun").nearest).toEqual(["Bombus pratorum"]);
    expect(refused("B. terestris").nearest).toEqual(["Bombus terrestris"]);
    expect(refused("Buf-tailed bumblebee").nearest).toEqual(["Buff-tailed bumblebee"]);
    expect(refused("terrestris").nearest).toEqual(["Bombus terrestris"]);
    expect(refused("Apis mellifera").nearest).toEqual([]);
  });

  it("names the aggregate that holds an open pair, or a name in its wide sense", () => {
    expect(refused("Bombus muscorum/humilis").wayOut).toBe(
      "record it as brown carder group, or add the pair as a synonym of it",
    );
    expect(refused("Bombus terrestris agg.").wayOut).toContain("add it as a synonym of Bombus terrestris/lucorum");
  });

  it("completes a genus only when one taxon fits", () => {
    const two = buildChecklist([taxon("a", "Bombus major"), taxon("b", "Bombylius major")]);
    expect([match("B. major", "", two), match("Bomby. major", "", two)]).toEqual(["ambiguous", "not_in_checklist"]);
    expect(match("Bom. major", "", two)).toBe("ambiguous");
  });
});

describe("the graph", () => {
  it("has every taxon above and below, nearest first", () => {
    expect(CHECKLIST.ancestors("lucorum")).toEqual(["lucorum-agg", "terrestris-lucorum"]);
    expect(CHECKLIST.descendants("terrestris-lucorum")).toEqual([
      "lucorum-agg",
      "terrestris",
      "lucorum",
      "cryptarum",
      "magnus",
    ]);
    expect(CHECKLIST.lineage("lucorum-agg")).toEqual([
      "lucorum-agg",
      "terrestris-lucorum",
      "lucorum",
      "cryptarum",
      "magnus",
    ]);
    expect([CHECKLIST.ancestors("no such taxon"), CHECKLIST.descendants("no such taxon")]).toEqual([[], []]);
  });

  it("lets a taxon lie within two aggregates, and counts it once where they meet again", () => {
    const graph = buildTaxonGraph(
      new Map([
        ["top", []],
        ["a", ["top"]],
        ["b", ["top"]],
        ["low", ["a", "b"]],
      ]),
    );
    expect([graph.ancestors("low"), graph.descendants("top")]).toEqual([
      ["a", "b", "top"],
      ["a", "b", "low"],
    ]);
  });
});

describe("problems of a checklist", () => {
  it("are none in the bumblebees", () => {
    expect(CHECKLIST.problems).toEqual([]);
  });

  it("name unknown parents and repeated ids", () => {
    const { problems } = buildChecklist([
      taxon("a", "Bombus pratorum", { within: ["nowhere"] }),
      taxon("a", "Bombus jonellus"),
    ]);
    expect(problems.map(({ code, taxonIds }) => [code, taxonIds])).toEqual([
      ["duplicate_id", ["a"]],
      ["unknown_parent", ["a"]],
    ]);
  });

  it("name every taxon of a cycle, and leave the graph to be asked", () => {
    const list = buildChecklist([
      taxon("a", "Bombus muscorum", { within: ["b"] }),
      taxon("b", "Bombus humilis", { within: ["c"] }),
      taxon("c", "Bombus sylvarum", { within: ["a"] }),
      taxon("d", "Bombus pascuorum", { within: ["d"] }),
    ]);
    expect(list.problems.map(({ code, found }) => [code, found])).toEqual([
      ["cycle", "taxa lie within each other in a circle: a → b → c → a"],
      ["cycle", "taxa lie within each other in a circle: d → d"],
    ]);
    expect(list.ancestors("a")).toEqual(["b", "c"]);
  });

  it("name a synonym of two taxa, which then matches neither", () => {
    const list = buildChecklist([
      taxon("muscorum", "Bombus muscorum", { synonyms: ["Bombus smithianus"] }),
      taxon("pascuorum", "Bombus pascuorum", { synonyms: ["Bombus smithianus", "Bombus pascuorum"] }),
    ]);
    expect(list.problems).toMatchObject([{ code: "name_of_two_taxa", taxonIds: ["muscorum", "pascuorum"] }]);
    expect(match("Bombus smithianus", "", list)).toBe("ambiguous");
    expect(match("Bombus pascuorum", "", list)).toBe("pascuorum as accepted");
  });

  it("are none where two names differ by their author, and the author decides", () => {
    const list = buildChecklist([
      taxon("monticola", "Bombus monticola", { synonyms: ["Bombus lapponicus Smith, 1876"] }),
      taxon("lapponicus", "Bombus lapponicus", { authorship: "(Fabricius, 1793)" }),
    ]);
    expect(list.problems).toEqual([]);
    expect(match("Bombus lapponicus (Fabricius, 1793)", "", list)).toBe("lapponicus as accepted");
    expect(match("Bombus lapponicus Smith, 1876", "", list)).toBe("monticola as synonym");
    expect(match("Bombus lapponicus", "", list)).toBe("ambiguous");
  });

  it("name a vernacular name of two taxa, and take several names of one language", () => {
    const list = buildChecklist([
      taxon("a", "Bombus pratorum", { vernacular: { en: ["Early bumblebee", "Early-nesting bumblebee"] } }),
      taxon("b", "Bombus jonellus", { vernacular: { en: "early bumble bee" } }),
    ]);
    expect(list.problems).toMatchObject([{ code: "name_of_two_taxa", taxonIds: ["a", "b"] }]);
    expect(match("Early-nesting bumblebee", "", list)).toBe("a as vernacular");
  });

  it("take a vernacular name whole that ends with group", () => {
    const list = buildChecklist([
      taxon("carders", "Bombus muscorum/humilis", { rank: "aggregate", vernacular: { en: "Brown carder group" } }),
      taxon("moss", "Bombus muscorum", { within: ["carders"], vernacular: { en: "Moss carder" } }),
    ]);
    expect(match("brown carder group", "", list)).toBe("carders as aggregate");
    expect(match("Moss carder", "cf.", list)).toBe("qualified");
  });
});

describe("what follows a name", () => {
  it.each([
    "Bombus terrestris & Bombus lucorum",
    "Bombus terrestris, Bombus pratorum",
    "B. terrestris, B. pratorum",
    "Bombus terrestris + pratorum",
    "Bombus terrestris pratorum",
    "Bombus terrestris (Bombus pratorum)",
    "Bombus pratorum NOT Bombus terrestris",
    "Bombus pratorum not seen",
    "Bombus pratorum (not seen)",
  ])("is never passed over when it names another taxon or denies it: %s", (text) => {
    expect(match(text)).toBe("ambiguous");
  });

  it.each([
    ["Bombus terrestris (Linnaeus, 1758)", "terrestris as accepted"],
    ["Bombus terrestris terrestris", "terrestris as accepted infraspecific_set_aside"],
    ["Bombus terrestris audax", "terrestris as accepted infraspecific_set_aside"],
    ["Bombus agrorum non Fabricius", "pascuorum as synonym"],
  ])("is let pass when it is an author or a subspecies: %s", (text, taxonId) => {
    expect(match(text)).toBe(taxonId);
  });

  it("of a hundred thousand characters is refused at once, and quoted in short", () => {
    const answer = CHECKLIST.match(`Bombus ${"'".repeat(100_000)}x`);
    expect(answer).toMatchObject({ reason: "not_in_checklist" });
    expect(JSON.stringify(answer).length).toBeLessThan(300);
  });
});
