import geodesic from "geographiclib-geodesic";

/**
 * Area within a closed line of geodesics on the WGS84 ellipsoid, after Karney (2013), Algorithms for geodesics, Journal of
 * Geodesy 87: 43–55. Exact to some square metres; a plane's area would be off by its projection, a sphere's by up to 0.5 %.
 *
 * @param vertices longitude and latitude of each, in degrees, in either direction; the first need not be repeated. The
 *   line may not cross itself
 * @returns square metres, 0 for fewer than three vertices
 * @example Math.round(geodesicArea([[-2, 53], [-1, 53], [-1, 54], [-2, 54]]) / 1e6) // => 7385
 */
export function geodesicArea(vertices: readonly (readonly [longitude: number, latitude: number])[]): number {
  if (vertices.length < 3) return 0;
  const polygon = geodesic.Geodesic.WGS84.Polygon(false);
  for (const [longitude, latitude] of vertices) polygon.AddPoint(latitude, longitude);
  return Math.abs(polygon.Compute(false, true).area ?? 0);
}
