import { coordinateSystem } from "./coordinate-systems.ts";
import type { GridShift } from "./grid-shift.ts";
import { gridShiftFromWgs84 } from "./grid-shift.ts";
import { irishPolynomialCovers } from "./irish-polynomial.ts";

/** The operation that takes a position to or from WGS84, and how far it may be off. */
export interface DatumShift {
  /** As shown to readers: "EPSG:1041, official polynomial", "EPSG:1314, seven parameters", a file's name, or "none". */
  readonly operation: string;
  /** Metres. */
  readonly accuracy: number;
}

const NONE: DatumShift = Object.freeze({ operation: "none", accuracy: 0 });
/** Accuracy at 95 %, from the register's entry for the operation. */
const POLYNOMIAL: DatumShift = Object.freeze({ operation: "EPSG:1041, official polynomial", accuracy: 0.4 });

/**
 * Which datum shift `transform` uses at a position, and how far it may be off: for points nearer to a line than that,
 * and for the methods page.
 *
 * @param crs code of the system transformed to or from
 * @param longitude WGS84 degrees
 * @param latitude WGS84 degrees
 * @param gridShift the file handed to `transform`, if any
 * @returns the operation and its accuracy in metres; "none" and 0 for WGS84 and systems on it
 * @throws {Error} for an unknown code
 * @example datumShiftAt("EPSG:29903", -6.26, 53.35); // => { operation: "EPSG:1041, official polynomial", accuracy: 0.4 }
 * @example datumShiftAt("EPSG:27700", -1.5, 52); // => { operation: "EPSG:1314, seven parameters", accuracy: 5 }
 */
export function datumShiftAt(crs: string, longitude: number, latitude: number, gridShift?: GridShift): DatumShift {
  const { datum, shift, shiftName, accuracy } = coordinateSystem(crs);
  if (gridShift?.datum === datum && gridShiftFromWgs84(gridShift, longitude, latitude) !== undefined) {
    return { operation: gridShift.name, accuracy: gridShift.accuracy };
  }
  if (datum === "EPSG:4300" && irishPolynomialCovers(longitude, latitude)) return POLYNOMIAL;
  if (shiftName === "") return NONE;
  return { operation: `${shiftName}, ${kindOf(shift)}`, accuracy };
}

function kindOf(shift: string): string {
  if (shift === "") return "taken as WGS84";
  return shift.endsWith(",0,0,0,0") ? "three parameters" : "seven parameters";
}
