import { describe, expect, it } from "vitest";
import { COORDINATE_SYSTEMS } from "../../src/geodesy/coordinate-systems.ts";
import { resolveCrs } from "../../src/geodesy/resolve-crs.ts";

describe("resolveCrs", () => {
  it.each([
    ["WGS84", "EPSG:4326"],
    ["WGS 84", "EPSG:4326"],
    ["wgs-84", "EPSG:4326"],
    ["World Geodetic System 1984", "EPSG:4326"],
    ["EPSG:4326", "EPSG:4326"],
    ["epsg:4326", "EPSG:4326"],
    ["EPSG: 4326", "EPSG:4326"],
    ["4326", "EPSG:4326"],
    ["urn:ogc:def:crs:EPSG::4326", "EPSG:4326"],
    ["urn:ogc:def:crs:OGC:1.3:CRS84", "EPSG:4326"],
    ["http://www.opengis.net/def/crs/EPSG/0/4326", "EPSG:4326"],
    ["EPSG:6326", "EPSG:4326"],
    ["EPSG:7030", "EPSG:4326"],
    ["ETRS89", "EPSG:4258"],
    ["IRENET95", "EPSG:4173"],
    ["OSGB36", "EPSG:4277"],
    ["OSGB 1936", "EPSG:4277"],
    ["EPSG:4277", "EPSG:4277"],
    ["TM75", "EPSG:4300"],
    ["ED50", "EPSG:4230"],
    ["British National Grid", "EPSG:27700"],
    ["OSGB36 / British National Grid", "EPSG:27700"],
    ["Irish Grid", "EPSG:29903"],
    ["TM65 / Irish Grid", "EPSG:29902"],
    ["ITM", "EPSG:2157"],
    ["ETRS89-LAEA", "EPSG:3035"],
    ["Belge 1972 / Belgian Lambert 72", "EPSG:31370"],
    ["UTM 30N", "EPSG:32630"],
    ["WGS 84 / UTM zone 1S", "EPSG:32701"],
  ])("reads “%s” as %s", (text, code) => expect(resolveCrs(text)).toBe(code));

  it.each(["", "not recorded", "unknown", "EPSG:99999", "UTM 61N", "UTM", "Mercator", "constructor", "432"])(
    "does not guess at “%s”",
    (text) => expect(resolveCrs(text)).toBeUndefined(),
  );

  it("reads every code and every name of the table as itself", () => {
    for (const { code, name } of COORDINATE_SYSTEMS.values()) {
      expect(resolveCrs(code)).toBe(code);
      expect(resolveCrs(name)).toBe(code);
    }
  });
});

describe("COORDINATE_SYSTEMS", () => {
  it("holds the 120 UTM zones beside fifteen others", () => expect(COORDINATE_SYSTEMS.size).toBe(135));

  it("is frozen row by row", () => {
    expect([...COORDINATE_SYSTEMS.values()].every((system) => Object.isFrozen(system))).toBe(true);
  });
});
