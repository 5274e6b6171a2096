import { coordinateSystem } from "../../geodesy/coordinate-systems.ts";
import { resolveCrs } from "../../geodesy/resolve-crs.ts";
import { lacks, noAuthority, proposes, type Response, unchanged } from "./response.ts";
import { isEmpty, numberIn, type StandardTest, standardTest, type TermTexts } from "./standard-test.ts";
import { type Angle, angleIn, areInRange, pairIn } from "./verbatim-degrees.ts";
import { isDegreesCode } from "./vocabulary-tests.ts";

const WGS84 = "EPSG:4326";
/** Metres: the largest shift between any two datums anywhere (Chapman and Wieczorek 2020, uncertainty from unknown datum). */
const LARGEST_DATUM_SHIFT = 5359;
const COORDINATES = ["decimalLatitude", "decimalLongitude"] as const;

/** The amendments of coordinates and their datum. */
export const PLACE_AMENDMENTS: readonly StandardTest[] = [
  standardTest({
    guid: "3c2590c7-af8a-4eb4-af57-5f73ba9d1f8e",
    label: "AMENDMENT_COORDINATES_FROM_VERBATIM",
    kind: "amendment",
    actsOn: [...COORDINATES, "geodeticDatum"],
    consults: [
      "verbatimCoordinates",
      "verbatimLatitude",
      "verbatimLongitude",
      "verbatimCoordinateSystem",
      "verbatimSRS",
    ],
    onlyWhetherFilled: COORDINATES,
    run: fromVerbatim,
  }),
  standardTest({
    guid: "7498ca76-c4d4-42e2-8103-acacccbdffa7",
    label: "AMENDMENT_GEODETICDATUM_ASSUMEDDEFAULT",
    kind: "amendment",
    actsOn: ["geodeticDatum", "coordinateUncertaintyInMeters"],
    consults: COORDINATES,
    onlyWhetherFilled: ["geodeticDatum", ...COORDINATES],
    run: assumedDatum,
  }),
  standardTest({
    guid: "0345b325-836d-4235-96d0-3b5caf150fc0",
    label: "AMENDMENT_GEODETICDATUM_STANDARDIZED",
    kind: "amendment",
    actsOn: ["geodeticDatum"],
    run: (record, { sourceAuthority }) =>
      sourceAuthority === null ? noAuthority() : standardizedDatum(record["geodeticDatum"] ?? ""),
  }),
];

function fromVerbatim(record: TermTexts): Response {
  if (COORDINATES.some((term) => !isEmpty(record[term]))) return lacks("coordinates are filled");
  const pairText = record["verbatimCoordinates"] ?? "";
  const [latitudeText, longitudeText] = [record["verbatimLatitude"] ?? "", record["verbatimLongitude"] ?? ""];
  if (isEmpty(pairText) && (isEmpty(latitudeText) || isEmpty(longitudeText))) return lacks("no verbatim coordinates");
  const [srs, datum] = [record["verbatimSRS"] ?? "", record["geodeticDatum"] ?? ""];
  if (isOtherThanDegrees(record["verbatimCoordinateSystem"] ?? "", srs)) return unchanged("they are not in degrees");
  if (!isEmpty(srs) && !isEmpty(datum) && srs !== datum) return unchanged("geodeticDatum and verbatimSRS differ");
  const both = isEmpty(pairText) ? together(angleIn(latitudeText), angleIn(longitudeText)) : pairIn(pairText);
  if (both === undefined) return unchanged("the verbatim coordinates are not plain");
  const { latitude, longitude } = both;
  if (!agrees(latitudeText, latitude) || !agrees(longitudeText, longitude))
    return unchanged("the verbatim terms say different things");
  const filled = { decimalLatitude: latitude.text, decimalLongitude: longitude.text };
  const changes = isEmpty(srs) || !isEmpty(datum) ? filled : { ...filled, geodeticDatum: srs };
  return proposes("FILLED_IN", changes, "read from the verbatim coordinates");
}

function isOtherThanDegrees(coordinateSystemText: string, srs: string): boolean {
  const code = resolveCrs(srs);
  if (code !== undefined && coordinateSystem(code).kind !== "geographic") return true;
  return !isEmpty(coordinateSystemText) && !/deg|geographic|lat/i.test(coordinateSystemText);
}

function together(latitude: Angle | undefined, longitude: Angle | undefined): ReturnType<typeof pairIn> {
  if (latitude === undefined || longitude === undefined) return undefined;
  return areInRange(latitude, longitude) ? { latitude, longitude } : undefined;
}

/** A term that is empty contradicts nothing; one that cannot be read contradicts. */
function agrees(text: string, angle: Angle): boolean {
  return isEmpty(text) || angleIn(text)?.degrees === angle.degrees;
}

/** What else the unstated datum could have been is not known, so the largest shift of all is added to a stated uncertainty. */
function assumedDatum(record: TermTexts): Response {
  if (!isEmpty(record["geodeticDatum"])) return unchanged("geodeticDatum is filled");
  const metres = numberIn(record["coordinateUncertaintyInMeters"]);
  if (metres === undefined || COORDINATES.some((term) => isEmpty(record[term])))
    return proposes("FILLED_IN", { geodeticDatum: WGS84 }, "the default is assumed");
  const coordinateUncertaintyInMeters = String(metres + LARGEST_DATUM_SHIFT);
  return proposes("AMENDED", { geodeticDatum: WGS84, coordinateUncertaintyInMeters }, "the default is assumed");
}

function standardizedDatum(text: string): Response {
  if (isEmpty(text)) return lacks("geodeticDatum is empty");
  if (isDegreesCode(text) !== false) return unchanged("geodeticDatum is a code, or “not recorded”");
  const isUnrecorded = /^(?:not recorded|unknown)$/i.test(text.trim());
  const code = isUnrecorded ? "not recorded" : resolveCrs(text);
  if (code === undefined || (!isUnrecorded && coordinateSystem(code).kind !== "geographic"))
    return unchanged("geodeticDatum names no datum that is known here");
  return proposes("AMENDED", { geodeticDatum: code }, "the code of the datum named");
}
