/** An angle as read. `text` is what decimal degrees would say: as written where they are, else rounded to a tenth of the finest unit stated. */
export interface Angle {
  readonly degrees: number;
  readonly text: string;
  /** Which of the two it is, where N, S, E or W says so. */
  readonly axis: "latitude" | "longitude" | undefined;
}

const SIGNS: Readonly<Record<string, string>> = {
  degree: "°",
  degrees: "°",
  deg: "°",
  minute: "'",
  minutes: "'",
  min: "'",
  second: '"',
  seconds: '"',
  sec: '"',
  n: "N",
  north: "N",
  s: "S",
  south: "S",
  e: "E",
  east: "E",
  w: "W",
  west: "W",
};
const NUMBER = "\\d+(?:\\.\\d+)?";
const AMOUNT = `([+-]?${NUMBER}) ?°?(?: ?(${NUMBER}) ?')?(?: ?(${NUMBER}) ?")?`;
const ANGLE = `(?:([NSEW]) ?${AMOUNT}|${AMOUNT} ?([NSEW])?)`;
const ONE = new RegExp(`^${ANGLE}$`);
const TWO = new RegExp(`^${ANGLE}(?: ?[,;/] ?| )${ANGLE}$`);
const GROUPS = 8;

/**
 * Reads one angle of degrees, minutes and seconds, with signs or English words, a sign or a hemisphere but not both.
 * Undefined for anything else: decimal commas, minutes or seconds from 60 on, numbers without units beyond the first.
 *
 * @example angleIn("139 degrees 55.38 minutes east") // { degrees: 139.923, text: "139.923", axis: "longitude" }
 */
export function angleIn(text: string): Angle | undefined {
  const match = ONE.exec(withSigns(text));
  return match === null ? undefined : angleOf(match.slice(1));
}

/**
 * Reads a latitude and a longitude from one text. Without hemispheres the two are told apart only where one is beyond
 * 90 degrees; where both could be either, and where only one has a hemisphere, the answer is undefined.
 *
 * @example pairIn("139.92, -23.712")?.latitude.text // "-23.712"
 */
export function pairIn(text: string): { latitude: Angle; longitude: Angle } | undefined {
  const match = TWO.exec(withSigns(text));
  if (match === null) return undefined;
  const [first, second] = [angleOf(match.slice(1, 1 + GROUPS)), angleOf(match.slice(1 + GROUPS))];
  if (first === undefined || second === undefined) return undefined;
  const isLatitude = (one: Angle, other: Angle) =>
    one.axis === "latitude" ? other.axis === "longitude" : one.axis === other.axis && Math.abs(other.degrees) > 90;
  const [latitude, longitude] = isLatitude(first, second) ? [first, second] : [second, first];
  return isLatitude(latitude, longitude) && areInRange(latitude, longitude) ? { latitude, longitude } : undefined;
}

/**
 * True for a latitude and a longitude that exist and are not marked as the other.
 *
 * @example areInRange({ degrees: 91, text: "91", axis: undefined }, { degrees: 0, text: "0", axis: undefined }) // false
 */
export function areInRange(latitude: Angle, longitude: Angle): boolean {
  return (
    latitude.axis !== "longitude" &&
    longitude.axis !== "latitude" &&
    Math.abs(latitude.degrees) <= 90 &&
    Math.abs(longitude.degrees) <= 180
  );
}

/** Words and typographic signs as plain signs; a word that is none of them stays, and nothing matches it. */
function withSigns(text: string): string {
  return text
    .replaceAll("−", "-")
    .replaceAll(/º|˚/g, "°")
    .replaceAll(/″|“|”|''|′′|’’/g, '"')
    .replaceAll(/′|’|‘/g, "'")
    .replaceAll(/\p{L}+\.?/gu, (word) => SIGNS[word.toLowerCase().replace(".", "")] ?? word)
    .replaceAll(/\s+/g, " ")
    .trim();
}

function angleOf(groups: readonly (string | undefined)[]): Angle | undefined {
  const hemisphere = groups[0] ?? groups[7];
  const [whole = "", minutes, seconds] = groups[0] === undefined ? groups.slice(4, 7) : groups.slice(1, 4);
  const isSigned = /^[+-]/.test(whole);
  const isSplit = minutes !== undefined || seconds !== undefined;
  if ((isSigned && hemisphere !== undefined) || (isSplit && whole.includes("."))) return undefined;
  if (Number(minutes ?? 0) >= 60 || Number(seconds ?? 0) >= 60) return undefined;
  const sizeText = isSplit ? inDegrees(whole, minutes, seconds) : whole.replace(/^[+-]/, "");
  const isNegative = whole.startsWith("-") || hemisphere === "S" || hemisphere === "W";
  const text = isNegative && Number(sizeText) !== 0 ? `-${sizeText}` : sizeText;
  return { degrees: Number(text), text, axis: hemisphere === undefined ? undefined : axisOf(hemisphere) };
}

function axisOf(hemisphere: string): "latitude" | "longitude" {
  return hemisphere === "N" || hemisphere === "S" ? "latitude" : "longitude";
}

function inDegrees(whole: string, minutes: string | undefined, seconds: string | undefined): string {
  const degrees = Math.abs(Number(whole)) + Number(minutes ?? 0) / 60 + Number(seconds ?? 0) / 3600;
  const finest = seconds ?? minutes ?? "";
  const unit = 10 ** -(finest.split(".")[1]?.length ?? 0) / (seconds === undefined ? 60 : 3600);
  return String(Number(degrees.toFixed(Math.min(12, Math.ceil(-Math.log10(unit)) + 1))));
}
