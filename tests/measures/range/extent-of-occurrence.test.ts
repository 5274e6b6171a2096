import { describe, expect, it } from "vitest";
import { gnomonicAbout } from "../../../src/geodesy/gnomonic.ts";
import { gridNamed } from "../../../src/grids/index.ts";
import { convexHull } from "../../../src/measures/range/convex-hull.ts";
import { extentNotBelow, extentOfOccurrence } from "../../../src/measures/range/extent-of-occurrence.ts";
import { placeCorners } from "../../../src/measures/range/square-corners.ts";
import reference from "../../reference/range.json" with { type: "json" };

const example = reference.eoo_example;

function placed(positions: readonly (readonly number[])[]) {
  const degrees = positions.map(([latitude = 0, longitude = 0]) => [longitude, latitude] as const);
  const plane = gnomonicAbout(degrees);
  return degrees.map(([longitude, latitude], index) => {
    const point = plane(longitude, latitude);
    if (point === undefined) throw new Error("in no plane");
    return { ...point, longitude, latitude, index };
  });
}

describe("extentOfOccurrence", () => {
  it("is the area GeographicLib's Planimeter gives of the same corners", () => {
    const points = placed(example.occurrences_latlon);
    expect(
      convexHull(points)
        .map(({ index }) => index)
        .sort(),
    ).toEqual([...example.hull_vertex_indices_bng].sort());
    // Planimeter prints tenths of a square metre.
    const planimeter = -example.geodesic_area_of_bng_hull_vertices.area_m2 / 1e6;
    expect(extentOfOccurrence(points)).toBeCloseTo(planimeter, 6);
  });

  it("round 2 km squares is the planar area in the British grid but for that grid's scale", () => {
    const british = gridNamed("british");
    const squares = reference.aoo_example.tetrads.map(([easting = 0, northing = 0]) => ({
      grid: "british",
      square: british.format({ grid: "british", crs: "EPSG:27700", easting, northing, size: 2000 }),
    }));
    const corners = placeCorners(squares, new Map([["british", british]])).flatMap((own) => own ?? []);
    expect(corners).toHaveLength(36);
    // Between 0.9996 and 1.0004 the scale squared is within 0.1 %; the sides, straight there and geodesics here, add as much:
    // the two areas of the reference's ten points differ by 0.13 %.
    const planar = reference.eoo_from_tetrad_corners_bng_km2;
    expect(Math.abs(extentOfOccurrence(corners) / planar - 1)).toBeLessThan(0.002);
    // From the points' own squares to their hull's geodesic and planar areas the ratio is the same to a hundredth of a per cent.
    const ratio = -example.geodesic_area_of_bng_hull_vertices.area_m2 / 1e6 / example.planar_area_bng_km2;
    expect(extentOfOccurrence(corners) / planar / ratio).toBeCloseTo(1, 4);
  });

  it("is never smaller than the area of occupancy, and says when it was raised", () => {
    const { eoo_mcp_km2, aoo_km2, reported_eoo_km2 } = reference.eoo_lt_aoo;
    expect(extentNotBelow(eoo_mcp_km2, aoo_km2)).toEqual({ extent_km2: reported_eoo_km2, raised: true });
    expect(extentNotBelow(12, 12)).toEqual({ extent_km2: 12, raised: false });
    expect(extentNotBelow(99.96, null)).toEqual({ extent_km2: 100, raised: false });
  });
});
