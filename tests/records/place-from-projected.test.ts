import { describe, expect, it } from "vitest";
import { fields, placed, refused, rules, squaresOf } from "./placing.ts";

const british = rules({ crs: "EPSG:27700" });
const at = (easting: string, northing: string, by = british) => placed(fields({ easting, northing }), by);

// Trailing zeros are precision: the numbers are the south-west corner of a square of that size.
describe("easting and northing", () => {
  it.each([
    ["530000", "180000", "10 km", ["TQ38", null]],
    ["534000", "185000", "1 km", ["TQ38", "TQ38M"]],
    ["423000", "456000", "1 km", ["SE25", "SE25I"]],
    ["534500", "185700", "100 m", ["TQ38", "TQ38M"]],
  ])("%s, %s name a square of %s", (easting, northing, _, squares) => {
    const place = at(easting, northing);
    expect(place.shape.kind).toBe("square");
    expect(squaresOf(place)).toEqual(squares);
  });

  it("without trailing zeros are a point", () => {
    const place = at("534567", "185712");
    expect(place.shape).toMatchObject({ kind: "circle", radius: 100, point: { crs: "EPSG:27700" } });
    expect(squaresOf(place)).toEqual(["TQ38", "TQ38M"]);
  });

  it("are as coarse as the finer of the two", () => {
    expect(at("530000", "185000").shape).toMatchObject({ kind: "square", square: { size: 1000 } });
    expect(at("530000", "185123").shape.kind).toBe("circle");
  });

  it("need a coordinate system", () => {
    expect(refused(fields({ easting: "534567", northing: "185712" }))).toMatchObject({
      check: "crs_not_stated",
      value: "534567, 185712",
    });
  });

  it("on the Irish grid come to Irish squares, and in metres of another system to points", () => {
    expect(squaresOf(at("315000", "234000", rules({ crs: "EPSG:29903" })))).toEqual(["O13", "O13M"]);
    // The Spire of Dublin: ITM 715830 734697, Irish Grid O 15904 34671 (published article on the Irish grid).
    const spire = at("715830", "734697", rules({ crs: "EPSG:2157" }));
    expect(spire.shape).toMatchObject({ kind: "circle", point: { crs: "EPSG:29903" } });
    expect(
      spire.shape.kind === "circle" &&
        Math.hypot(spire.shape.point.easting - 315_904, spire.shape.point.northing - 234_671),
    ).toBeLessThan(2);
  });

  it("read in the wrong system lie outside, and say in which they were read", () => {
    // ITM numbers of Dublin read as Irish Grid lie in the North Sea.
    expect(refused(fields({ easting: "715830", northing: "734697" }), rules({ crs: "EPSG:29903" }))).toMatchObject({
      check: "projection_offset",
    });
    expect(refused(fields({ easting: "1e12", northing: "5" }), british).check).toBe("outside_territories");
    expect(refused(fields({ easting: "TQ", northing: "5" }), british).check).toBe("easting_northing_unreadable");
    expect(refused(fields({ easting: "423,000", northing: "456,000" }), british).check).toBe(
      "easting_northing_unreadable",
    );
  });
});
