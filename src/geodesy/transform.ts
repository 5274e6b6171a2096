import proj4 from "proj4";
import type { CoordinateSystem } from "./coordinate-systems.ts";
import { coordinateSystem } from "./coordinate-systems.ts";
import type { GridShift } from "./grid-shift.ts";
import { gridShiftFromWgs84, gridShiftToWgs84 } from "./grid-shift.ts";
import { irishPolynomialCovers, irishPolynomialFromWgs84, irishPolynomialToWgs84 } from "./irish-polynomial.ts";

type Step = (x: number, y: number) => [x: number, y: number];

const WGS84 = "EPSG:4326";
const TM75 = "EPSG:4300";
/** Beyond this many degrees from its central meridian a transverse Mercator series gives wrong numbers silently. */
const WIDEST = 30;

const same: Step = (x, y) => [x, y];

/**
 * Transforms one position between two coordinate systems, always longitude or easting first. Between TM75 (Irish
 * Grid) and WGS84 it uses the polynomial EPSG:1041 inside its area and the seven-parameter shift elsewhere; with a
 * grid-shift file it uses the file where it has cover. `datumShiftAt` tells which.
 *
 * @param from code of the system of `x` and `y`, for example "EPSG:4326"
 * @param to code of the system wanted
 * @param x longitude in degrees, −180 to 180, or easting in metres
 * @param y latitude in degrees, −90 to 90, or northing in metres
 * @param gridShift a grid-shift file's content for one datum, if the scheme supplies one
 * @returns [x, y] in `to`: degrees or metres
 * @throws {Error} for an unknown code, a number out of range or not finite, or a position the projection cannot hold
 * @example transform("EPSG:4277", "EPSG:27700", 1.7179215833, 52.6575703056); // => [651409.903, 313177.270] to a millimetre
 */
export function transform(
  from: string,
  to: string,
  x: number,
  y: number,
  gridShift?: GridShift,
): [x: number, y: number] {
  const pair = pairOf(from, to, gridShift);
  let out: [number, number];
  try {
    pair.check(x, y);
    out = pair.step(x, y);
    pair.checkResult(out[0], out[1]);
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new Error(`cannot transform ${x} ${y} from ${from} to ${to}: ${reason}`, { cause });
  }
  return out;
}

interface Pair {
  readonly check: (x: number, y: number) => void;
  readonly step: Step;
  readonly checkResult: (x: number, y: number) => void;
}

/** Converters are costly to make and never change, so each pair of codes is made once. */
const plainPairs = new Map<string, Map<string, Pair>>();
const shiftedPairs = new WeakMap<GridShift, Map<string, Map<string, Pair>>>();

function pairOf(from: string, to: string, gridShift: GridShift | undefined): Pair {
  let pairs = plainPairs;
  if (gridShift !== undefined) {
    pairs = shiftedPairs.get(gridShift) ?? new Map<string, Map<string, Pair>>();
    shiftedPairs.set(gridShift, pairs);
  }
  let row = pairs.get(from);
  if (row === undefined) {
    row = new Map();
    pairs.set(from, row);
  }
  let pair = row.get(to);
  if (pair === undefined) {
    pair = makePair(coordinateSystem(from), coordinateSystem(to), gridShift);
    row.set(to, pair);
  }
  return pair;
}

function makePair(from: CoordinateSystem, to: CoordinateSystem, gridShift: GridShift | undefined): Pair {
  return { check: checkOf(from), step: stepBetween(from, to, gridShift), checkResult: checkOf(to) };
}

function checkOf(system: CoordinateSystem): Pair["check"] {
  if (system.kind === "projected") {
    return (x, y) => {
      if (!Number.isFinite(x) || !Number.isFinite(y)) throw new Error(`${x} ${y} is not a position in ${system.code}`);
    };
  }
  return (x, y) => {
    if (!(Math.abs(x) <= 180 && Math.abs(y) <= 90)) {
      throw new Error(`${x} ${y} is not a longitude from −180 to 180 and a latitude from −90 to 90 (${system.code})`);
    }
  };
}

function stepBetween(from: CoordinateSystem, to: CoordinateSystem, gridShift: GridShift | undefined): Step {
  if (from.code === to.code) return same;
  if (from.datum === to.datum) return joined(unprojecting(from), projecting(to));
  return joined(towardsWgs84(from, gridShift), fromWgs84(to, gridShift));
}

function joined(first: Step, second: Step): Step {
  if (first === same) return second;
  if (second === same) return first;
  return (x, y) => {
    const between = first(x, y);
    return second(between[0], between[1]);
  };
}

/** Own datum's longitude and latitude to the system's eastings and northings. */
function projecting(system: CoordinateSystem): Step {
  if (system.kind === "geographic") return same;
  const converter = proj4(coordinateSystem(system.datum).projection, system.projection);
  return (x, y) => {
    refuseFarFromMeridian(system, x);
    return converter.forward([x, y]) as [number, number];
  };
}

function unprojecting(system: CoordinateSystem): Step {
  if (system.kind === "geographic") return same;
  const converter = proj4(system.projection, coordinateSystem(system.datum).projection);
  return (x, y) => {
    const out = converter.forward([x, y]) as [number, number];
    refuseFarFromMeridian(system, out[0]);
    return out;
  };
}

function refuseFarFromMeridian({ code, centralMeridian }: CoordinateSystem, longitude: number): void {
  if (centralMeridian === undefined) return;
  const apart = Math.abs(longitude - centralMeridian) % 360;
  if (Math.min(apart, 360 - apart) > WIDEST) {
    throw new Error(`longitude ${longitude} is more than ${WIDEST}° from the centre of ${code} (${centralMeridian}°)`);
  }
}

function towardsWgs84(system: CoordinateSystem, gridShift: GridShift | undefined): Step {
  return joined(unprojecting(system), datumToWgs84(coordinateSystem(system.datum), gridShift));
}

function fromWgs84(system: CoordinateSystem, gridShift: GridShift | undefined): Step {
  return joined(datumFromWgs84(coordinateSystem(system.datum), gridShift), projecting(system));
}

function datumToWgs84(datum: CoordinateSystem, gridShift: GridShift | undefined): Step {
  if (datum.shift === "") return same;
  const shift = proj4(`${datum.projection} ${datum.shift}`, coordinateSystem(WGS84).projection);
  const parameters: Step = (x, y) => shift.forward([x, y]) as [number, number];
  if (gridShift?.datum === datum.code) return (x, y) => gridShiftToWgs84(gridShift, x, y) ?? parameters(x, y);
  if (datum.code !== TM75) return parameters;
  return (x, y) => {
    const byPolynomial = irishPolynomialToWgs84(x, y);
    return irishPolynomialCovers(byPolynomial[0], byPolynomial[1]) ? byPolynomial : parameters(x, y);
  };
}

function datumFromWgs84(datum: CoordinateSystem, gridShift: GridShift | undefined): Step {
  if (datum.shift === "") return same;
  const shift = proj4(coordinateSystem(WGS84).projection, `${datum.projection} ${datum.shift}`);
  const parameters: Step = (x, y) => shift.forward([x, y]) as [number, number];
  if (gridShift?.datum === datum.code) return (x, y) => gridShiftFromWgs84(gridShift, x, y) ?? parameters(x, y);
  if (datum.code !== TM75) return parameters;
  return (x, y) => (irishPolynomialCovers(x, y) ? irishPolynomialFromWgs84(x, y) : parameters(x, y));
}
