import { COORDINATE_SYSTEMS, coordinateSystem } from "../../geodesy/coordinate-systems.ts";
import { complies, lacks, noAuthority, type Response } from "./response.ts";
import { isEmpty, type Parameters, type StandardTest, standardTest } from "./standard-test.ts";
import {
  BASES_OF_RECORD,
  COUNTRY_CODES,
  DATUM_CODES,
  DEGREES_OF_ESTABLISHMENT,
  ESTABLISHMENT_MEANS,
  LICENCE_ADDRESS,
  OCCURRENCE_STATUSES,
  OTHER_GEOGRAPHIC_CODES,
  SEXES,
  TYPES,
} from "./vocabularies.ts";

/** The tests whether a value is of a list that the standard itself gives. A value with blanks around it is not. */
export const VOCABULARY_TESTS: readonly StandardTest[] = [
  listed("7af25f1e-a4e2-4ff4-b161-d1f25a5c3e47", "VALIDATION_OCCURRENCESTATUS_STANDARD", "occurrenceStatus", (value) =>
    OCCURRENCE_STATUSES.has(value),
  ),
  listed("42408a00-bf71-4892-a399-4325e2bc1fb8", "VALIDATION_BASISOFRECORD_STANDARD", "basisOfRecord", (value) =>
    BASES_OF_RECORD.has(value),
  ),
  listed(
    "4eb48fdf-7299-4d63-9d08-246902e2857f",
    "VALIDATION_ESTABLISHMENTMEANS_STANDARD",
    "establishmentMeans",
    (value) => ESTABLISHMENT_MEANS.has(value),
  ),
  listed(
    "060e7734-607d-4737-8b2c-bfa17788bf1a",
    "VALIDATION_DEGREEOFESTABLISHMENT_STANDARD",
    "degreeOfEstablishment",
    (value) => DEGREES_OF_ESTABLISHMENT.has(value),
  ),
  listed("88d8598b-3318-483d-9475-a5acf9887404", "VALIDATION_SEX_STANDARD", "sex", (value) =>
    SEXES.has(value.toLowerCase()),
  ),
  listed("cdaabb0d-a863-49d0-bc0f-738d771acba5", "VALIDATION_DCTYPE_STANDARD", "type", (value) => TYPES.has(value)),
  listed("0493bcfb-652e-4d17-815b-b0cce0742fbe", "VALIDATION_COUNTRYCODE_STANDARD", "countryCode", (value) =>
    COUNTRY_CODES.has(value.toUpperCase()),
  ),
  listed("3136236e-04b6-49ea-8b34-a65f25e3aba1", "VALIDATION_LICENSE_STANDARD", "license", (value) =>
    LICENCE_ADDRESS.test(value),
  ),
  standardTest({
    guid: "7e0c0418-fe16-4a39-98bd-80e19d95b9d1",
    label: "VALIDATION_GEODETICDATUM_STANDARD",
    actsOn: ["geodeticDatum"],
    run: (record, parameters) => datumStandard(record["geodeticDatum"] ?? "", parameters),
  }),
];

function listed(guid: string, label: string, term: string, has: (value: string) => boolean): StandardTest {
  return standardTest({
    guid,
    label,
    actsOn: [term],
    run: (record, { sourceAuthority }) => {
      if (sourceAuthority === null) return noAuthority();
      if (isEmpty(record[term])) return lacks(`${term} is empty`);
      return complies((sourceAuthority ?? has)(record[term] ?? ""), `${term} is of the list`);
    },
  });
}

/** A code that is on neither list may well be good: the answer is then that it cannot be told. */
function datumStandard(text: string, { sourceAuthority }: Parameters): Response {
  if (sourceAuthority === null) return noAuthority();
  if (isEmpty(text)) return lacks("geodeticDatum is empty");
  const isDegrees = isDegreesCode(text);
  if (isDegrees === undefined) return noAuthority("the code is not among those known here");
  return complies(
    isDegrees,
    "geodeticDatum is the code of a datum, an ellipsoid or a system in degrees, or “not recorded”",
  );
}

/**
 * True for "not recorded" and for an EPSG code of a datum, an ellipsoid or a geographic system, false for any other
 * text and for the code of a system in metres, undefined for a code that is not known here.
 *
 * @example isDegreesCode("EPSG:27700") // false
 */
export function isDegreesCode(text: string): boolean | undefined {
  if (text === "not recorded") return true;
  const number = /^EPSG:(\d{4,5})$/.exec(text)?.[1];
  if (number === undefined) return false;
  if (COORDINATE_SYSTEMS.has(text)) return coordinateSystem(text).kind === "geographic";
  if (DATUM_CODES.has(number) || OTHER_GEOGRAPHIC_CODES.has(number)) return true;
  // EPSG gives its numbers from 20000 to 32760 to projected systems.
  return Number(number) >= 20_000 && Number(number) <= 32_760 ? false : undefined;
}
