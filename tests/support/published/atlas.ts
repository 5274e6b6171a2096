import type {
  AccountingFile,
  AtlasFile,
  DownloadsFile,
  HectadSummary,
  TaxonFile,
} from "../../../src/publishing/contracts.ts";
import { changeStatements } from "../../../src/publishing/methods/change-methods.ts";
import { ChangeSettings, CoverageSettings } from "../../../src/scheme/measure-settings.ts";
import type { Scheme } from "../../../src/scheme/scheme.ts";
import { KNOWN_TRUTH } from "./known-truth.ts";
import { hump, total, yearsOf } from "./numbers.ts";
import { BEE_CHARACTERS, MIMIC_HOVERFLY } from "./outside.ts";
import type { FixtureShape } from "./shape.ts";
import { CASTE_LABELS, type Invented } from "./taxa.ts";

/** The settings that the methods of change speak of, all as they are unless a scheme says otherwise. */
const rulesOf = (periods: number): Scheme =>
  ({
    settings: {
      change: ChangeSettings.parse({}),
      coverage: CoverageSettings.parse({ minimum_visits: 5 }),
      provisional_years: [2024],
      periods: Array.from({ length: periods }),
    },
  }) as unknown as Scheme;

export function atlasFile(
  taxa: readonly Invented[],
  hectads: readonly HectadSummary[],
  shape: FixtureShape,
): AtlasFile {
  const two = shape.periods !== 1;
  const bare = shape.bare ?? false;
  const effort = hump(19, 9, 400);
  const years = yearsOf(40);
  return {
    title: "The Fixture Atlas",
    heading: "Bumblebees of an invented county",
    summary: "Where each one lives, when it flies and how to tell it from the others. From invented records.",
    language: "en-GB",
    languages: [...(shape.languages ?? [])],
    address: "",
    invented: true,
    invented_notice: "Invented records. The species are real; the scheme, places of recording and people are not.",
    group: { one: "bumblebee", many: "bumblebees" },
    accent: { light: "#8c2467", dark: "#f2a3d0" },
    body_plan: bare ? "" : "bee",
    edition: { id: "2025.1", date: "2025-03-01" },
    licence: { id: "CC-BY-4.0", title: "CC BY 4.0", url: "https://creativecommons.org/licenses/by/4.0/" },
    citation: "Fixture Scheme (2025) The Fixture Atlas, edition 2025.1. Invented records.",
    contact: "",
    sending: { email: "records@atlas.example", url: "", text: "Somebody answers." },
    periods: two
      ? [
          { id: "p1", label: "1990–2005", from: 1990, to: 2005 },
          { id: "p2", label: "2006–2024", from: 2006, to: 2024 },
        ]
      : [{ id: "p1", label: "1990–2024", from: 1990, to: 2024 }],
    compared: two ? ["p1", "p2"] : null,
    provisional_years: [2024],
    coverage_minimum_visits: 5,
    status_years: 10,
    season_minimum_visits: 150,
    castes: bare
      ? []
      : ["queen", "worker", "female", "male"].map((id) => ({
          id,
          label: CASTE_LABELS[id] ?? id,
          within: id === "queen" || id === "worker" ? ["female"] : [],
        })),
    territories: [
      {
        id: "britain",
        name: "Great Britain",
        grid: "british",
        grid_name: "British National Grid",
        land_hectads: bare ? 0 : hectads.length,
      },
    ],
    map: { crs: "EPSG:27700", insets: [] },
    basemap:
      bare || shape.basemap === undefined
        ? null
        : {
            files: ["land-overview", "lakes-overview", "borders"],
            credit_html: "<p>Coastline, lakes and border: GSHHG 2.3.7, LGPL 3 or later, simplified.</p>",
          },
    taxa: taxa.map(({ file, latest }) => summaryOf(file, latest)),
    outside: bare ? [] : [MIMIC_HOVERFLY],
    group_characters: bare ? [] : BEE_CHARACTERS,
    first_seen_groups: bare
      ? []
      : [
          { id: "red-tail", title: "Red or orange tail", look_at: "Look at the hairs of the hind leg." },
          { id: "white-tail", title: "White or buff tail", look_at: "Look at the tail’s colour and the face." },
          { id: "ginger", title: "Ginger all over", look_at: "Look for black hairs on the abdomen." },
        ],
    pages: [{ slug: "about", title: "About", in_footer: true }],
    totals: {
      records_read: 1000,
      records_used: 900,
      hectads: hectads.length,
      tetrads: hectads.length * 12,
      visits: total(years.map(({ visits }) => visits)),
      first_year: 1990,
      last_year: 2024,
    },
    effort_season: effort,
    effort_years: years.map(({ year, records, visits }) => ({ year, records: records * 3, visits })),
    thanks: [],
    methods: [
      { section: "placing-records", key: "methods.placing-squares", values: {} },
      { section: "coverage", key: "methods.coverage-rule", values: { least: 5, more: 10, group: "bumblebees" } },
      ...changeStatements(rulesOf(two ? 2 : 1), KNOWN_TRUTH.claims),
      ...(shape.regions === true ? [{ section: "regions", key: "methods.regions-boundary", values: {} }] : []),
      { section: "season", key: "methods.season-interval", values: {} },
      { section: "expected-species", key: "methods.expected-what", values: {} },
      { section: "range", key: "methods.range-occupancy", values: {} },
      { section: "habitats-and-flowers", key: "methods.use-interval", values: {} },
    ],
  };
}

function summaryOf(file: TaxonFile, latest: string[]): AtlasFile["taxa"][number] {
  const {
    taxon_id,
    slug,
    scientific_name,
    vernacular_name,
    short_name,
    vernacular_names,
    is_aggregate,
    lead,
    generalised_to,
    records,
    hectads,
    hectads_latest,
  } = file;
  const { tetrads_latest, first_year, last_year, change, season, first_seen } = file;
  return {
    taxon_id,
    slug,
    scientific_name,
    vernacular_name,
    short_name,
    vernacular_names,
    is_aggregate,
    lead,
    generalised_to,
    records,
    hectads,
    hectads_latest,
    tetrads_latest,
    first_year,
    last_year,
    change: change[0] ?? null,
    season,
    hectad_codes_latest: latest,
    first_seen,
  };
}

export const ACCOUNTING: AccountingFile = {
  read: 1000,
  rows: [
    { source: "cards", status: "used", reason: "as published", records: 900 },
    { source: "cards", status: "held", reason: "evidence does not show the hind leg", records: 60 },
    { source: "cards", status: "not used", reason: "duplicate of another record", records: 40 },
  ],
  sources: [{ source: "cards", title: "Invented cards", kind: "cards", licence: "CC BY 4.0", read: 1000, used: 900 }],
  squares_by_reason: [{ resolution_m: 2_000, reason: "reference to 10 km", records: 340 }],
  tetrads_at_half_overlap: 12,
  findings: [{ check: "unexpected_place_season", severity: "ask", records: 7, title: "Unexpected here and now" }],
};

export const DOWNLOADS: DownloadsFile = {
  edition: "2025.1",
  files: [
    {
      path: "squares.csv",
      table: "squares",
      title: "Squares by species and period",
      format: "CSV",
      rows: 18,
      bytes: 3_100,
      sha256: "0".repeat(64),
      fields: [
        { name: "taxon_id", type: "string", description: "the taxon's id" },
        { name: "square", type: "string", description: "code of the square" },
      ],
    },
    {
      path: "squares.parquet",
      table: "squares",
      title: "The same",
      format: "Parquet",
      rows: 18,
      bytes: 1_900,
      sha256: "0".repeat(64),
      fields: [],
    },
  ],
};
