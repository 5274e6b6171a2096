import { describe, expect, it } from "vitest";
import { squareList, taxonStates } from "../../../src/publishing/map-folder.ts";
import { unpackSquares, unpackTaxon } from "../../../src/site/interactive-map/map-data.ts";
import { paintOf, paintUncovered, paintVisits, viewOfTetrads } from "../../../src/site/interactive-map/square-paint.ts";
import { squareWords, uncoveredWords, visitWords } from "../../../src/site/interactive-map/square-words.ts";
import { ENGLISH } from "../../../src/site/words/catalogue.ts";
import { sayFrom } from "../../../src/site/words/client.ts";
import { britainAndIreland, cornersOnEarth } from "../../support/map-fixture.ts";

const { taxon, hectads } = britainAndIreland();
const codes = [...hectads.map(({ square }) => square), ...taxon.squares["2000"].map(({ square }) => square).toSorted()];
const ids = new Map(codes.map((code, id) => [code, id]));
const packed = taxonStates({ ...taxon, vernacular_name: "Red bee", generalised_to: "none" }, ids);
const open = unpackTaxon(JSON.parse(JSON.stringify(packed)) as typeof packed);

describe("a taxon's file", () => {
  it("gives back every square with its state, cover and records", () => {
    for (const size of ["10000", "2000"] as const) {
      const squares = size === "10000" ? open.hectads : open.tetrads;
      expect(squares.size).toBe(taxon.squares[size].length);
      for (const { square, state, covered, records } of taxon.squares[size])
        expect(squares.get(ids.get(square) ?? -1)).toEqual({ state, covered, records });
    }
  });

  it("gives back which squares are not covered", () => {
    for (const kind of ["neither", "later_only", "earlier_only"] as const) {
      const found = [...open.uncovered].filter(([, value]) => value === kind).map(([id]) => codes[id]);
      expect(found.toSorted()).toEqual(taxon.uncovered[kind].toSorted());
    }
  });
});

describe("the list of squares", () => {
  const squares = (["NZ27", "SU30"] as const).map((code, id) => ({ id, ...cornersOnEarth("british", code) }));
  it("gives back codes and middles to a thousandth of a degree", () => {
    const book = unpackSquares(squareList(squares, 10_000));
    expect(book.ids.get("SU30")).toBe(1);
    /* Middle of NZ27, E 425000 N 575000: PROJ 9.1.1 cs2cs with the shift EPSG:1314 written out: 55.06884° N 1.61006° W. */
    const [longitude, latitude] = book.middle(0) ?? [0, 0];
    expect(longitude).toBeCloseTo(-1.61006, 3);
    expect(latitude).toBeCloseTo(55.06884, 3);
  });
  it("refuses ids that leave a gap", () => {
    expect(() =>
      squareList(
        [
          { id: 4, ...cornersOnEarth("british", "NZ27") },
          { id: 6, ...cornersOnEarth("british", "SU30") },
        ],
        10_000,
      ),
    ).toThrow("square SU30 has id 6 where 5 was due");
  });
});

describe("paint of a square", () => {
  const both = { kind: "compared", earlier: 0, later: 1 } as const;
  const covered = [true, true];
  it("shows the classes of the printed map", () => {
    expect(paintOf({ state: "retained", covered, records: [1, 1] }, both)).toEqual({
      spine: { ink: "both" },
      page: { ink: "both" },
    });
    expect(paintOf({ state: "gained", covered, records: [0, 1] }, both)).toEqual({
      spine: { ink: "new", open: true },
      page: { ink: "new" },
    });
    expect(paintOf({ state: "lost", covered, records: [1, 0] }, both)).toEqual({
      spine: { ink: "gone" },
      page: { ink: "gone", open: true },
    });
    expect(paintOf({ state: "not_comparable_since", covered: [false, true], records: [0, 1] }, both)).toEqual({
      spine: { hatch: true },
      page: { ink: "part" },
    });
    expect(paintOf({ state: "not_comparable_since", covered: [true, false], records: [0, 1] }, both)).toEqual({
      spine: {},
      page: { ink: "part" },
    });
    expect(paintOf({ state: "not_comparable_before", covered: [true, false], records: [1, 0] }, both)).toEqual({
      spine: { ink: "part" },
      page: { hatch: true },
    });
  });
  it("shows one period without a word of change", () => {
    const later = { kind: "single", period: 1, isEarlier: false } as const;
    expect(paintOf({ state: "gained", covered, records: [0, 1] }, later)).toEqual({
      spine: { ink: "both" },
      page: { ink: "both" },
    });
    expect(paintOf({ state: "lost", covered, records: [1, 0] }, later)).toEqual({ spine: {}, page: {} });
    expect(paintUncovered("earlier_only", later).page).toEqual({ hatch: true });
    expect(paintUncovered("later_only", later).page).toEqual({});
  });
  it("shows visits in four steps, each period in its part, and none as hatch", () => {
    expect(paintVisits([0, 2])).toEqual({ spine: { hatch: true }, page: { ink: "both", tint: 0.3 } });
    expect(paintVisits([9, 10])).toEqual({ spine: { ink: "both", tint: 0.62 }, page: { ink: "both", tint: 1 } });
    expect(paintVisits([1])).toEqual({ spine: { ink: "both", tint: 0.3 }, page: { ink: "both", tint: 0.3 } });
  });
  it("compares 2 km squares only where change is judged there", () => {
    expect(viewOfTetrads(both, { judgedAt2km: false })).toEqual({ kind: "any" });
    expect(viewOfTetrads(both, { judgedAt2km: true })).toBe(both);
  });
});

describe("words about a square", () => {
  const context = {
    periods: [{ label: "1990–2005" }, { label: "2006–2024" }],
    group: "bumblebees",
    say: sayFrom(ENGLISH, "en-GB"),
  };
  it("gives its records in each period", () => {
    expect(
      squareWords("NZ27", { state: "gained", covered: [true, true], records: [0, 4] }, open, 10_000, context),
    ).toBe("NZ27: Red bee newly found. 1990–2005 no record; 2006–2024 4 records.");
    expect(
      squareWords("NZ27A", { state: "gained", covered: [true, true], records: [0, 1] }, open, 2_000, context),
    ).toBe("NZ27A: Red bee recorded. 1990–2005 no record; 2006–2024 1 record.");
  });
  it("gives visits by period, and one number where there is one", () => {
    expect(visitWords("NZ27", [12, 44], context)).toBe("NZ27: 56 visits (1990–2005 12; 2006–2024 44).");
    expect(visitWords("NZ27A", [1], context)).toBe("NZ27A: 1 visit.");
    expect(visitWords("NZ27", [0, 0], context)).toBe("NZ27: no visit.");
  });
  it("says of a square without a record whether that means anything", () => {
    expect(uncoveredWords("NZ27", "later_only", open, context, [0, 1])).toBe(
      "NZ27: no record of Red bee, though others were recorded in 2006–2024; too little was recorded in 1990–2005 to say.",
    );
    expect(uncoveredWords("NZ27", undefined, open, context, [0, 1])).toBe(
      "NZ27: no record of Red bee, though others were recorded in both periods.",
    );
  });
});
