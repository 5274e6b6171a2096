import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hashOfPlace, placeOfHash } from "../../../src/site/interactive-map/permalink.ts";

describe("the address of a view", () => {
  it("is short, and leaves out what is not known", () => {
    expect(hashOfPlace({ taxon: "garden", view: "both", zoom: 7.24, longitude: -1.61, latitude: 55.07 })).toBe(
      "#taxon=garden&view=both&at=7.2,-1.610,55.070",
    );
    expect(hashOfPlace({})).toBe("");
  });
  it("gives back what it was made from", () => {
    const place = fc.record({
      taxon: fc.stringMatching(/^[a-z-]{1,20}$/),
      view: fc.constantFrom("both", "0", "1", "visits"),
      zoom: fc.integer({ min: 20, max: 130 }).map((tenths) => tenths / 10),
      longitude: fc.integer({ min: -180_000, max: 180_000 }).map((thousandths) => thousandths / 1000),
      latitude: fc.integer({ min: -90_000, max: 90_000 }).map((thousandths) => thousandths / 1000),
      square: fc.string({ minLength: 1, maxLength: 12, unit: "grapheme" }),
    });
    fc.assert(fc.property(place, (made) => void expect(placeOfHash(hashOfPlace(made))).toEqual(made)));
  });
  it("takes no harm from what is no place", () => {
    for (const hash of ["#at=,,", "#at=7,200,55", "#at=x", "#", "#=&&", "#taxon="])
      expect(placeOfHash(hash)).toEqual({});
    fc.assert(fc.property(fc.string(), (hash) => void placeOfHash(hash)));
  });
});
