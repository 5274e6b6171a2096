import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cardRows } from "../../../../src/site/components/squares/card-rows.ts";

describe("cardRows", () => {
  it("puts what was recorded first, then what is expected, then the rest of the list", () => {
    expect(cardRows(["a", "b", "c", "d"], ["c"], ["b"])).toEqual({
      rows: [
        { slug: "c", group: "recorded" },
        { slug: "b", group: "expected" },
        { slug: "a", group: "rest" },
        { slug: "d", group: "rest" },
      ],
      left: 0,
    });
  });

  it("holds every taxon once, however the lists overlap, and says how many found no room", () => {
    const slugs = fc.subarray([..."abcdefghij"]);
    fc.assert(
      fc.property(slugs, slugs, fc.nat(12), (recorded, expected, most) => {
        const { rows, left } = cardRows([..."abcdefghij"], recorded, expected, most);
        expect(new Set(rows.map(({ slug }) => slug)).size).toBe(rows.length);
        expect(rows.length + left).toBe(10);
        expect(rows.length).toBeLessThanOrEqual(most);
      }),
    );
  });
});
