/** The part of `atlas.yaml` about measures: when a square counts as covered, and when each method may speak. */
import { z } from "zod";

const share = z.number().min(0).max(1);
const atLeast = (fewest: number) => z.int().min(fewest);

export const CoverageSettings = z.strictObject({
  minimum_visits: atLeast(1)
    .default(3)
    .describe("visits with records of other taxa that make a square covered in a period"),
  stricter_minimum_visits: atLeast(1)
    .optional()
    .describe("a second rule, under which change is shown beside the first; twice minimum_visits where not given"),
  minimum_visits_for_richness: atLeast(2)
    .default(5)
    .describe("visits to a square below which no number of taxa is expected from them"),
});

export const SeasonSettings = z.strictObject({
  minimum_visits: atLeast(0).default(30).describe("thirds of a month with fewer visits are drawn open"),
  minimum_records: atLeast(2)
    .default(30)
    .describe("records or visits of a caste below which no date of its season is given"),
  minimum_years: atLeast(5).default(10).describe("years with enough records below which no shift of season is given"),
  minimum_records_a_year: atLeast(1).default(5).describe("visits with it that make a year count for the shift"),
  year_starts: z
    .int()
    .min(1)
    .max(12)
    .default(1)
    .describe("month with which the year of a season begins: one in which hardly anything is about"),
});

const RelativeChangeSettings = z.strictObject({
  minimum_taxa: atLeast(4)
    .default(40)
    .describe("taxa with enough squares below which the group is too small for an index relative to it"),
  minimum_squares: atLeast(1)
    .default(5)
    .describe("squares in the earlier period below which a taxon has no relative index"),
});

const LocalFrequencySettings = z.strictObject({
  minimum_taxa: atLeast(4).default(50).describe("taxa below which the group is too small for local frequencies"),
  minimum_benchmarks: z
    .number()
    .min(1)
    .default(5)
    .describe("mean number of benchmark taxa a square must have for its effort to be known"),
  minimum_squares: atLeast(1)
    .default(10)
    .describe("squares recorded in the two periods together below which a taxon has no such trend"),
  nearest: atLeast(5).default(200).describe("nearest squares among which a neighbourhood is chosen"),
  most_similar: atLeast(5)
    .default(100)
    .describe("of these, the most similar by their taxa, which are the neighbourhood"),
  standard_frequency: share
    .default(0.74)
    .describe("frequency-weighted mean frequency of a well recorded neighbourhood"),
  benchmark_share: share.default(0.27).describe("share of the expected taxa, commonest first, that are benchmarks"),
});

const ReportingRateSettings = z.strictObject({
  minimum_visits: atLeast(1).default(100).describe("complete lists in each period below which no rate is given"),
  minimum_detections: atLeast(1).default(20).describe("complete lists with the taxon, both periods together"),
  minimum_squares: atLeast(1).default(20).describe("10 km squares with complete lists in both periods"),
  minimum_visits_a_year: atLeast(1).default(20).describe("complete lists below which a year has no rate"),
});

export const ChangeSettings = z.strictObject({
  minimum_comparable_squares: atLeast(1).default(20).describe("with fewer, change is not judged"),
  minimum_tetrad_share: share
    .default(0.5)
    .describe(
      "share of a taxon’s records of each period that must be good to 2 km, in the 10 km squares where both have some, before its change at 2 km is judged",
    ),
  relative: RelativeChangeSettings.prefault({}).describe("of the change relative to the group"),
  local_frequency: LocalFrequencySettings.prefault({}).describe("of the change by local frequencies"),
  reporting_rate: ReportingRateSettings.prefault({}).describe("of the reporting rate of complete lists"),
});

export const RangeSettings = z.strictObject({
  not_established: z
    .array(z.string())
    .default(["vagrant", "casual"])
    .describe(
      "values of establishmentMeans or degreeOfEstablishment whose records are dots on the map, but no range, gain or loss",
    ),
});

export type CoverageSettings = z.infer<typeof CoverageSettings>;
export type SeasonSettings = z.infer<typeof SeasonSettings>;
export type ChangeSettings = z.infer<typeof ChangeSettings>;
