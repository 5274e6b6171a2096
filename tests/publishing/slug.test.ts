import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { slugOf, uniqueSlugs } from "../../src/publishing/slug.ts";

describe("slugOf", () => {
  it.each([
    ["Bombus lucorum agg.", "bombus-lucorum-agg"],
    ["Bombus (Pyrobombus) jonellus", "bombus-pyrobombus-jonellus"],
    ["Ægishjálmur naïve", "gishjalmur-naive"],
    ["../../etc/passwd", "etc-passwd"],
    ["<script>", "script"],
    ["", ""],
  ])("makes of %j the address %j", (name, slug) => {
    expect(slugOf(name)).toBe(slug);
  });
});

describe("uniqueSlugs", () => {
  it("gives each name its own", () => {
    expect(uniqueSlugs(["A b", "a-b", "A b 2", "蜂", "🐝"])).toEqual(["a-b", "a-b-2", "a-b-2-2", "taxon", "taxon-2"]);
  });

  it("never repeats one, whatever the names, and never leaves the folder", () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.string({ unit: "binary" }), fc.constantFrom("a", "A", "a 2", "..", "a/b")), {
          maxLength: 30,
        }),
        (names) => {
          const slugs = uniqueSlugs(names);
          expect(new Set(slugs).size).toBe(names.length);
          expect(slugs.every((slug) => /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(slug))).toBe(true);
        },
      ),
    );
  });
});
