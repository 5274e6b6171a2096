import type { InterpretedRow } from "./record.ts";

const FROM_WORDS: Readonly<Record<string, string>> = {
  stated: "as stated",
  source: "of the source",
  digits: "by its digits",
  default: "by default",
  generalisation: "as generalised",
};

/** How a place was read: its middle, its size, and from which text; empty where it was not. */
export function placeInWords({
  read_from,
  size_m,
  radius_m,
  radius_from,
  longitude,
  latitude,
}: InterpretedRow): string {
  if (longitude === null || latitude === null) return "";
  const middle = `${Math.abs(latitude).toFixed(4)}° ${latitude < 0 ? "S" : "N"}, ${Math.abs(longitude).toFixed(4)}° ${longitude < 0 ? "W" : "E"}`;
  const size =
    size_m !== null
      ? `square of ${inMetres(size_m)}`
      : `circle of ${inMetres(radius_m ?? 0)} radius ${FROM_WORDS[radius_from ?? ""] ?? ""}`;
  return `${middle}, ${size.trim()}, read from ${read_from ?? "its text"}`;
}

function inMetres(metres: number): string {
  return metres >= 1000 ? `${Math.round(metres / 100) / 10} km` : `${Math.round(metres)} m`;
}

/** A day number from 1970-01-01 as ISO 8601. */
export function isoDay(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}

/** Third of a month, 0 to 35, of a day number. */
export function thirdOf(day: number): number {
  const date = new Date(day * 86_400_000);
  return date.getUTCMonth() * 3 + Math.min(2, Math.floor((date.getUTCDate() - 1) / 10));
}
