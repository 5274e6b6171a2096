import { complies, hasResult } from "./response.ts";
import { isEmpty, type StandardTest, standardTest } from "./standard-test.ts";

const LOCATION =
  "higherGeographyID higherGeography continent country countryCode stateProvince county municipality waterBody island islandGroup locality locationID verbatimLocality decimalLatitude decimalLongitude verbatimCoordinates verbatimLatitude verbatimLongitude footprintWKT";
const TAXON =
  "taxonID scientificNameID acceptedNameUsageID parentNameUsageID originalNameUsageID taxonConceptID scientificName higherClassification kingdom phylum class order superfamily family subfamily tribe subtribe genus genericName subgenus infragenericEpithet specificEpithet infraspecificEpithet vernacularName cultivarEpithet";
const WHEN = "eventDate year month day startDayOfYear endDayOfYear verbatimEventDate";

/** GUID, label, and the terms of which one must be filled. */
const MUST_BE_FILLED: readonly (readonly [guid: string, label: string, terms: string])[] = [
  ["7d2485d5-1ba7-4f25-90cb-f4480ff1a275", "VALIDATION_DECIMALLATITUDE_NOTEMPTY", "decimalLatitude"],
  ["9beb9442-d942-4f42-8b6a-fcea01ee086a", "VALIDATION_DECIMALLONGITUDE_NOTEMPTY", "decimalLongitude"],
  ["239ec40e-a729-4a8e-ba69-e0bf03ac1c44", "VALIDATION_GEODETICDATUM_NOTEMPTY", "geodeticDatum"],
  ["58486cb6-1114-4a8a-ba1e-bd89cfe887e9", "VALIDATION_LOCATION_NOTEMPTY", LOCATION],
  ["853b79a2-b314-44a2-ae46-34a1e7ed85e4", "VALIDATION_COUNTRYCODE_NOTEMPTY", "countryCode"],
  ["f51e15a6-a67d-4729-9c28-3766299d2985", "VALIDATION_EVENTDATE_NOTEMPTY", "eventDate"],
  ["41267642-60ff-4116-90eb-499fee2cd83f", "VALIDATION_EVENTTEMPORAL_NOTEMPTY", WHEN],
  ["c09ecbf9-34e3-4f3e-b74a-8796af15e59f", "VALIDATION_YEAR_NOTEMPTY", "year"],
  ["06851339-843f-4a43-8422-4e61b9a00e75", "VALIDATION_TAXON_NOTEMPTY", TAXON],
  ["7c4b9498-a8d9-4ebb-85f1-9f200c788595", "VALIDATION_SCIENTIFICNAME_NOTEMPTY", "scientificName"],
  ["401bf207-9a55-4dff-88a5-abcd58ad97fa", "VALIDATION_SCIENTIFICNAMEID_NOTEMPTY", "scientificNameID"],
  ["49f1d386-5bed-43ae-bd43-deabf7df64fc", "VALIDATION_SCIENTIFICNAMEAUTHORSHIP_NOTEMPTY", "scientificNameAuthorship"],
  ["ff59f77d-71e9-4eb1-aac9-8bd05c50ff70", "VALIDATION_NAMEPUBLISHEDINYEAR_NOTEMPTY", "namePublishedInYear"],
  ["36ed36c9-b1a7-40b2-b5e2-0d012e772098", "VALIDATION_KINGDOM_NOTEMPTY", "kingdom"],
  ["14da5b87-8304-4b2b-911d-117e3c29e890", "VALIDATION_TAXONRANK_NOTEMPTY", "taxonRank"],
  ["c486546c-e6e5-48a7-b286-eba7f5ca56c4", "VALIDATION_OCCURRENCEID_NOTEMPTY", "occurrenceID"],
  ["ac2b7648-d5f9-48ca-9b07-8ad5879a2536", "VALIDATION_BASISOFRECORD_NOTEMPTY", "basisOfRecord"],
  ["eb4a17f6-6bea-4cdd-93dd-d5a7e9d1eccf", "VALIDATION_OCCURRENCESTATUS_NOTEMPTY", "occurrenceStatus"],
  ["15f78619-811a-4c6f-997a-a4c7888ad849", "VALIDATION_LICENSE_NOTEMPTY", "license"],
  ["374b091a-fc90-4791-91e5-c1557c649169", "VALIDATION_DCTYPE_NOTEMPTY", "type"],
];

/** GUID, label, and the term whose being filled is worth knowing. */
const WORTH_KNOWING: readonly (readonly [guid: string, label: string, term: string])[] = [
  ["13d5a10e-188e-40fd-a22c-dbaa87b91df2", "ISSUE_DATAGENERALIZATIONS_NOTEMPTY", "dataGeneralizations"],
  ["acc8dff2-d8d1-483a-946d-65a02a452700", "ISSUE_ESTABLISHMENTMEANS_NOTEMPTY", "establishmentMeans"],
];

const COUNTRY = standardTest({
  guid: "6ce2b2b4-6afe-4d13-82a0-390d31ade01c",
  label: "VALIDATION_COUNTRY_NOTEMPTY",
  actsOn: ["country"],
  consults: ["countryCode"],
  onlyWhetherFilled: ["country"],
  run: (record) =>
    complies(
      !isEmpty(record["country"]) || record["countryCode"] === "XZ",
      "country is filled, or countryCode is that of the high seas",
    ),
});

/** The tests that ask only whether something is filled. */
export const FILLED_TESTS: readonly StandardTest[] = [
  ...MUST_BE_FILLED.map(([guid, label, terms]) => mustBeFilled(guid, label, terms.split(" "))),
  ...WORTH_KNOWING.map(([guid, label, term]) => worthKnowing(guid, label, term)),
  COUNTRY,
];

function mustBeFilled(guid: string, label: string, terms: readonly string[]): StandardTest {
  const comment = terms.length === 1 ? `${terms[0]} is filled` : `one of ${terms.length} terms is filled`;
  const run = (record: Readonly<Record<string, string | undefined>>) =>
    complies(
      terms.some((term) => !isEmpty(record[term])),
      comment,
    );
  return standardTest({ guid, label, actsOn: terms, onlyWhetherFilled: terms, run });
}

function worthKnowing(guid: string, label: string, term: string): StandardTest {
  return standardTest({
    guid,
    label,
    kind: "issue",
    actsOn: [term],
    onlyWhetherFilled: [term],
    run: (record) =>
      isEmpty(record[term])
        ? hasResult("NOT_ISSUE", `${term} is empty`)
        : hasResult("POTENTIAL_ISSUE", `${term} is filled`),
  });
}
