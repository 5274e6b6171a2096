import { describe, expect, it } from "vitest";
import type { RangeRow } from "../../../../src/publishing/contracts.ts";
import { area, below, rangeNote, rangeSentence } from "../../../../src/site/components/figures/range-words.ts";

const ROW: RangeRow = {
  territory: "all",
  period: "p2",
  grids: ["british"],
  records: 4_000,
  records_not_shown: 0,
  records_left_out: 0,
  tetrads: 540,
  hectads: 345,
  hectads_without_tetrad: 37,
  occupancy_km2: 2_160,
  occupancy_reason: "",
  occupancy_below_km2: null,
  extent_km2: 41_200.5,
  extent_reason: "",
  extent_raised: false,
  extent_below_km2: 20_000,
};

describe("range in words", () => {
  it("says squares, area and extent", () => {
    expect(rangeSentence(ROW, "in 2006–2024")).toBe(
      "Recorded in **540 squares of 2 km** in 2006–2024, an area of occupancy of **2,160 km²** or more, within an extent of **41,201 km²**.",
    );
  });

  it("says why there is no area, and still the extent", () => {
    const shown = {
      ...ROW,
      tetrads: 0,
      occupancy_km2: null,
      occupancy_reason: "its 2 km squares are not shown on purpose",
    };
    expect(rangeSentence(shown, "in 2006–2024")).toBe(
      "Its area of occupancy **is not given** in 2006–2024: its 2 km squares are not shown on purpose. Its records lie within an extent of **41,201 km²**.",
    );
    expect(rangeNote(shown)).toBe("");
    expect(rangeSentence(undefined, "in 2006–2024")).toBe("No established record in 2006–2024.");
  });

  it("names the threshold a figure is below, and none", () => {
    expect(below(20_000)).toBe("below 20,000 km²");
    expect(below(null)).toBe("");
  });

  it("says what a figure lacks", () => {
    expect(rangeNote({ ...ROW, records_left_out: 1, extent_raised: true })).toBe(
      "1 record not established left out; the polygon is smaller than the area of occupancy, and set equal to it",
    );
    expect(area(12.4)).toBe("12.4 km²");
  });
});
