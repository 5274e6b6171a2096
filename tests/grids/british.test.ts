import { describe, expect, it } from "vitest";
import { britishGrid } from "../../src/grids/british.ts";
import { isRefusal } from "../../src/grids/grid.ts";
import { parseGood, REFERENCES, SIZE_OF_LABEL } from "./grid-cases.ts";

const grid = britishGrid();
const CRS = "EPSG:27700";

describe("British references of tests/reference/grid-references.json", () => {
  it.each(REFERENCES.british)(
    "$ref is the square of $size m at $easting $northing",
    ({ ref, easting, northing, size }) => {
      expect(grid.parse(ref)).toEqual({ grid: "british", crs: CRS, easting, northing, size });
      expect(grid.format(parseGood(grid, ref))).toBe(ref);
    },
  );

  it("letters all 91 squares of 100 km, and no others", () => {
    expect(Object.keys(REFERENCES.british_100km)).toHaveLength(91);
    for (const [letters, [easting, northing]] of Object.entries(REFERENCES.british_100km)) {
      expect(grid.parse(letters)).toMatchObject({ easting, northing, size: 100_000 });
    }
    const alphabet = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
    const accepted = alphabet
      .flatMap((first) => alphabet.map((second) => first + second))
      .filter((letters) => !isRefusal(grid.parse(letters)));
    expect(accepted.sort()).toEqual(Object.keys(REFERENCES.british_100km).sort());
  });

  const forward = REFERENCES.forward.filter(({ system }) => system === "bng");
  it.each(forward)("$id is named at every size", ({ easting, northing, refs }) => {
    for (const [label, ref] of Object.entries(refs)) {
      const square = grid.squareAt({ crs: CRS, easting, northing }, SIZE_OF_LABEL[label] ?? 1);
      expect(square && grid.format(square)).toBe(ref);
    }
  });

  it.each(REFERENCES.numeric.filter(({ system }) => system === "bng"))(
    "$easting $northing is written $ref or in its own grid",
    ({ easting, northing, ref }) => {
      const square = grid.squareAt({ crs: CRS, easting, northing }, 1);
      expect(square && grid.format(square)).toBe(ref);
    },
  );
});

describe("ways of writing", () => {
  it.each([
    ["tq3877", "TQ3877"],
    ["TQ 38 77", "TQ3877"],
    [" t q 3 8 7 7 ", "TQ3877"],
    ["TQ38 7 7", "TQ3877"],
    ["TQ\u00A0388\u2009773", "TQ388773"],
    ["ＴＱ３８７７", "TQ3877"],
    ["TQ 388,773", "TQ388773"],
    ["TQ 388.773", "TQ388773"],
    ["TQ388773.", "TQ388773"],
    ["TQ/388773", "TQ388773"],
    ["tq38sw", "TQ38SW"],
    ["TQ 38 z", "TQ38Z"],
    ["\u200FTQ\u00AD3877\u202C", "TQ3877"],
    ["NA00", "NA00"],
    ["NO00", "NO00"],
  ])("“%s” is %s", (text, canonical) => expect(grid.format(parseGood(grid, text))).toBe(canonical));
});

