/** The atlas as a whole, and the scheme's own pages. */
import { z } from "zod";
import { count, Period, year } from "./number-kinds.ts";
import { OutsideTaxon } from "./outside.ts";
import { Character, TaxonSummary } from "./taxon.ts";

export const PageFile = z.strictObject({
  slug: z.string(),
  title: z.string(),
  lead: z.string(),
  html: z.string(),
  in_footer: z.boolean(),
});
export type PageFile = z.infer<typeof PageFile>;

const plain = z.union([z.string(), z.number()]);
const told = z.strictObject({ key: z.string(), values: z.record(z.string(), plain) });

/**
 * One sentence of the methods page: a setting in force or a count. Its words stand in the site's catalogues; sections
 * are places on the page, in their order.
 */
export const MethodStatement = z.strictObject({
  section: z.string().describe("place on the page, and the ending of the key of its heading"),
  key: z.string().describe("of the site's catalogue"),
  values: z
    .record(z.string(), z.union([plain, told]))
    .describe("of the names in the words; a further statement where they hold one"),
});

export const AtlasFile = z.strictObject({
  title: z.string(),
  heading: z
    .string()
    .describe("what the atlas is of, the home page's h1, for example Bumblebees of Britain and Ireland"),
  summary: z.string(),
  language: z.string(),
  languages: z.array(z.string()).describe("further languages of the site, each in a folder of its own"),
  address: z.string().describe("where the atlas is published, or empty"),
  invented: z.boolean(),
  invented_notice: z.string().describe("empty unless invented"),
  group: z.strictObject({ one: z.string(), many: z.string() }),
  accent: z.strictObject({ light: z.string(), dark: z.string() }),
  body_plan: z.string().describe("id of the body plan the characters use: bee; empty for none"),
  edition: z.strictObject({ id: z.string(), date: z.string() }),
  licence: z.strictObject({ id: z.string(), title: z.string(), url: z.string() }),
  citation: z.string(),
  contact: z.string(),
  sending: z
    .strictObject({ email: z.string(), url: z.string(), text: z.string() })
    .describe("where records are sent; each may be empty"),
  periods: z.array(Period),
  compared: z
    .tuple([z.string(), z.string()])
    .nullable()
    .describe("period ids compared on the maps; null with one period"),
  provisional_years: z.array(year),
  coverage_minimum_visits: count,
  status_years: count.describe("a status list older than this at the edition's date is said to be old"),
  season_minimum_visits: count.describe("thirds of a month with fewer visits are drawn open"),
  castes: z.array(
    z.strictObject({
      id: z.string(),
      label: z.string(),
      within: z.array(z.string()).describe("wider castes it is part of, nearest first: a worker is a female"),
    }),
  ),
  territories: z.array(
    z.strictObject({ id: z.string(), name: z.string(), grid: z.string(), grid_name: z.string(), land_hectads: count }),
  ),
  map: z.strictObject({
    crs: z.string().describe("EPSG code of the drawing projection"),
    insets: z.array(
      z.strictObject({
        territory: z.string(),
        corner: z.enum(["south-east", "south-west", "north-east", "north-west"]),
      }),
    ),
  }),
  basemap: z.strictObject({ files: z.array(z.string()), credit_html: z.string() }).nullable(),
  taxa: z.array(TaxonSummary),
  outside: z.array(OutsideTaxon).describe("what is taken for the group and is not of it"),
  group_characters: z
    .array(Character)
    .describe("characters of every taxon of the atlas, which stand in no taxon's own"),
  first_seen_groups: z.array(z.strictObject({ id: z.string(), title: z.string(), look_at: z.string() })),
  pages: z.array(z.strictObject({ slug: z.string(), title: z.string(), in_footer: z.boolean() })),
  totals: z.strictObject({
    records_read: count,
    records_used: count,
    hectads: count,
    tetrads: count,
    visits: count,
    first_year: year.nullable(),
    last_year: year.nullable(),
  }),
  effort_season: z.array(count).length(36).describe("visits in thirds of the month"),
  effort_years: z.array(z.strictObject({ year, visits: count, records: count })),
  methods: z.array(MethodStatement),
  thanks: z.array(z.string()).describe("recorders who are thanked by name, sorted; none unless the scheme says so"),
});
export type AtlasFile = z.infer<typeof AtlasFile>;
