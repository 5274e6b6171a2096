import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fewestTaxa } from "../../src/names/fewest-taxa.ts";
import { buildTaxonGraph, type TaxonGraph } from "../../src/names/taxon-graph.ts";
import { CHECKLIST } from "./bumblebees.ts";

const TAXA = 10;

/** A random sparse graph without cycles: a taxon can lie within taxa before it only. */
const anyGraph = fc
  .array(fc.array(fc.nat(2), { minLength: TAXA, maxLength: TAXA }), { minLength: TAXA, maxLength: TAXA })
  .map((rows) => {
    const within = rows.map((row, id) =>
      row.flatMap((draw, above) => (draw === 0 && above < id ? [String(above)] : [])),
    );
    return buildTaxonGraph(new Map(within.map((above, id) => [String(id), above])));
  });
const anyList = fc.uniqueArray(fc.nat(TAXA - 1).map(String), { maxLength: TAXA });

/** The same number by trying every set of taxa, smallest first. */
function byTrying(listed: readonly string[], graph: TaxonGraph): number {
  const size = (set: number) => set.toString(2).replaceAll("0", "").length;
  const explains = (set: number, name: string) =>
    [name, ...graph.descendants(name)].some((taxon) => (set >> Number(taxon)) & 1);
  const sets = Array.from({ length: 2 ** TAXA }, (_, set) => set).sort((a, b) => size(a) - size(b));
  return size(sets.find((set) => listed.every((name) => explains(set, name))) ?? 0);
}

describe("examples", () => {
  it("hold", () => {
    expect(fewestTaxa(["lucorum-agg", "lucorum", "terrestris-lucorum"], CHECKLIST)).toBe(1);
  });
});

// The rule of lists: an aggregate, its member and a worker of the group are one or two taxa, not three.
describe("the length of a list of bumblebees", () => {
  it.each([
    [[], 0],
    [["pratorum"], 1],
    [["pratorum", "pratorum"], 1],
    [["pratorum", "vestalis"], 2],
    [["lucorum-agg", "terrestris-lucorum"], 1],
    [["lucorum-agg", "terrestris", "terrestris-lucorum"], 2],
    [["lucorum", "cryptarum", "lucorum-agg"], 2],
    [["terrestris-lucorum", "brown-carders"], 2],
    [["muscorum", "brown-carders", "pascuorum"], 2],
    [["a taxon of another list", "pratorum"], 2],
  ])("%j is %i", (listed, expected) => {
    expect(fewestTaxa(listed, CHECKLIST)).toBe(expected);
  });

  it("is one for two aggregates that overlap in a taxon that is not listed", () => {
    const graph = buildTaxonGraph(
      new Map([
        ["a", []],
        ["b", []],
        ["shared", ["a", "b"]],
        ["other", ["a"]],
      ]),
    );
    expect([fewestTaxa(["a", "b"], graph), fewestTaxa(["a", "b", "other"], graph)]).toEqual([1, 2]);
  });
});

describe("overlapping aggregates without a listed member", () => {
  it("are explained by two taxa where taking the one of most aggregates first would take three", () => {
    const within = { x: "ABC", y: "AD", z: "BCE", u: "D", u2: "D", v: "E", v2: "E" };
    const graph = buildTaxonGraph(
      new Map<string, readonly string[]>([
        ...[..."ABCDE"].map((aggregate) => [aggregate, []] as const),
        ...Object.entries(within).map(([member, above]) => [member, [...above]] as const),
      ]),
    );
    expect(fewestTaxa("ABCDE", graph)).toBe(2);
  });

  it("are as many taxa as found by trying every set", () => {
    // Taxa 0 to 4 are aggregates, 5 to 9 their members, each within aggregates drawn at random.
    const drawn = fc.array(fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }), { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(drawn, (rows) => {
        const aggregates = ["0", "1", "2", "3", "4"];
        const members = rows.map((row, index) => [String(index + 5), aggregates.filter((_, at) => row[at])] as const);
        const graph = buildTaxonGraph(
          new Map<string, readonly string[]>([...aggregates.map((id) => [id, []] as const), ...members]),
        );
        expect(fewestTaxa(aggregates, graph)).toBe(byTrying(aggregates, graph));
      }),
      { numRuns: 300 },
    );
  });
});

describe("any list in any graph", () => {
  it("has the length found by trying every set of taxa", () => {
    fc.assert(
      fc.property(anyGraph, anyList, (graph, listed) => {
        expect(fewestTaxa(listed, graph)).toBe(byTrying(listed, graph));
      }),
      { numRuns: 500 },
    );
  });

  it("is never longer than its names, nor empty with a name, and its order makes no difference", () => {
    fc.assert(
      fc.property(anyGraph, anyList, (graph, listed) => {
        const length = fewestTaxa(listed, graph);
        expect(length).toBeLessThanOrEqual(listed.length);
        expect(length > 0).toBe(listed.length > 0);
        expect(fewestTaxa(listed.toReversed(), graph)).toBe(length);
      }),
    );
  });

  it("does not change when an aggregate beside a listed member is taken off", () => {
    fc.assert(
      fc.property(anyGraph, anyList, (graph, listed) => {
        const holder = listed.find((name) => graph.descendants(name).some((below) => listed.includes(below)));
        fc.pre(holder !== undefined);
        expect(
          fewestTaxa(
            listed.filter((name) => name !== holder),
            graph,
          ),
        ).toBe(fewestTaxa(listed, graph));
      }),
    );
  });

  it("grows by none or one with each name", () => {
    fc.assert(
      fc.property(anyGraph, anyList, fc.nat(TAXA - 1).map(String), (graph, listed, further) => {
        const growth = fewestTaxa([...listed, further], graph) - fewestTaxa(listed, graph);
        expect([0, 1]).toContain(growth);
      }),
    );
  });
});
