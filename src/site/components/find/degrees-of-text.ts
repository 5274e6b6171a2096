/** Degrees of WGS84, north and east. */
export interface Degrees {
  readonly latitude: number;
  readonly longitude: number;
}

const NUMBER = String.raw`\d{1,3}(?:[.,]\d+)?`;
const PART = String.raw`([NSEWO])?\s*([-−+])?\s*(${NUMBER})\s*(?:°\s*)?(?:(${NUMBER})\s*'\s*)?(?:(${NUMBER})\s*"\s*)?([NSEWO])?`;
const PAIR = new RegExp(`^\\s*${PART}\\s*[,;/ ]\\s*${PART}\\s*$`, "i");
/** Signs that are written for minutes and seconds. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/''|[″”“]/g, '"'],
  [/[′’‘´]/g, "'"],
  [/º/g, "°"],
];

/**
 * A position written in degrees: with a decimal point or comma, or with minutes and seconds, with or without letters of
 * the compass before or behind. Latitude comes first unless letters say otherwise.
 *
 * @param text as typed; O is west, as French has it
 * @returns undefined for a text that is no position, or only two whole numbers without a sign of degrees
 * @example degreesOfText("54,978; -1,617") // { latitude: 54.978, longitude: -1.617 }
 * @example degreesOfText("1°37'1\"W 54°58'42\"N") // { latitude: 54.97833333333333, longitude: -1.616944444444444 }
 */
export function degreesOfText(text: string): Degrees | undefined {
  const plain = SIGNS.reduce((result, [sign, by]) => result.replace(sign, by), text.trim());
  if (!/[.,]\d|[°NSEWO]/i.test(plain)) return undefined;
  const parts = PAIR.exec(plain)?.slice(1);
  if (parts === undefined) return undefined;
  const [one, other] = [angle(parts.slice(0, 6)), angle(parts.slice(6, 12))];
  if (one === undefined || other === undefined) return undefined;
  const swapped = one.axis === "east" || other.axis === "north";
  if (one.axis !== undefined && one.axis === other.axis) return undefined;
  const [latitude, longitude] = swapped ? [other.degrees, one.degrees] : [one.degrees, other.degrees];
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : undefined;
}

function angle(
  parts: readonly (string | undefined)[],
): { degrees: number; axis: "north" | "east" | undefined } | undefined {
  const [before, sign, whole = "", minutes = "0", seconds = "0", behind] = parts;
  const letter = (before ?? behind)?.toUpperCase();
  if ((before !== undefined && behind !== undefined) || (letter !== undefined && sign !== undefined)) return undefined;
  const number = (text: string) => Number(text.replace(",", "."));
  if (number(minutes) >= 60 || number(seconds) >= 60) return undefined;
  const size = number(whole) + number(minutes) / 60 + number(seconds) / 3600;
  const isNegative = letter === undefined ? sign === "-" || sign === "−" : /[SWO]/.test(letter);
  const axis = letter === undefined ? undefined : /[NS]/.test(letter) ? "north" : "east";
  return { degrees: isNegative ? -size : size, axis };
}
