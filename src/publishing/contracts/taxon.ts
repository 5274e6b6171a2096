/** One taxon: in lists, and in its own file. */
import { z } from "zod";
import { Media } from "./media.ts";
import { count, year } from "./number-kinds.ts";

/** How coarse records are shown on purpose; `in part` where only some are. */
export const GeneralisedTo = z.enum(["none", "in part", "2 km", "10 km", "withheld"]);
export type GeneralisedTo = z.infer<typeof GeneralisedTo>;

/** One entry of the scheme's list of sensitive taxa, as it bears on a taxon. */
export const ShownCoarser = z.strictObject({
  of: z.string().describe("name of the member of the group it is about; empty where it is about the taxon itself"),
  level: z.enum(["2 km", "10 km", "withheld"]),
  whole: z.boolean().describe("whether it is about the taxon's every record"),
  scope: z.string().describe("which records it is about, in words; empty for all"),
  reason: z.string().describe("in the list's words"),
  review_date: z.string(),
});
export type ShownCoarser = z.infer<typeof ShownCoarser>;

/** What a reader needs of a taxon in lists: names, place in the list, headline numbers. */
export const TaxonSummary = z.strictObject({
  taxon_id: z.string(),
  slug: z.string().describe("lower-case ASCII, used in addresses"),
  scientific_name: z.string(),
  vernacular_name: z.string().describe("in the atlas's language; the scientific name where there is none"),
  short_name: z.string().describe("vernacular name without the group's word, for narrow lists"),
  vernacular_names: z
    .array(z.strictObject({ name: z.string(), language: z.string() }))
    .describe("of every language, in the order of the checklist"),
  is_aggregate: z.boolean(),
  lead: z.string().describe("one sentence from the account, or empty"),
  generalised_to: GeneralisedTo,
  records: count,
  hectads: count.describe("10 km squares with a record of any date"),
  hectads_latest: count.describe("10 km squares with a record in the latest period"),
  tetrads_latest: count,
  first_year: year.nullable(),
  last_year: year.nullable(),
  change: z
    .lazy(() => ChangeRow)
    .nullable()
    .describe("10 km, whole atlas, earliest compared period to latest; null with one period"),
  season: z.array(count).length(36).describe("dated records of all castes in thirds of the month, from 1–10 January"),
  hectad_codes_latest: z.array(z.string()).describe("for the small map"),
  first_seen: z.string().nullable().describe("the 'what you see first' group of the checklist, if any"),
});
export type TaxonSummary = z.infer<typeof TaxonSummary>;

/** Figures of compared squares under one coverage rule. */
const Figures = {
  minimum_visits: count.describe("the rule: visits with records of other taxa that make a square covered"),
  comparable: count.describe("squares covered in both periods where the taxon was recorded in either"),
  net: z.int(),
  net_percent: z.number().nullable().describe("net as % of retained + lost; null where it cannot be judged"),
  interval_low: z.int().nullable(),
  interval_high: z
    .int()
    .nullable()
    .describe("exact 95 % interval of net, in whole squares outwards but never onto 0; null where it cannot be judged"),
  turnover: z
    .number()
    .nullable()
    .describe("(gained + lost) / comparable, in %: squares that held it in one period only; an upper bound of change"),
  turnover_low: z.number().nullable(),
  turnover_high: z.number().nullable().describe("exact 95 % interval of turnover"),
  judged: z.boolean(),
  reason: z.string().describe("empty, or why it cannot be judged"),
};

/**
 * Squares of one taxon compared between two periods, at one resolution, in one territory or in "all".
 * net = gained − lost. Only squares covered in both periods by records of other taxa count, from settled records:
 * established, and of no provisional year. Not corrected for effort; a square without a record is no absence.
 */
export const ChangeRow = z.strictObject({
  resolution_m: z.union([z.literal(10_000), z.literal(2_000)]),
  territory: z.string().describe("territory id, or all"),
  from_period: z.string(),
  to_period: z.string(),
  ...Figures,
  retained: count,
  gained: count,
  lost: count,
  recorded_both_not_covered: count.describe(
    "found in both periods, outside the coverage rule: shown, not in the figures",
  ),
  recorded_both_unsettled: count.describe(
    "found in both periods, in one of them only by records of a provisional year or not established: shown, not in the figures",
  ),
  not_comparable_since: count.describe("recorded in the later period only, not covered in both or not settled"),
  not_comparable_before: count,
  covered_both_no_record: count,
  covered_one_no_record: count,
  covered_neither: count.describe("land squares nobody visited included"),
  stricter: z
    .strictObject(Figures)
    .nullable()
    .describe("the same under the stricter coverage rule; null where the scheme has but one"),
});
export type ChangeRow = z.infer<typeof ChangeRow>;

