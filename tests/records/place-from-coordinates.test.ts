import { describe, expect, it } from "vitest";
import { readReferenceFile } from "../support/reference.ts";
import { placed, position, refused, rules, squaresOf } from "./placing.ts";

function pointOf(place: ReturnType<typeof placed>): { crs: string; easting: number; northing: number } {
  if (place.shape.kind === "square") throw new Error("a square");
  return place.shape.point;
}

describe("coordinates", () => {
  it("come to the grid of their territory, as an independent program places them", () => {
    const { points } = readReferenceFile<{
      points: { id: string; lat: number; lon: number; expected: Record<string, [number, number]> }[];
    }>("points.json");
    const crsOf: Record<string, string> = { IE: "EPSG:29903", GB: "EPSG:27700", IM: "EPSG:27700", CI: "EPSG:23030" };
    const known = points.filter(({ id }) => crsOf[id.slice(0, 2)] !== undefined && id !== "GB11");
    expect(known.length).toBeGreaterThan(20);
    for (const { id, lat, lon, expected } of known) {
      const crs = crsOf[id.slice(0, 2)] ?? "";
      const point = pointOf(placed(position(String(lat), String(lon))));
      expect([id, point.crs]).toEqual([id, crs]);
      // The same parameters in both: what is left is rounding in the series, 0.8 mm at most.
      expect(
        Math.hypot(point.easting - (expected[crs]?.[0] ?? 0), point.northing - (expected[crs]?.[1] ?? 0)),
      ).toBeLessThan(0.002);
    }
  });

  it("belong to one grid on both sides of the North Channel and in Northern Ireland", () => {
    // Positions of towns and headlands, from any map, to a hundredth of a degree.
    const sides: [string, string, string, string][] = [
      ["Belfast", "54.60", "-5.93", "irish"],
      ["Bangor, Down", "54.65", "-5.67", "irish"],
      ["Donaghadee", "54.64", "-5.54", "irish"],
      ["Larne", "54.85", "-5.81", "irish"],
      ["Torr Head", "55.20", "-6.07", "irish"],
      ["Rathlin Island", "55.29", "-6.20", "irish"],
      ["Ballycastle", "55.20", "-6.25", "irish"],
      ["Derry", "55.00", "-7.31", "irish"],
      ["Portpatrick", "54.84", "-5.11", "british"],
      ["Corsewall Point", "55.01", "-5.16", "british"],
      ["Mull of Kintyre", "55.30", "-5.79", "british"],
      ["Port Ellen, Islay", "55.63", "-6.19", "british"],
      ["Mull of Galloway", "54.64", "-4.86", "british"],
      ["Douglas, Isle of Man", "54.15", "-4.48", "british"],
      ["Saint Helier, Jersey", "49.19", "-2.11", "channel-islands"],
      ["Saint Anne, Alderney", "49.71", "-2.20", "channel-islands"],
    ];
    for (const [town, latitude, longitude, grid] of sides)
      expect([town, placed(position(latitude, longitude)).territory.grid.id]).toEqual([town, grid]);
  });

  it("need a datum: from the row, else from the source, else they are not placed", () => {
    const greenwich = position("51.4778", "-0.0015");
    expect(refused(greenwich, rules({ datum: undefined }))).toMatchObject({
      check: "datum_not_stated",
      field: "geodeticDatum",
      wayOut: "set datum for the source, for example EPSG:4326",
    });
    expect(placed(greenwich, rules({ datum: "EPSG:4326" })).territory.id).toBe("britain");
    expect(placed(position("51.4778", "-0.0015", { geodeticDatum: "WGS84" }), rules({ datum: undefined })).from).toBe(
      "coordinates",
    );
    expect(placed(position("51.4778", "-0.0015", { geodeticDatum: "not recorded" })).from).toBe("coordinates");
    expect(refused(position("51.4778", "-0.0015", { geodeticDatum: "Bessel, perhaps" }))).toMatchObject({
      check: "datum_unknown",
      value: "Bessel, perhaps",
    });
    expect(refused(position("51.4778", "-0.0015", { geodeticDatum: "EPSG:27700" })).check).toBe("datum_unknown");
  });

  it("on OSGB36 are not taken for WGS84: some 100 m apart near Bath", () => {
    // E 362895 N 155602 by PROJ 9.1.1: cs2cs EPSG:27700 EPSG:4277, and EPSG:4326. The published case of a forgotten
    // shift at this point is 94.7 m off (NetTopologySuite/ProjNet4GeoAPI issue 67).
    const onWgs84 = pointOf(placed(position("51.2983259", "-2.5335813")));
    const onOsgb36 = pointOf(placed(position("51.2978268", "-2.5322574", { geodeticDatum: "EPSG:4277" })));
    expect(Math.hypot(onWgs84.easting - 362_895, onWgs84.northing - 155_602)).toBeLessThan(0.05);
    expect(Math.hypot(onOsgb36.easting - 362_895, onOsgb36.northing - 155_602)).toBeLessThan(0.05);
    const mistaken = pointOf(placed(position("51.2978268", "-2.5322574")));
    const apart = Math.hypot(mistaken.easting - 362_895, mistaken.northing - 155_602);
    expect(apart).toBeGreaterThan(90);
    expect(apart).toBeLessThan(130);
    const published = pointOf(placed(position("51.2985134", "-2.5322574")));
    expect(Math.hypot(published.easting - 362_895, published.northing - 155_602)).toBeCloseTo(94.7, 0);
  });

  it.each([
    ["exchanged", position("-0.0015", "51.4778"), "coordinates_exchanged", "-0.0015, 51.4778"],
    ["with the sign lost", position("52.5", "3.5"), "longitude_sign", "3.5"],
    ["both zero", position("0", "0.0"), "coordinates_zero", "0, 0.0"],
    ["off the globe", position("151.5", "-200"), "coordinate_out_of_range", "151.5, -200"],
    ["elsewhere", position("40.5", "23.5"), "outside_territories", "40.5, 23.5"],
    ["no numbers", position("fifty-one", "-0.1"), "coordinate_not_a_number", "fifty-one"],
    ["in degrees and minutes", position("51 28 40", "-0.1"), "coordinate_not_a_number", "51 28 40"],
    ["by halves", position("51.5", ""), "coordinate_missing", ""],
  ])("that are %s are not placed and say why", (_, given, check, value) => {
    expect(refused(given)).toMatchObject({ check, value, severity: "ask" });
  });

  it("carry no more than their digits", () => {
    // Chapman and Wieczorek 2020: 0.01° at 52° is 1308 m, 0.001° is 131 m.
    const coarse = placed(position("52.25", "-1.52"));
    expect(coarse).toMatchObject({ radiusFrom: "digits", shape: { kind: "circle" } });
    expect(coarse.shape.kind === "circle" && coarse.shape.radius).toBeCloseTo(1306, -1);
    expect(placed(position("52.250", "-1.520"))).toMatchObject({ radiusFrom: "digits" });
    expect(placed(position("52.25000", "-1.52000"))).toMatchObject({ radiusFrom: "default", shape: { radius: 100 } });
    // Many programs drop a zero at the end, so one long number tells of both.
    expect(placed(position("52.25", "-1.52345"))).toMatchObject({ radiusFrom: "default" });
    expect(placed(position(`52.25${"0".repeat(400)}`, "-1.5"))).toMatchObject({ radiusFrom: "default" });
  });

  it("with a decimal comma, a plus or a true minus are read", () => {
    expect(squaresOf(placed(position("+51,54822", "−0,08327")))).toEqual(
      squaresOf(placed(position("51.54822", "-0.08327"))),
    );
  });
});
