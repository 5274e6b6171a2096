import { isUnplaced, type PlaceFields, type PlacingRules } from "../../../src/records/place.ts";
import { readPlace } from "../../../src/records/read-place.ts";
import { supportedSquare } from "../../../src/records/supported-squares.ts";
import type { Random } from "../../demonstration/random.ts";
import { numberByCharacters } from "../oracle/number.ts";
import { project, SYSTEMS, toWgs84 } from "../oracle/projection.ts";
import { supportedByCircle } from "../oracle/supported.ts";
import { gridUsedAt } from "../oracle/territories.ts";
import { NOWHERE, placingRules } from "../placing.ts";
import { spoilt, wide } from "../spoil.ts";
import type { Kind, Outcome } from "../trial.ts";

/** Names of datums with the grid whose datum it is; WGS84 has none. */
const DATUMS: Readonly<Record<string, string>> = {
  ...{ "": "", "WGS 84": "", WGS84: "", "epsg:4326": "", "EPSG::4326": "", unknown: "", "not recorded": "" },
  ...{ OSGB36: "british", "EPSG:4277": "british", TM75: "irish", ED50: "channel-islands" },
};
/** Texts of an uncertainty with the metres they state. */
const UNCERTAINTIES: readonly (readonly [string, number | undefined])[] = [
  ...["", "0", "-5", "about 50", "NaN", "1e400", "0.5", "1 km", "٣٠"].map((text) => [text, undefined] as const),
  ...([
    ["25", 25],
    ["100.0", 100],
    ["707,1", 707.1],
    ["1,000", 1000],
    ["1e3", 1000],
    ["20000", 20_000],
  ] as const),
];
/** Texts of a generalisation with the side in metres of the cell they state; null where none is stated. */
const CELLS: readonly (readonly [string, number | null])[] = [
  ...([
    ["", 0],
    ["", 0],
    ["", 0],
    ["10 km grid", 10_000],
    ["1 000 m", 1000],
    ["0.01 degree", 1110],
  ] as const),
  ...([
    ["moved at random", null],
    ["2km square", 2000],
  ] as const),
];

interface Position {
  fields: PlaceFields;
  rules: PlacingRules;
  datum: string;
  uncertainty: number | undefined;
  cell: number | null;
}

/** Latitude and longitude on four datums, with uncertainty and generalisation, as people write and spoil them. */
export const coordinates: Kind<Position> = { name: "coordinates", share: 0.15, draw, judge };

function draw(random: Random): Position {
  const box = random.pick([
    [-7.5, 49.9, 2, 60.8],
    [-10.7, 51.2, -5.3, 55.5],
    [-2.9, 48.8, -1.8, 49.8],
    [-30, 35, 30, 70],
  ] as const);
  const [longitude, latitude] = [random.between(box[0], box[2]), random.between(box[1], box[3])];
  const decimals = random.pick([0, 1, 2, 3, 4, 5, 6, 7, 15]);
  const exchanged = random.chance(0.03);
  const [x, y] = exchanged ? [latitude, longitude] : [longitude, latitude];
  const datum = random.pick(Object.keys(DATUMS));
  const [uncertaintyText, uncertainty] = random.chance(0.5) ? random.pick(UNCERTAINTIES) : (["", undefined] as const);
  const [cellText, cell] = random.chance(0.3) ? random.pick(CELLS) : (["", 0] as const);
  const fields = {
    ...NOWHERE,
    decimalLatitude: numberText(random, y, decimals),
    decimalLongitude: numberText(random, random.chance(0.02) ? -x : x, decimals),
    geodeticDatum: datum,
    coordinateUncertaintyInMeters: uncertaintyText,
    dataGeneralizations: cellText,
  };
  const rules = placingRules({
    minimumOverlap: random.pick([0.5, 0.75, 0.9, 0.9, 0.95, 1]),
    ...(random.chance(0.3) ? { sourceUncertainty: random.pick([1, 30, 250, 1000]) } : {}),
  });
  return { fields, rules, datum, uncertainty, cell };
}

