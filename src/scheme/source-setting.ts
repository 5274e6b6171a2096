/** The part of `atlas.yaml` about files of records: what each is, and how it is read. */
import { z } from "zod";
import { identifier, relativePath } from "./setting-kinds.ts";

/**
 * Columns a record can have; the names are Darwin Core's (and, for complete lists, its Humboldt extension's) where there
 * is one. `viceCounty`, `evidence` and `partSeen` are our own: the recorder's stated region, what the identification
 * rests on (sight, photograph, specimen), and the body part that was looked at; so are `flowerVisited`, `nestSite` and `host`.
 */
export const RECORD_FIELDS = [
  "occurrenceID",
  "catalogNumber",
  "recordNumber",
  "otherCatalogNumbers",
  "eventID",
  "scientificName",
  "scientificNameAuthorship",
  "scientificNameID",
  "taxonID",
  "taxonRank",
  "kingdom",
  "vernacularName",
  "identificationQualifier",
  "eventDate",
  "year",
  "month",
  "day",
  "startDayOfYear",
  "endDayOfYear",
  "verbatimEventDate",
  "gridReference",
  "decimalLatitude",
  "decimalLongitude",
  "geodeticDatum",
  "coordinateUncertaintyInMeters",
  "coordinatePrecision",
  "easting",
  "northing",
  "verbatimCoordinates",
  "verbatimLatitude",
  "verbatimLongitude",
  "verbatimSRS",
  "country",
  "countryCode",
  "stateProvince",
  "county",
  "viceCounty",
  "locality",
  "recordedBy",
  "identifiedBy",
  "dateIdentified",
  "identificationVerificationStatus",
  "identificationRemarks",
  "previousIdentifications",
  "evidence",
  "partSeen",
  "associatedMedia",
  "preparations",
  "lifeStage",
  "sex",
  "caste",
  "individualCount",
  "occurrenceStatus",
  "basisOfRecord",
  "establishmentMeans",
  "degreeOfEstablishment",
  "samplingProtocol",
  "isTaxonomicScopeFullyReported",
  "habitat",
  "flowerVisited",
  "nestSite",
  "host",
  "associatedTaxa",
  "dataGeneralizations",
  "informationWithheld",
  "license",
  "type",
  "occurrenceRemarks",
] as const;
export type RecordField = (typeof RECORD_FIELDS)[number];

export const SourceSetting = z.strictObject({
  id: identifier,
  title: z.string().default("").describe("as shown; the id where empty"),
  files: z
    .union([relativePath, z.array(relativePath).min(1)])
    .describe("one path or a list; * stands for any part of a file name; an archive may be a folder"),
  format: z
    .enum(["delimited", "spreadsheet", "parquet", "archive"])
    .optional()
    .describe("detected where not given; gzip is undone first"),
  kind: z
    .enum(["field", "photograph", "specimen", "literature", "card"])
    .default("field")
    .describe("what the records are"),
  licence: z.string().default("").describe("of the records, an SPDX identifier such as CC-BY-4.0"),
  datum: z
    .string()
    .optional()
    .describe("of decimal coordinates whose row states none; without it such rows are not placed"),
  crs: z.string().optional().describe("of eastings and northings, for example EPSG:27700"),
  default_uncertainty_m: z
    .number()
    .positive()
    .optional()
    .describe(
      "least radius of its points, whatever they state; without it points that state none have placing.default_uncertainty_m",
    ),
  date_format: z
    .enum(["iso", "day-first", "month-first", "spreadsheet"])
    .default("iso")
    .describe("of dates written otherwise than year-month-day"),
  two_digit_pivot: z
    .int()
    .min(0)
    .max(99)
    .optional()
    .describe("two-digit years up to it are 20xx, above it 19xx; refused without"),
  columns: z
    .partialRecord(z.enum(RECORD_FIELDS), z.string())
    .default({})
    .describe("where headers are not Darwin Core: term: header in the file, or the column's number as #3"),
  constants: z
    .partialRecord(z.enum(RECORD_FIELDS), z.string())
    .default({})
    .describe("a value for every row that has none"),
  encoding: z
    .enum(["utf-8", "utf-16le", "utf-16be", "windows-1252", "latin-1", "iso-8859-1"])
    .optional()
    .describe("of text; detected where not given"),
  delimiter: z
    .string()
    .regex(/^[^"\r\n]$/, 'write one character, in quotation marks: ",", ";", "|" or "\\t"')
    .optional()
    .describe("detected where not given"),
  header_row: z
    .int()
    .min(0)
    .optional()
    .describe(
      "row of the header as a spreadsheet shows it; 0 where there is none, columns then being named by number; detected where not given",
    ),
  sheet: z
    .union([z.string(), z.array(z.string()).min(1)])
    .optional()
    .describe("sheets of a spreadsheet to read, by name; every sheet with known headers where not given"),
  project: z.string().default("").describe("survey or campaign the records come from"),
  aim: z
    .enum(["all species", "target species"])
    .default("all species")
    .describe("what the recorders set out to record"),
  target: z.string().default("").describe("taxonID the survey looks for, with aim: target species"),
  mass_event: z
    .boolean()
    .default(false)
    .describe(
      "true for a count week and the like, when many people record in a few days; change is shown without it too",
    ),
});
export type SourceSetting = z.infer<typeof SourceSetting>;
