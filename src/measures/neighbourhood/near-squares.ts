/** Centre of a square in degrees of WGS84. */
export interface Centre {
  readonly latitude: number;
  readonly longitude: number;
}

/** Pairs of squares that lie near each other, both ways, and each with itself: three columns of one length. */
export interface NearSquares {
  /** Places in the list of centres, from 0. */
  of: number[];
  near: number[];
  /** Whole kilometres between the centres; 0 for a square and itself. */
  km: number[];
}

/** Mean radius of the Earth in kilometres (IUGG; Moritz 2000, Journal of Geodesy 74: 128–133). */
const EARTH_KM = 6371.0088;
/** Kilometres of a degree of latitude, a little too few, so that no pair is missed. */
const DEGREE_KM = 110;
const RADIAN = Math.PI / 180;

/**
 * Great-circle distance on a sphere in whole kilometres, by the haversine (Sinnott 1984, Sky and Telescope 68: 159). It
 * differs from the distance on the ellipsoid by 0.6 % at most, and does not depend on a grid, so that squares of
 * two grids can be neighbours.
 *
 * @example greatCircleKm({ latitude: 36.12, longitude: -86.67 }, { latitude: 33.94, longitude: -118.4 }) // => 2886
 */
export function greatCircleKm(one: Centre, other: Centre): number {
  const up = Math.sin(((other.latitude - one.latitude) * RADIAN) / 2);
  const across = Math.sin(((other.longitude - one.longitude) * RADIAN) / 2);
  const chord = up * up + Math.cos(one.latitude * RADIAN) * Math.cos(other.latitude * RADIAN) * across * across;
  return Math.round(2 * EARTH_KM * Math.asin(Math.min(1, Math.sqrt(chord))));
}

/**
 * Every pair of squares no further apart than some whole kilometres, each square with itself too, by square and then by
 * neighbour. Time grows with the pairs, not with the square of the list: only bands of latitude that can hold a neighbour
 * are looked through.
 *
 * @param centres of squares, any order, none near a pole
 * @param furthest whole kilometres, at least 0
 * @example nearSquares([{ latitude: 55, longitude: -1 }, { latitude: 55.09, longitude: -1 }], 10).km // => [0, 10, 10, 0]
 */
export function nearSquares(centres: readonly Centre[], furthest: number): NearSquares {
  const height = Math.max(0.1, (furthest + 1) / DEGREE_KM);
  const bands = bandsOf(centres, height);
  const pairs: NearSquares = { of: [], near: [], km: [] };
  for (const [of, centre] of centres.entries()) {
    const band = Math.floor(centre.latitude / height);
    const wide = widthOf(centre, height, furthest);
    const found: [near: number, km: number][] = [];
    for (const near of [band - 1, band, band + 1].flatMap((one) => bands.get(one) ?? [])) {
      const other = centres[near] as Centre;
      if (Math.abs(other.longitude - centre.longitude) > wide) continue;
      const km = near === of ? 0 : greatCircleKm(centre, other);
      if (km <= furthest) found.push([near, km]);
    }
    for (const [near, km] of found.sort(([one], [other]) => one - other)) {
      pairs.of.push(of);
      pairs.near.push(near);
      pairs.km.push(km);
    }
  }
  return pairs;
}

function bandsOf(centres: readonly Centre[], height: number): Map<number, number[]> {
  return Map.groupBy(centres.keys(), (index) => Math.floor((centres[index] as Centre).latitude / height));
}

/** Degrees of longitude that a neighbour can lie away: the most at the poleward edge of the bands looked through. */
function widthOf({ latitude }: Centre, height: number, furthest: number): number {
  const poleward = Math.min(89, Math.abs(latitude) + 2 * height);
  return (furthest + 1) / (DEGREE_KM * Math.cos(poleward * RADIAN));
}
