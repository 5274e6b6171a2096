import { complies, lacks } from "./response.ts";
import { isEmpty, numberIn, type StandardTest, standardTest } from "./standard-test.ts";

/** Metres: from a little below the shore of the Dead Sea to the top of the highest mountain, the draft's defaults. */
const ELEVATION = [-430, 8850] as const;
/** Metres: to the bottom of the deepest trench, the draft's default. */
const DEPTH = [0, 11_000] as const;
/** Metres: half the circumference of the earth. */
const LARGEST_UNCERTAINTY = 20_037_509;

/** The tests of coordinates, their uncertainty, elevation and depth: a number within bounds, both included. */
export const NUMBER_TESTS: readonly StandardTest[] = [
  inRange("b6ecda2a-ce36-437a-b515-3ae94948fe83", "VALIDATION_DECIMALLATITUDE_INRANGE", "decimalLatitude", [-90, 90]),
  inRange(
    "0949110d-c06b-450e-9649-7c1374d940d1",
    "VALIDATION_DECIMALLONGITUDE_INRANGE",
    "decimalLongitude",
    [-180, 180],
  ),
  inRange(
    "0bb8297d-8f8a-42d2-80c1-558f29efe798",
    "VALIDATION_MINELEVATION_INRANGE",
    "minimumElevationInMeters",
    ELEVATION,
  ),
  inRange(
    "c971fe3f-84c1-4636-9f44-b1ec31fd63c7",
    "VALIDATION_MAXELEVATION_INRANGE",
    "maximumElevationInMeters",
    ELEVATION,
  ),
  inRange("04b2c8f3-c71b-4e95-8e43-f70374c5fb92", "VALIDATION_MINDEPTH_INRANGE", "minimumDepthInMeters", DEPTH, 0),
  inRange("3f1db29a-bfa5-40db-9fd1-fde020d81939", "VALIDATION_MAXDEPTH_INRANGE", "maximumDepthInMeters", DEPTH, 0),
  inOrder("d708526b-6561-438e-aa1a-82cd80b06396", "VALIDATION_MINELEVATION_LESSTHAN_MAXELEVATION", "ElevationInMeters"),
  inOrder("8f1e6e58-544b-4365-a569-fb781341644e", "VALIDATION_MINDEPTH_LESSTHAN_MAXDEPTH", "DepthInMeters", 0),
  standardTest({
    guid: "1bf0e210-6792-4128-b8cc-ab6828aa4871",
    label: "VALIDATION_COORDINATES_NOTZERO",
    actsOn: ["decimalLatitude", "decimalLongitude"],
    run: (record) => {
      const [latitude, longitude] = [numberIn(record["decimalLatitude"]), numberIn(record["decimalLongitude"])];
      if (latitude === undefined || longitude === undefined) return lacks("latitude or longitude is no number");
      return complies(latitude !== 0 || longitude !== 0, "latitude and longitude are not both 0");
    },
  }),
  standardTest({
    guid: "c6adf2ea-3051-4498-97f4-4b2f8a105f57",
    label: "VALIDATION_COORDINATEUNCERTAINTY_INRANGE",
    actsOn: ["coordinateUncertaintyInMeters"],
    run: (record) => {
      const text = record["coordinateUncertaintyInMeters"];
      if (isEmpty(text)) return lacks("coordinateUncertaintyInMeters is empty");
      const metres = numberIn(text) ?? 0;
      return complies(metres >= 1 && metres <= LARGEST_UNCERTAINTY, "the uncertainty is 1 to 20,037,509 m");
    },
  }),
];

/** A number below `least` is none the test can run on: of a depth, a negative one. */
function inRange(
  guid: string,
  label: string,
  term: string,
  [from, to]: readonly [number, number],
  least = Number.NEGATIVE_INFINITY,
): StandardTest {
  return standardTest({
    guid,
    label,
    actsOn: [term],
    run: (record) => {
      const value = numberIn(record[term]);
      if (value === undefined || value < least) return lacks(`${term} is no number the test can run on`);
      return complies(value >= from && value <= to, `${term} is ${from} to ${to}`);
    },
  });
}

function inOrder(guid: string, label: string, what: string, least = Number.NEGATIVE_INFINITY): StandardTest {
  const [minimum, maximum] = [`minimum${what}`, `maximum${what}`];
  return standardTest({
    guid,
    label,
    actsOn: [minimum, maximum],
    run: (record) => {
      const [low, high] = [numberIn(record[minimum]), numberIn(record[maximum])];
      if (low === undefined || high === undefined || low < least || high < least)
        return lacks(`${minimum} or ${maximum} is no number the test can run on`);
      return complies(low <= high, `${minimum} is at most ${maximum}`);
    },
  });
}
