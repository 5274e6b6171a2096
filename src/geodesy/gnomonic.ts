/** A point of a gnomonic plane, in units of the sphere's radius. */
export interface PlanePoint {
  readonly x: number;
  readonly y: number;
}

/** Cosine of the distance from the centre beyond which a gnomonic plane is too stretched to be of use: 80°. */
const NEAREST_THE_RIM = Math.cos((80 * Math.PI) / 180);

/**
 * Makes the gnomonic projection about the middle of some positions. Great circles are straight lines in it, so that what is
 * convex in this plane is convex on the globe (Snyder 1987, Map Projections: A Working Manual, p. 164). It is that of a
 * sphere: a geodesic of the ellipsoid bends from its straight line by some 70 m in the middle of a thousand kilometres.
 *
 * @param positions longitude and latitude in degrees, at least one
 * @returns a function from longitude and latitude to the plane; undefined 80° from the middle and beyond
 * @example gnomonicAbout([[-2, 54]])(-2, 54) // => { x: 0, y: 0 }
 */
export function gnomonicAbout(
  positions: readonly (readonly [longitude: number, latitude: number])[],
): (longitude: number, latitude: number) => PlanePoint | undefined {
  const middle = positions.map(([longitude, latitude]) => onSphere(longitude, latitude)).reduce(added, [0, 0, 0]);
  const longitude = Math.atan2(middle[1], middle[0]);
  const latitude = Math.atan2(middle[2], Math.hypot(middle[0], middle[1]));
  const [sine, cosine] = [Math.sin(latitude), Math.cos(latitude)];
  return (east, north) => {
    const [across, up] = [radians(east) - longitude, radians(north)];
    const near = sine * Math.sin(up) + cosine * Math.cos(up) * Math.cos(across);
    if (!(near > NEAREST_THE_RIM)) return undefined;
    return {
      x: (Math.cos(up) * Math.sin(across)) / near,
      y: (cosine * Math.sin(up) - sine * Math.cos(up) * Math.cos(across)) / near,
    };
  };
}

type Vector = readonly [number, number, number];

function onSphere(longitude: number, latitude: number): Vector {
  const [east, north] = [radians(longitude), radians(latitude)];
  return [Math.cos(north) * Math.cos(east), Math.cos(north) * Math.sin(east), Math.sin(north)];
}

function added(one: Vector, other: Vector): Vector {
  return [one[0] + other[0], one[1] + other[1], one[2] + other[2]];
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
