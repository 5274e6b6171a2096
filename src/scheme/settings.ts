/** The contract of `atlas.yaml`: every setting of a scheme, with its default and what it does. */
import { z } from "zod";
import { BODY_PLANS, type BodyPlanId } from "./body-plans.ts";
import { CheckSettings } from "./check-settings.ts";
import { ChangeSettings, CoverageSettings, RangeSettings, SeasonSettings } from "./measure-settings.ts";
import { identifier, relativePath } from "./setting-kinds.ts";
import { SourceSetting } from "./source-setting.ts";
import { SurroundingsSettings } from "./surroundings-settings.ts";

export { RECORD_FIELDS, type RecordField } from "./source-setting.ts";
export { SourceSetting };

const colour = z.string().regex(/^#[0-9a-f]{6}$/i, 'write a colour in quotation marks, such as "#8c2467"');
const calendarYear = z.int().min(1500).max(2200);

export const PeriodSetting = z.strictObject({
  id: identifier.describe("used in tables"),
  from: calendarYear.nullable().describe("first year, inclusive; null for a period open at the left (“before 1950”)"),
  to: calendarYear.describe("last year, inclusive"),
});

export const TerritorySetting = z.strictObject({
  id: identifier.describe("the name of its polygon in territory_polygons"),
  name: z.string().describe("as shown"),
  grid: z.enum(["british", "irish", "channel-islands", "laea", "mgrs"]).describe("the grid used there"),
  datum: z.enum(["ED50", "WGS84"]).default("ED50").describe("of Channel Islands references only"),
  grid_shift: z
    .strictObject({
      file: relativePath.describe("NTv2 file (.gsb) from the territory's datum to ETRS89"),
      accuracy_m: z.number().positive().describe("as its publisher states"),
    })
    .optional()
    .describe(
      "national grid-shift file for the British grid; coordinates are brought to the grid by it instead of seven parameters",
    ),
  inset: z
    .enum(["south-east", "south-west", "north-east", "north-west"])
    .optional()
    .describe("draw it in a corner of the map"),
});

export const Settings = z.strictObject({
  title: z.string().min(1).describe("name of the atlas"),
  heading: z.string().default("").describe("what it is of, for the home page; the title where empty"),
  summary: z.string().default("").describe("one or two sentences under the heading"),
  language: z.string().default("en-GB").describe("BCP 47 tag; vernacular names of this language come first"),
  languages: z
    .array(z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/, "write a language tag, such as fr"))
    .default([])
    .describe(
      "further languages of the site, each with its own pages in a folder of that name; what is not translated is shown in the first",
    ),
  address: z
    .url()
    .optional()
    .describe(
      "where the atlas is published, such as https://example.org/atlas/; lets search engines tell its languages apart",
    ),
  invented: z.boolean().default(false).describe("true marks every page and file as invented, for demonstrations"),
  group: z
    .strictObject({ one: z.string().describe("one of them"), many: z.string().describe("many of them") })
    .default({ one: "species", many: "species" })
    .describe("what one and many of the animals are called, for example bumblebee, bumblebees"),
  accent: z
    .strictObject({ light: colour.describe("on light paper, as #8c2467"), dark: colour.describe("on dark paper") })
    .default({ light: "#8c2467", dark: "#f2a3d0" })
    .describe("colour of links and focus on light and dark paper"),
  body_plan: z
    .enum(["", ...(Object.keys(BODY_PLANS) as BodyPlanId[])])
    .default("")
    .describe("the drawn body the characters refer to; empty for none"),
  edition: z
    .strictObject({
      id: z
        .string()
        .regex(/^[A-Za-z0-9][A-Za-z0-9._-]*$/, "use letters, figures, ., _ and -")
        .describe("a new one for each published state, such as 2025.1"),
      date: z.iso.date().describe("of publication; a record after it is not used"),
    })
    .describe("one published state of the atlas"),
  licence: z.string().default("CC-BY-4.0").describe("of the published tables, an SPDX identifier"),
  citation: z.string().default("").describe("how to cite the atlas; made from title and edition where empty"),
  contact: z.string().default("").describe("an address for corrections"),
  sending: z
    .strictObject({
      email: z.string().default("").describe("an address that filled-in entry sheets are sent to"),
      url: z
        .union([z.literal(""), z.url()])
        .default("")
        .describe("a page that takes records, such as a form of yours"),
      text: z.string().default("").describe("a sentence for whoever sends, such as how long an answer takes"),
    })
    .optional()
    .describe("where the pages about taking part say records are sent; the contact where not given"),
  periods: z.array(PeriodSetting).min(1).describe("in order, earliest first; they may not overlap"),
  compared: z
    .tuple([identifier, identifier])
    .optional()
    .describe("the two periods of the maps; first and last where not given"),
  provisional_years: z.array(calendarYear).default([]).describe("years still incomplete, drawn hatched"),
  status_years: z
    .int()
    .positive()
    .default(10)
    .describe("a status list older than this many years at the edition's date is said to be old"),
  coverage: CoverageSettings.prefault({}).describe("when a square counts as looked at"),
  placing: z
    .strictObject({
      minimum_overlap: z
        .number()
        .min(0.5)
        .max(1)
        .default(0.9)
        .describe("share of an uncertainty circle that must lie in a square"),
      default_uncertainty_m: z
        .number()
        .positive()
        .default(100)
        .describe("radius for points of sources that state none"),
    })
    .default({ minimum_overlap: 0.9, default_uncertainty_m: 100 })
    .describe("which square a point counts for"),
  dates: z
    .strictObject({
      interval_end: z.enum(["inclusive", "exclusive"]).default("inclusive").describe("whether 1/7 May includes 7 May"),
    })
    .default({ interval_end: "inclusive" })
    .describe("how dates are read"),
  season: SeasonSettings.prefault({}).describe("of flight periods"),
  change: ChangeSettings.prefault({}).describe("when change may be judged, and by which method"),
  range: RangeSettings.prefault({}).describe("of the area a taxon lives in"),
  recorders: z
    .strictObject({
      acknowledged: z
        .boolean()
        .default(false)
        .describe(
          "true names the recorders of used records on the page about.md, in alphabetical order without counts, but for those of suppressed.csv; ask them first",
        ),
    })
    .default({ acknowledged: false })
    .describe("whether people are named; nobody is unless you say so"),
  excluded: z
    .strictObject({
      basis_of_record: z
        .array(z.string())
        .default(["FossilSpecimen", "LivingSpecimen"])
        .describe("values of basisOfRecord"),
      establishment: z
        .array(z.string())
        .default(["captive", "cultivated", "released"])
        .describe("values of establishmentMeans or degreeOfEstablishment"),
    })
    .default({
      basis_of_record: ["FossilSpecimen", "LivingSpecimen"],
      establishment: ["captive", "cultivated", "released"],
    })
    .describe("records that are counted and left out"),
  checks: CheckSettings.prefault({}).describe("of records, by check and decide"),
  territories: z.array(TerritorySetting).min(1).describe("parts of the atlas, each with its grid"),
  territory_polygons: relativePath
    .optional()
    .describe(
      "GeoJSON whose property territory holds the id. Without it a national grid has the country it is used in, to 12 km out to sea",
    ),
  land_squares: relativePath.optional().describe("reviewed list of squares with land, for denominators and hatching"),
  basemap: z
    .strictObject({
      land: relativePath.describe("GeoJSON of the land"),
      lakes: relativePath.optional().describe("GeoJSON of lakes"),
      borders: relativePath.optional().describe("GeoJSON of borders"),
      detail: relativePath.optional().describe("finer coast for the interactive map"),
      credit: z.string().describe("shown on every page with a map"),
      licence_file: relativePath.optional().describe("its licence, published beside the data"),
    })
    .optional()
    .describe("what is drawn under the squares"),
  map: z
    .strictObject({
      crs: z
        .string()
        .optional()
        .describe("projection of the drawn maps; that of the first territory's grid where not given"),
    })
    .default({})
    .describe("how maps are drawn"),
  castes: z
    .array(
      z.strictObject({
        id: identifier,
        label: z.string().describe("as shown"),
        many: z
          .string()
          .optional()
          .describe("several of them, where that is no regular English plural, as Arbeiterinnen for Arbeiterin"),
        words: z.array(z.string()).min(1).describe("what recorders write for it, in any case"),
        within: identifier
          .optional()
          .describe("the wider caste it is part of; queen and worker are part of female where there is one"),
      }),
    )
    .default([])
    .describe("stages, sexes and castes that are told apart, and the words records use for them"),
  surroundings: SurroundingsSettings.prefault({}).describe(
    "habitats, flowers visited, nest sites and hosts that records state",
  ),
  first_seen: z
    .array(
      z.strictObject({
        id: identifier,
        title: z.string().describe("as shown"),
        look_at: z.string().describe("what to look at next"),
      }),
    )
    .default([])
    .describe("groups of taxa by what one sees first; column firstSeen of the checklist names them"),
  sources: z
    .array(SourceSetting)
    .min(1)
    .describe("files of records and how they are read; of two copies of a record the earlier source's counts"),
});
export type Settings = z.infer<typeof Settings>;
