import { describe, expect, it } from "vitest";
import type { UseRow } from "../../../../src/publishing/contracts.ts";
import { useSentence, usesByKind } from "../../../../src/site/components/figures/use-words.ts";

const row = (term_label: string, interval: readonly [low: number, ratio: number, high: number] | null): UseRow => ({
  ...{
    caste: "all",
    caste_label: "",
    kind: "habitat",
    kind_label: "Habitat",
    of_visit: true,
    term: term_label,
    term_label,
  },
  ...{ n_taxon_term: 40, n_term: 400, n_taxon: 200, n_all: 4_000 },
  ...{ low: interval?.[0] ?? null, ratio: interval?.[1] ?? null, high: interval?.[2] ?? null },
  judged: interval !== null,
  reason: interval === null ? "stated too seldom in all: 4, where 10 are needed" : "",
});

describe("useSentence", () => {
  it("names what stands out with its interval, and what lies below", () => {
    const rows = [row("Gardens", [0.3, 0.4, 0.6]), row("Heath", [1.8, 2.1, 2.4]), row("Coast", [0.8, 1, 1.3])];
    expect(useSentence(rows)).toBe(
      "Recorded **2.1 times as often: heath**, against visits there (95 % interval 1.8 to 2.4); less often: gardens.",
    );
  });
  it("says so where nothing stands out, where all lies below, and where too little is stated", () => {
    expect(useSentence([row("Coast", [0.8, 1, 1.3])])).toBe("No habitat stands out against visits there.");
    expect(useSentence([row("Coast", [0.5, 0.7, 0.9])])).toBe(
      "Recorded **less often** than visits there would give: coast.",
    );
    expect(useSentence([row("Coast", null)])).toContain("4, where 10 are needed");
    expect(useSentence([])).toBe("");
  });
  it("never speaks of preference", () => {
    for (const one of [row("Coast", [1.1, 2, 3]), row("Coast", [0.1, 0.2, 0.3])])
      expect(useSentence([one])).not.toMatch(/prefer|choos|select|favour/);
  });
});

describe("usesByKind", () => {
  it("parts kinds, and castes from all", () => {
    const queen = { ...row("Coast", [1, 1, 1]), caste: "queen", caste_label: "Queen" };
    const flower = { ...row("Clover", [1, 1, 1]), kind: "flower", kind_label: "Flowers visited", of_visit: false };
    expect(
      usesByKind([row("Coast", [1, 1, 1]), queen, flower]).map(({ label, all, byCaste }) => [
        label,
        all.length,
        byCaste.length,
      ]),
    ).toEqual([
      ["Habitat", 1, 1],
      ["Flowers visited", 1, 0],
    ]);
  });
});