function numberText(random: Random, value: number, decimals: number): string {
  const plain = value.toFixed(decimals);
  const way = random.whole(0, 19);
  const [degrees, minutes] = [Math.trunc(Math.abs(value)), Math.trunc((Math.abs(value) % 1) * 60)];
  const ways = [
    plain.replace(".", ","),
    `+${plain}`,
    ` ${plain}\u00A0`,
    plain.replace("-", "−"),
    plain.replace("-", "–"),
    wide(plain),
    `${plain}°`,
    `${degrees}° ${minutes}' ${value < 0 ? "W" : "N"}`,
    `${degrees} ${minutes}`,
    random.pick([
      "",
      "NaN",
      "Infinity",
      "-Infinity",
      "1e400",
      "-0",
      "0",
      "null",
      "0x33",
      "5e-400",
      `${plain}${"0".repeat(400)}`,
    ]),
    `${value.toExponential(Math.min(decimals, 12))}`,
    spoilt(random, plain),
  ];
  return ways[way] ?? plain;
}

function judge({ fields, rules, datum, uncertainty, cell }: Position): Outcome {
  const answer = readPlace(fields, rules);
  const expected = expectedOf(fields, datum, cell);
  if (isUnplaced(answer)) {
    const isRight = typeof expected === "string";
    return isRight
      ? { answer: "refused" }
      : { answer: "refused", wrong: `${answer.refused.check}: ${answer.refused.message}` };
  }
  if (expected === "undecided") return { answer: "accepted", undecided: true };
  if (typeof expected === "string")
    return { answer: "accepted", wrong: `placed in ${answer.territory.id}; ${expected}` };
  if (answer.territory.grid.id !== expected.grid)
    return { answer: "accepted", wrong: `on ${answer.territory.grid.id}, not ${expected.grid}` };
  const radius = Math.max(
    expected.digits,
    (cell ?? 0) / Math.SQRT2,
    uncertainty ?? 0,
    rules.sourceUncertainty ?? (uncertainty === undefined ? rules.defaultUncertainty : 0),
  );
  let undecided = false;
  for (const size of [10_000, 2_000] as const) {
    const wanted = supportedByCircle(expected.grid, expected.point, { radius, size, least: rules.minimumOverlap });
    const found = supportedSquare(answer, size, rules.minimumOverlap).code;
    if (wanted === "undecided") undecided = true;
    else if (found !== wanted)
      return { answer: "accepted", wrong: `supports ${found} and not ${wanted} (radius ${radius})` };
  }
  return { answer: "accepted", undecided };
}

/** Grid, point and what the digits carry, by the other computation; in words, why there is no place. */
function expectedOf({ decimalLatitude, decimalLongitude }: PlaceFields, datum: string, cell: number | null) {
  const [latitude, longitude] = [numberByCharacters(decimalLatitude), numberByCharacters(decimalLongitude)];
  if (cell === null) return "coarsened to no known size";
  if (latitude === undefined || longitude === undefined) return "not two numbers";
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) return "not on the globe";
  const own = SYSTEMS[DATUMS[datum] ?? ""];
  const [x, y] = own === undefined ? [longitude, latitude] : toWgs84(own, longitude, latitude);
  const grid = gridUsedAt(x, y);
  if (grid?.startsWith("border")) return "undecided";
  const system = SYSTEMS[grid ?? ""];
  if (grid === undefined || system === undefined) return "in no territory";
  const decimals = Math.min(15, Math.max(decimalsOf(decimalLatitude), decimalsOf(decimalLongitude)));
  // A degree of latitude is 111.2 km and one of longitude that times the cosine, to 3 in 1,000 on the ellipsoid.
  const digits = Math.hypot(111_200, 111_500 * Math.cos((latitude * Math.PI) / 180)) / 10 ** decimals;
  return { grid, point: project(system, x, y), digits };
}

function decimalsOf(text: string): number {
  const [mantissa = "", exponent = "0"] = text.trim().toLowerCase().split("e");
  const decimals = mantissa.split(/[.,]/)[1]?.length ?? 0;
  return Math.max(0, decimals - Number(exponent));
}
