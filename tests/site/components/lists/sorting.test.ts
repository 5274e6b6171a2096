import { describe, expect, it } from "vitest";
import type { TaxonSummary } from "../../../../src/publishing/contracts.ts";
import { firstSeenGroups } from "../../../../src/site/components/lists/first-seen.ts";
import { inOrder, shortScientific } from "../../../../src/site/components/lists/sorting.ts";

function taxon(
  slug: string,
  hectads_latest: number,
  net_percent: number | null,
  more: Partial<TaxonSummary> = {},
): TaxonSummary {
  const change = { judged: net_percent !== null, net_percent };
  return {
    slug,
    vernacular_name: slug,
    hectads_latest,
    change,
    records: hectads_latest,
    is_aggregate: false,
    season: [],
    ...more,
  } as unknown as TaxonSummary;
}
const taxa = [taxon("b", 5, null), taxon("a", 9, -20), taxon("c", 9, 30)];
const slugs = (list: readonly TaxonSummary[]) => list.map(({ slug }) => slug).join("");

describe("inOrder", () => {
  it("sorts by squares, by name and by change, what cannot be judged last", () => {
    expect((["squares", "name", "change"] as const).map((order) => slugs(inOrder(taxa, order)))).toEqual([
      "acb",
      "abc",
      "cab",
    ]);
    expect(slugs(taxa)).toBe("bac");
  });

  it("sorts by the date by which half of the records were made, and puts what has too few last", () => {
    const dated = (slug: string, third: number, records: number) =>
      taxon(slug, 1, null, { season: Array.from({ length: 36 }, (_, index) => (index === third ? records : 0)) });
    const list = [dated("few", 3, 29), dated("late", 20, 40), dated("early", 9, 30)];
    expect(inOrder(list, "season").map(({ slug }) => slug)).toEqual(["early", "late", "few"]);
  });
});

describe("shortScientific", () => {
  it("cuts a genus that all share, and no other", () => {
    expect(shortScientific("Bombus lapidarius", ["Bombus lapidarius", "Bombus terrestris"])).toBe("B. lapidarius");
    expect(shortScientific("Bombus lapidarius", ["Bombus lapidarius", "Apis mellifera"])).toBe("Bombus lapidarius");
    expect(shortScientific("Bombus lapidarius", ["Bombus lapidarius"])).toBe("Bombus lapidarius");
  });
});

describe("firstSeenGroups", () => {
  it("keeps the checklist's order, puts aggregates last and leaves out empty groups", () => {
    const first_seen_groups = ["x", "empty", "y"].map((id) => ({ id, title: id, look_at: "" }));
    const members = [
      taxon("group", 99, null, { first_seen: "x", is_aggregate: true }),
      taxon("one", 3, null, { first_seen: "x" }),
      taxon("two", 7, null, { first_seen: "x" }),
      taxon("why", 1, null, { first_seen: "y" }),
    ];
    const groups = firstSeenGroups({ first_seen_groups, taxa: members });
    expect(groups.map((group) => [group.title, group.taxa.map(({ slug }) => slug)])).toEqual([
      ["x", ["two", "one", "group"]],
      ["y", ["why"]],
    ]);
  });
});