describe("refusals", () => {
  const accepted = new Set(["TQ", "TQ38 7 7"]);
  it.each(REFERENCES.invalid.filter((text) => !accepted.has(text)))("“%s” is refused with a way out", (text) => {
    const answer = grid.parse(text);
    expect(isRefusal(answer)).toBe(true);
    expect((answer as { wayOut: string }).wayOut).not.toBe("");
  });

  it.each([
    ["TQ123", "3 figures (123) cannot be halved", "give as many figures for the easting as for the northing"],
    // A figure lost from one half, or groups of three: which half it belongs to nobody can tell.
    [
      "TQ 388 7",
      "the figures 388 7 stand in unequal groups",
      "check whether a figure is missing; write both halves alike",
    ],
    [
      "TQ 38 87 12",
      "the figures 38 87 12 stand in unequal groups",
      "check whether a figure is missing; write both halves alike",
    ],
    // The upper case of ß is SS, the name of another 100 km square.
    [
      "ß38",
      "“ß38” has no letters for its 100 km square",
      "begin with two letters, as in TQ3877; figures alone name a place in every 100 km square",
    ],
    ["TQ38O", "O is no tetrad letter", "the letters run A to Z without O; check whether 0 was meant"],
    [
      "TQ3O",
      "1 figure (3) cannot be halved",
      "if a letter stands for a figure, write TQ30; otherwise give as many figures for the easting as for the northing",
    ],
    [
      "TQ388I73",
      "“388I73” is not figures",
      "if a letter stands for a figure, write TQ388173; otherwise write figures only after the letters, as in 3877",
    ],
    [
      "TI1234",
      "TI holds the letter I, which the grid does not use",
      "check the letters (J, L or 1) against the source",
    ],
    ["WV6548", "WV is a Channel Islands letter pair", "read it with the Channel Islands grid"],
    [
      "WW12",
      "WW lies off the British National Grid",
      "check the letters: the grid runs from SV in the south-west to 700 km east and 1,300 km north",
    ],
    [
      "TC12",
      "TC lies off the British National Grid",
      "check the letters: the grid runs from SV in the south-west to 700 km east and 1,300 km north",
    ],
    [
      "O1534",
      "“O1534” begins with one letter, as an Irish reference does",
      "begin with two letters, as in TQ3877, or read it with the Irish grid",
    ],
    [
      "651409,313177",
      "“651409,313177” has no letters for its 100 km square",
      "begin with two letters, as in TQ3877; figures alone name a place in every 100 km square",
    ],
    ["TQ388.5773", "“388.5773” is not figures", "write figures only after the letters, as in 3877"],
    ["TQ3877A", "“A” after more than two figures", "a tetrad letter or a 5 km quarter follows exactly two figures"],
    [
      "TQ38AA",
      "“AA” is neither a tetrad letter nor a 5 km quarter",
      "use one letter A to Z without O, or SW, NW, SE, NE",
    ],
    ["TQ123456789012", "12 figures (123456789012) are more than the ten that name a metre", "give ten figures at most"],
    ["", "the reference is empty", "give two letters and figures, as in TQ3877"],
    ["TQA38", "“TQA38” begins with more than two letters", "begin with two letters, as in TQ3877"],
  ])("“%s”: %s", (text, refused, wayOut) => expect(grid.parse(text)).toEqual({ refused, wayOut }));
});

describe("points off the grid", () => {
  it.each([
    [-1, 0],
    [0, -1],
    [700_000, 0],
    [0, 1_300_000],
    [Number.NaN, 0],
  ])("%s %s have no square", (easting, northing) => {
    expect(grid.squareAt({ crs: CRS, easting, northing }, 10_000)).toBeUndefined();
  });

  it("are not written", () => {
    const square = { grid: "british", crs: CRS, easting: 700_000, northing: 0, size: 1_000 } as const;
    expect(() => grid.format(square)).toThrow("700000 0 lies off the British National Grid");
  });

  it("of another system are our mistake", () => {
    expect(() => grid.squareAt({ crs: "EPSG:29903", easting: 1, northing: 1 }, 1_000)).toThrow("is in EPSG:29903");
    expect(() => grid.unproject({ crs: "EPSG:29903", easting: 1, northing: 1 })).toThrow("is in EPSG:29903");
  });

  it("have no square of a size the grid lacks", () => {
    expect(grid.squareAt({ crs: CRS, easting: 1, northing: 1 }, 50_000)).toBeUndefined();
  });
});

describe("examples", () => {
  it("britishGrid", () => {
    expect(grid.parse("TQ 3877")).toEqual({ grid: "british", crs: CRS, easting: 538000, northing: 177000, size: 1000 });
  });
});
