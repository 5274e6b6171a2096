import { describe, expect, it } from "vitest";
import { partsWithin } from "../../../../src/site/components/practice/parts-within.ts";

const taxon = (outside: boolean, states: Record<string, string>) =>
  ({
    outside,
    characters: Object.entries(states).map(([part, state]) => ({ part, state })),
  }) as unknown as Parameters<typeof partsWithin>[0][number];

describe("parts that may be said beside a drawing", () => {
  it("are those that differ within the checklist, not those that tell its animals from others", () => {
    const parts = partsWithin([
      taxon(false, { coat: "short", "wing-pairs": "two" }),
      taxon(false, { coat: "long", "wing-pairs": "two" }),
      taxon(true, { coat: "thin", "wing-pairs": "one", flight: "hovers" }),
    ]);
    expect([...parts]).toEqual(["coat"]);
  });
});
