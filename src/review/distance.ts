/** Metres of a degree of latitude on a sphere of 6,371,008.8 m, the earth's mean radius (Moritz 2000, Geodetic Reference System 1980). */
const DEGREE_M = 111_195.08;

/**
 * SQL for the distance in metres between the points of two rows that have `longitude` and `latitude` in degrees: the
 * plane through both, good to one part in a hundred up to some hundred kilometres south of 60° north.
 *
 * @param one alias of a row
 * @param other alias of another
 * @example distanceBetween("a", "b") // => "sqrt(pow((a.latitude - b.latitude) * 111195.08, 2) + …)"
 */
export function distanceBetween(one: string, other: string): string {
  const north = `(${one}.latitude - ${other}.latitude) * ${DEGREE_M}`;
  const east = `(${one}.longitude - ${other}.longitude) * ${DEGREE_M} * cos(radians((${one}.latitude + ${other}.latitude) / 2))`;
  return `sqrt(pow(${north}, 2) + pow(${east}, 2))`;
}

/**
 * SQL for the metres that lie between two places however each is taken within its reach; 0 or less where they may be one.
 *
 * @param one alias of a row with `longitude`, `latitude` and `reach_m`
 * @param other alias of another
 * @example gapBetween("a", "b") // => "(sqrt(…) - a.reach_m - b.reach_m)"
 */
export function gapBetween(one: string, other: string): string {
  return `(${distanceBetween(one, other)} - ${one}.reach_m - ${other}.reach_m)`;
}
