import { datumShiftAt } from "../geodesy/accuracy.ts";
import type { Place } from "./place.ts";

/** Whether a point is nearer to a 2 km line than the datum's shift may be off there; never so for squares. */
export function nearLine({ shape, longitude, latitude }: Place): boolean {
  if (shape.kind === "square") return false;
  const { crs, easting, northing } = shape.point;
  const toLine = (metres: number) => Math.abs(metres - Math.round(metres / 2000) * 2000);
  return Math.min(toLine(easting), toLine(northing)) < datumShiftAt(crs, longitude, latitude).accuracy;
}
