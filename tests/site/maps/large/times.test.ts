import { describe, expect, it } from "vitest";
import type { TaxonSquare } from "../../../../src/publishing/contracts.ts";
import { atTime, timesOf } from "../../../../src/site/maps/large/times.ts";

const ATLAS = {
  periods: [
    { id: "p1", label: "1990–2005", from: 1990, to: 2005 },
    { id: "p2", label: "2006–2024", from: 2006, to: 2024 },
  ],
  compared: ["p1", "p2"] as [string, string],
};
const square = (code: string, records: number[], covered: boolean[]): TaxonSquare => ({
  square: code,
  state: "recorded",
  records,
  covered,
  visits: [0, 0],
  first_year: null,
  last_year: null,
});
const TAXON = {
  change: [],
  squares: {
    "10000": [
      square("AA00", [2, 0], [true, true]),
      square("AA01", [0, 3], [false, true]),
      square("AA02", [1, 1], [true, true]),
      square("AA03", [0, 0], [true, false]),
    ],
    "2000": [square("AA00A", [2, 0], []), square("AA02A", [0, 1], [])],
  },
  uncovered: { neither: ["BB00"], later_only: ["BB01"], earlier_only: ["BB02"] },
};
const times = timesOf(ATLAS, { compared: "Compared", all: "All dates" });
const shown = (n: number) => atTime(ATLAS, TAXON, times[n] ?? { kind: "all", index: -1, label: "" }, () => true).taxon;
const codes = (n: number) => shown(n).squares["10000"].map((one) => one.square);

describe("times of the large map", () => {
  it("are the comparison, each period and every date; without a comparison it is not among them", () => {
    expect(times.map(({ label }) => label)).toEqual(["Compared", "1990–2005", "2006–2024", "All dates"]);
    const one = { periods: ATLAS.periods.slice(1), compared: null };
    expect(timesOf(one, { compared: "Compared", all: "All dates" }).map(({ kind }) => kind)).toEqual(["period", "all"]);
  });

  it("show of a period its own records, and of every date all", () => {
    expect(codes(1)).toEqual(["AA00", "AA02"]);
    expect(codes(2)).toEqual(["AA01", "AA02"]);
    expect(codes(3)).toEqual(["AA00", "AA01", "AA02", "AA03"]);
    expect(shown(1).squares["2000"].map((one) => one.square)).toEqual(["AA00A"]);
  });

  it("hatch what the period did not cover, recorded in another period or not", () => {
    expect(new Set(shown(1).uncovered.neither)).toEqual(new Set(["BB00", "BB01", "AA01"]));
    expect(new Set(shown(2).uncovered.neither)).toEqual(new Set(["BB00", "BB02", "AA03"]));
    expect(shown(3).uncovered).toEqual({ neither: ["BB00"], later_only: [], earlier_only: [] });
  });

  it("leave the comparison as it is, but for squares that lie elsewhere", () => {
    const own = atTime(
      ATLAS,
      TAXON,
      { kind: "compared", index: -1, label: "Compared" },
      (code) => code !== "AA00" && code !== "BB01",
    );
    expect(own.atlas).toBe(ATLAS);
    expect(own.taxon.squares["10000"].map((one) => one.square)).toEqual(["AA01", "AA02", "AA03"]);
    expect(own.taxon.uncovered).toEqual({ neither: ["BB00"], later_only: [], earlier_only: ["BB02"] });
  });
});
