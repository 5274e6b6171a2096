import { describe, expect, it } from "vitest";
import { readReferenceFile } from "../support/reference.ts";
import { fields, placed, refused, squaresOf } from "./placing.ts";

const at = (gridReference: string) => squaresOf(placed(fields({ gridReference })));

// A reference names a square and supports a coarser one that holds it whole. Worked by hand on the tetrad table
// E J P U Z / D I N T Y / C H M S X / B G L R W / A F K Q V (north at the top).
describe("a grid reference", () => {
  it.each([
    ["100 km", "TQ", null, null],
    ["10 km", "TQ38", "TQ38", null],
    ["5 km", "TQ38SW", "TQ38", null],
    ["5 km", "TQ38NE", "TQ38", null],
    ["2 km", "TQ38A", "TQ38", "TQ38A"],
    ["2 km", "TQ38Z", "TQ38", "TQ38Z"],
    ["1 km", "TQ3080", "TQ38", "TQ38A"],
    ["1 km", "TQ3989", "TQ38", "TQ38Z"],
    ["1 km", "TQ3485", "TQ38", "TQ38M"],
    ["100 m", "TQ345857", "TQ38", "TQ38M"],
    ["10 m", "TQ34568571", "TQ38", "TQ38M"],
    ["1 m", "TQ 34567 85712", "TQ38", "TQ38M"],
    ["10 km", "O13", "O13", null],
    ["5 km", "O13SE", "O13", null],
    ["1 km", "O1534", "O13", "O13M"],
    ["1 km", "WV5748", "WV54", "WV54U"],
  ])("of %s, %s, supports %s and %s", (_, reference, hectad, tetrad) => {
    expect(at(reference)).toEqual([hectad, tetrad]);
  });

  it("says which size it named where it supports no square", () => {
    const { supports } = { supports: placed(fields({ gridReference: "TQ38SW" })).shape };
    expect(supports).toMatchObject({ kind: "square", square: { size: 5_000, easting: 530_000, northing: 180_000 } });
  });

  it("agrees with published references of the same points, from 1 m to 10 km", () => {
    const { forward } = readReferenceFile<{ forward: { system: string; refs: Record<string, string> }[] }>(
      "grid-references.json",
    );
    const onLand = forward.filter(({ system }) => system === "irish");
    expect(onLand.length).toBeGreaterThan(5);
    for (const { refs } of onLand)
      for (const size of ["2km", "1km", "100m", "10m", "1m"])
        expect(at(refs[size] ?? "")).toEqual([refs["10km"], refs["2km"]]);
  });

  it("is read in any form people write", () => {
    for (const text of [" tq 34 85 ", "TQ3485", "Tq 3485.", "ＴＱ３４８５"])
      expect(at(text)).toEqual(["TQ38", "TQ38M"]);
  });

  it("with the letters of the other grid is refused, not shifted", () => {
    // Down and Antrim in British letters: NW 3x xx and NX are over Irish land there, over British land further east.
    expect(refused(fields({ gridReference: "NW0576" }))).toMatchObject({
      check: "grid_reference_outside_territory",
      field: "gridReference",
      value: "NW0576",
    });
    // South-east Wales read as the Irish square S.
    expect(refused(fields({ gridReference: "Z12" })).check).toBe("grid_reference_outside_territory");
    expect(refused(fields({ gridReference: "TI1234" })).check).toBe("grid_reference_unreadable");
    expect(refused(fields({ gridReference: "TQ123" })).value).toBe("TQ123");
    expect(refused(fields({ gridReference: "TQ38O" })).wayOut).toMatch(/A to Z without O/);
  });

  it("may be a coastal square whose centre is at sea", () => {
    expect(at("TQ20")).toEqual(["TQ20", null]);
    expect(placed(fields({ gridReference: "SV80" })).territory.id).toBe("britain");
  });

  it("of one letter that may be something else is read in its own column, with a note", () => {
    const notes = (text: string) => placed(fields({ gridReference: text })).notes.map(({ check }) => check);
    // H1 to H40 are Irish vice-counties, H10 to H40 squares too; Dublin lies at 53° 20' N, 6° 15' W.
    expect(at("H12")).toEqual(["H12", null]);
    expect(notes("H 40")).toEqual(["reference_may_be_region"]);
    expect(notes("N 53 20")).toEqual(["reference_may_be_compass"]);
    expect(notes("W 06 15")).toEqual(["reference_may_be_compass"]);
    for (const text of ["H41", "H1234", "N5320", "N 53 60", "W 50 30", "TQ3877", "O1534"])
      expect(notes(text)).toEqual([]);
    expect(refused(fields({ gridReference: "H7" })).check).toBe("grid_reference_unreadable");
  });

  it("in a text of another column is never read", () => {
    const elsewhere = { ...fields({}), verbatimCoordinates: "H12", viceCounty: "H12", locality: "H12" };
    expect(refused(elsewhere).check).toBe("place_empty");
  });

  it("that cannot be read gives way to coordinates, and says so", () => {
    const place = placed(
      fields({ gridReference: "somewhere", decimalLatitude: "51.54822", decimalLongitude: "-0.08327" }),
    );
    expect(place.from).toBe("coordinates");
    expect(place.notes.map(({ check }) => check)).toEqual(["grid_reference_unreadable"]);
  });
});
