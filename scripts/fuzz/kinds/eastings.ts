import { isUnplaced, type PlaceFields, type PlacingRules } from "../../../src/records/place.ts";
import { readPlace } from "../../../src/records/read-place.ts";
import { supportedSquare } from "../../../src/records/supported-squares.ts";
import type { Random } from "../../demonstration/random.ts";
import { squareHolding } from "../oracle/lettering.ts";
import { numberByCharacters } from "../oracle/number.ts";
import { project, SYSTEMS, unproject } from "../oracle/projection.ts";
import { supportedByCircle } from "../oracle/supported.ts";
import { gridUsedAt } from "../oracle/territories.ts";
import { NOWHERE, placingRules } from "../placing.ts";
import { spoilt, wide } from "../spoil.ts";
import type { Kind, Outcome } from "../trial.ts";

/** Names of coordinate systems with the grid whose system it is. */
const SYSTEM_NAMES: Readonly<Record<string, string>> = {
  "EPSG:27700": "british",
  "British National Grid": "british",
  "EPSG:29903": "irish",
  "EPSG:23030": "channel-islands",
};
const BOXES: Readonly<Record<string, readonly [number, number, number, number]>> = {
  british: [-50_000, -50_000, 700_000, 1_250_000],
  irish: [-50_000, -50_000, 450_000, 500_000],
  "channel-islands": [500_000, 5_380_000, 610_000, 5_540_000],
};

interface Numbers {
  fields: PlaceFields;
  rules: PlacingRules;
  grid: string;
}

/** Eastings and northings in three national systems: trailing zeros, thousands marks, exchanged, spoilt. */
export const eastings: Kind<Numbers> = { name: "eastings, northings", share: 0.08, draw, judge };

function draw(random: Random): Numbers {
  const crs = random.pick(Object.keys(SYSTEM_NAMES));
  const grid = SYSTEM_NAMES[crs] ?? "";
  const [west, south, east, north] = BOXES[grid] as readonly [number, number, number, number];
  const step = random.pick([10_000, 1_000, 1_000, 100, 100, 10, 1, 0.1]);
  const text = (low: number, high: number) => numberText(random, random.whole(low / step, high / step) * step);
  const pair = [text(west, east), text(south, north)] as const;
  const [easting, northing] = random.chance(0.03) ? [pair[1], pair[0]] : pair;
  return { fields: { ...NOWHERE, easting, northing }, rules: placingRules({ crs }), grid };
}

function numberText(random: Random, value: number): string {
  const plain = String(Math.round(value * 10) / 10);
  const ways = [
    `${plain}.0`,
    plain.replace(".", ","),
    plain.replace(/\B(?=(?:\d{3})+$)/g, random.pick([",", " ", ".", "'"])),
    wide(plain),
    `${plain} m`,
    `${plain.slice(0, -1)}`,
    random.pick(["", "NaN", "Infinity", "1e400", "-1", "0", "TQ", "4.23e5"]),
    spoilt(random, plain),
  ];
  return ways[random.whole(0, 19)] ?? plain;
}

function judge({ fields, rules, grid }: Numbers): Outcome {
  const answer = readPlace(fields, rules);
  const expected = expectedOf(fields, grid);
  if (isUnplaced(answer)) {
    const isRight = typeof expected === "string";
    return isRight
      ? { answer: "refused" }
      : { answer: "refused", wrong: `${answer.refused.check}: ${answer.refused.message}` };
  }
  if (expected === "undecided") return { answer: "accepted", undecided: true };
  if (typeof expected === "string")
    return { answer: "accepted", wrong: `placed in ${answer.territory.id}; ${expected}` };
  let undecided = false;
  for (const size of [10_000, 2_000] as const) {
    const wanted = wantedSquare(expected, size, rules.minimumOverlap);
    const found = supportedSquare(answer, size, rules.minimumOverlap).code;
    if (wanted === "undecided") undecided = true;
    else if (found !== wanted) return { answer: "accepted", wrong: `supports ${found} and not ${wanted}` };
  }
  return { answer: "accepted", undecided };
}

interface Expected {
  grid: string;
  point: [number, number];
  /** Side of the square the zeros at the end name; 0 for a point. */
  side: number;
  radius: number;
}

function wantedSquare({ grid, point, side, radius }: Expected, size: number, least: number): string | null {
  if (side === 0) return supportedByCircle(grid, point, { radius, size, least });
  return side > size ? null : (squareHolding(grid, point[0], point[1], size) ?? null);
}

/** What is named, by counting the zeros that both numbers end in; in words, why nothing is. */
function expectedOf({ easting, northing }: PlaceFields, own: string): Expected | string {
  const texts = [easting, northing].map((text) => text.trim());
  const [east, north] = texts.map(numberByCharacters);
  if (east === undefined || north === undefined) return "not two numbers";
  if (texts.some((text) => /^\+?[1-9]\d?\d?(,\d\d\d)+$/.test(text))) return "thousands or decimals";
  if (Math.abs(east) > 1e7 || Math.abs(north) > 1e7) return "undecided";
  const system = SYSTEMS[own] as (typeof SYSTEMS)[string];
  const [longitude, latitude] = unproject(system, east, north);
  const grid = Number.isFinite(longitude) && Number.isFinite(latitude) ? gridUsedAt(longitude, latitude) : undefined;
  if (grid?.startsWith("border")) return "undecided";
  if (grid === undefined) return "in no territory";
  const zeros = Math.min(...[east, north].map((metres) => zerosOf(metres)));
  if (grid !== own) {
    const radius = Math.max(100, 10 ** Math.min(4, Math.max(0, zeros)) * Math.SQRT2);
    return { grid, point: project(SYSTEMS[grid] as (typeof SYSTEMS)[string], longitude, latitude), side: 0, radius };
  }
  if (zeros < 2) return { grid, point: [east, north], side: 0, radius: 100 };
  return { grid, point: [east, north], side: 10 ** Math.min(4, zeros), radius: 0 };
}

/** Zeros at the end of a whole number of metres; −1 for a fraction. */
function zerosOf(metres: number): number {
  if (!Number.isInteger(metres)) return -1;
  return metres === 0 ? 9 : (/0*$/.exec(String(Math.abs(metres)))?.[0].length ?? 0);
}