/** State of one square for one taxon between two periods. */
export const SquareState = z.enum([
  "retained",
  "gained",
  "lost",
  "not_comparable_since",
  "not_comparable_before",
  "recorded",
]);
export type SquareState = z.infer<typeof SquareState>;

/** One square of one taxon. `recorded` is the only state in a one-period atlas and for records outside every period. */
export const TaxonSquare = z.strictObject({
  square: z.string(),
  state: SquareState,
  covered: z.array(z.boolean()).describe("by other taxa, one flag a period in the atlas's order"),
  records: z.array(count).describe("one number a period"),
  visits: z.array(count),
  first_year: year.nullable(),
  last_year: year.nullable(),
});
export type TaxonSquare = z.infer<typeof TaxonSquare>;

/** Key character of a taxon, as `characters.csv`. Empty strings mean "all". */
export const Character = z.strictObject({
  castes: z.array(z.string()).describe("castes the character holds for; empty means all"),
  form: z.string().describe("age or colour form; empty means the usual one"),
  part: z.string().describe("body part id of the scheme's body plan, or coat, size, face length …"),
  state: z.string().describe("a colour or mark; 'absent' and 'varies' too"),
  note: z.string(),
  reliability: z.enum(["settles", "supports", "misleads"]),
  evidence: z.string().describe("sight, photograph, specimen: what can show it"),
});
export type Character = z.infer<typeof Character>;

/** Records of one caste in thirds of the month; visits on which that caste was recorded. */
export const SeasonRow = z.strictObject({
  caste: z.string().describe("caste id, or not_stated"),
  label: z.string(),
  many: z.string().optional().describe("several of the caste, where the scheme says it; else by the English rules"),
  records: z.array(count).length(36),
  visits: z.array(count).length(36),
  total: count.describe("records of this caste with a date short enough"),
  left_out: count.describe("records of this caste whose date is too vague for a third of a month"),
});
export type SeasonRow = z.infer<typeof SeasonRow>;

export const AccountSection = z.strictObject({ id: z.string(), title: z.string(), html: z.string() });
export type AccountSection = z.infer<typeof AccountSection>;

/** A look-alike of the atlas, outside the group, or of neither, with its name alone. */
export const LookAlike = z.strictObject({
  slug: z.string().nullable().describe("of a taxon of the atlas"),
  outside: z.string().nullable().describe("slug of a taxon outside the group"),
  name: z.string(),
  difference: z.string(),
});

/** What one list of others says of a taxon: shown beside our figures, never made from them. */
export const TaxonStatus = z.strictObject({
  list: z.string(),
  category: z.string().describe("as the list words it"),
  year,
  jurisdiction: z.string().describe("for which country or area it speaks"),
  citation: z.string(),
  url: z.string().describe("or empty"),
  old: z.boolean().describe("older than the setting status_years at the edition's date"),
});
export type TaxonStatus = z.infer<typeof TaxonStatus>;

export const TaxonFile = TaxonSummary.omit({ hectad_codes_latest: true }).extend({
  authorship: z.string(),
  rank: z.string(),
  subgenus: z.string(),
  other_names: z
    .array(z.strictObject({ name: z.string(), language: z.string() }))
    .describe("vernacular names in other languages"),
  synonyms: z.array(z.string()),
  members: z.array(z.string()).describe("slugs of taxa in this aggregate"),
  within: z.array(z.string()).describe("slugs of aggregates that hold this taxon"),
  castes: z.array(z.string()),
  sizes: z.array(
    z.strictObject({
      caste: z.string(),
      label: z.string(),
      millimetres: z.tuple([z.number(), z.number()]),
      note: z.string(),
    }),
  ),
  statuses: z.array(TaxonStatus),
  evidence_needed: z.string().describe("what a record needs, in words"),
  account: z.array(AccountSection).describe("sections know, habitat, when, where and others, HTML without scripts"),
  look_alikes: z.array(LookAlike),
  characters: z.array(Character),
  media: z.array(Media),
  squares: z.strictObject({ "10000": z.array(TaxonSquare), "2000": z.array(TaxonSquare) }),
  /** Hectads not recorded for the taxon but short of coverage, for the hatch: codes covered in one period only, by which. */
  uncovered: z.strictObject({
    neither: z.array(z.string()),
    later_only: z.array(z.string()),
    earlier_only: z.array(z.string()),
  }),
  change: z.array(ChangeRow).describe("of each two compared periods, those of the maps first; larger squares first"),
  season_by_caste: z.array(SeasonRow),
  years: z.array(z.strictObject({ year, records: count, visits: count })),
  shown_coarser: z.array(ShownCoarser),
  not_on_map: z.array(z.strictObject({ resolution_m: z.int(), reason: z.string(), records: count })),
  downloads: z.array(z.strictObject({ path: z.string(), title: z.string(), rows: count, bytes: count })),
});
export type TaxonFile = z.infer<typeof TaxonFile>;
