import { describe, expect, it } from "vitest";
import { geodesicArea } from "../../src/geodesy/geodesic-area.ts";
import { transform } from "../../src/geodesy/transform.ts";
import reference from "../reference/range.json" with { type: "json" };

/** Latitude and longitude as the reference has them, the other way round. */
const east = (points: readonly (readonly number[])[]) =>
  points.map(([latitude = 0, longitude = 0]) => [longitude, latitude] as const);

describe("geodesicArea", () => {
  it("gives the areas GeographicLib's Planimeter gives, to a square metre", () => {
    // Planimeter prints a tenth of a square metre, and is exact to about one for areas of this size (Karney 2013).
    const cases = [
      reference["1deg_cell_53-54N_2-1W"],
      reference.triangle_London_Dublin_Edinburgh,
      reference.octant_N_0_90E,
    ];
    for (const { points, geodesic } of cases) {
      const planimeter = Math.abs(geodesic.area_m2);
      expect(Math.abs(geodesicArea(east(points)) - planimeter)).toBeLessThan(Math.max(1, 1e-14 * planimeter));
    }
  });

  it("gives the published example of its manual page: a square of 100 km in UTM zone 18 north", () => {
    // Corners by our own UTM on WGS84 (EPSG:32618, which the library of coordinate systems may lack: then by zone 30, which
    // has the same shape as any zone, and the area of a polygon does not depend on the longitude it stands at).
    const corners = [
      [500_000, 4_400_000],
      [600_000, 4_400_000],
      [600_000, 4_500_000],
      [500_000, 4_500_000],
    ].map(([x = 0, y = 0]) => transform("EPSG:32630", "EPSG:4326", x, y));
    const published = Number(reference.planimeter_manpage_example.published.split(" ")[2]);
    expect(published).toBe(10_007_388_597.2);
    // A corner is transformed to about a micrometre by the series of the projection: over 400 km of border 1 m² at most.
    expect(Math.abs(geodesicArea(corners) - published)).toBeLessThan(1);
  });

  it("is the same whichever way round, and 0 of a line", () => {
    const { points } = reference.triangle_London_Dublin_Edinburgh;
    expect(geodesicArea(east(points).toReversed())).toBe(geodesicArea(east(points)));
    expect(geodesicArea(east(points).slice(1))).toBe(0);
  });
});
