/** WGS84: semi-major axis in metres and first eccentricity squared (flattening 1/298.257223563). */
const A = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const E2 = FLATTENING * (2 - FLATTENING);

/**
 * Number of decimals a number was written with; trailing zeros count as written, an exponent is counted in.
 *
 * @param text for example "51.50", "-1,25" or "5.15e1"
 * @returns decimals, 0 for a whole number; undefined when the text is not one number
 * @example decimalsAsWritten("51.50"); // => 2
 */
export function decimalsAsWritten(text: string): number | undefined {
  const parts = /^\s*[+\-−]?(?:\d+(?:[.,](\d*))?|[.,](\d+))(?:[eE]([+-]?\d+))?\s*°?\s*$/.exec(text);
  if (parts === null) return undefined;
  const decimals = (parts[1] ?? parts[2] ?? "").length;
  return Math.max(0, decimals - Number(parts[3] ?? 0));
}

/**
 * Uncertainty in metres that the precision of decimal degrees leaves: the diagonal of one step of latitude and one of
 * longitude on the WGS84 ellipsoid. Source: Chapman and Wieczorek 2020, *Georeferencing Best Practices*,
 * doi:10.15468/doc-gg7h-s853, "Uncertainty Related to Coordinate Precision": √(lat² + lon²), lat = π·R·p/180 with
 * R = a(1 − e²)/(1 − e² sin²φ)^1.5, lon = π·N·cos φ·p/180 with N = a/√(1 − e² sin²φ).
 *
 * @param latitude degrees, −90 to 90
 * @param precision degrees, over 0: 0.01 for two decimals (10 ** -decimals)
 * @returns metres
 * @throws {RangeError} for a latitude or precision out of range
 * @example precisionUncertainty(10.27, 0.01); // => 1556.8 to a decimetre
 */
export function precisionUncertainty(latitude: number, precision: number): number {
  if (!(Math.abs(latitude) <= 90)) throw new RangeError(`latitude ${latitude} is not between −90 and 90`);
  if (!(precision > 0)) throw new RangeError(`a precision of ${precision} degrees is not over 0`);
  const phi = (latitude * Math.PI) / 180;
  const bend = 1 - E2 * Math.sin(phi) ** 2;
  const meridianRadius = (A * (1 - E2)) / bend ** 1.5;
  const normalRadius = A / Math.sqrt(bend);
  return ((Math.PI * precision) / 180) * Math.hypot(meridianRadius, normalRadius * Math.cos(phi));
}
