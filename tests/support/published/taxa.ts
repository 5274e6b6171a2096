import type { Character, HectadSummary, TaxonFile } from "../../../src/publishing/contracts.ts";
import type { FixtureTaxon } from "./fixture-taxa.ts";
import { hump, stream, total, yearsOf } from "./numbers.ts";
import type { FixtureShape } from "./shape.ts";
import { changeOf, onlyLater, squaresOf } from "./squares.ts";

const PARTS = ["face", "collar", "mid-thorax", "rear-thorax", "t1", "t2", "t3", "t4", "t5", "t6", "hind-leg", "wings"];
export const CASTE_LABELS: Record<string, string> = {
  queen: "Queen",
  worker: "Worker",
  male: "Male",
  female: "Female",
  not_stated: "Not stated",
};
const PEAKS: Record<string, number> = { queen: 11, worker: 19, male: 22, female: 13, not_stated: 17 };

function charactersOf(taxon: FixtureTaxon): Character[] {
  const rows = (pattern: string, castes: string[]): Character[] =>
    pattern.split(" ").flatMap((text, index) =>
      text.split(":").map((state) => ({
        castes,
        form: "",
        part: PARTS[index] ?? "",
        state,
        note: "",
        reliability: PARTS[index] === "hind-leg" ? "settles" : "supports",
        evidence: "photograph",
      })),
    );
  if (taxon.female === "") return [];
  return [
    ...rows(
      taxon.female,
      taxon.castes.filter((caste) => caste !== "male"),
    ),
    ...rows(taxon.male, ["male"]),
    {
      castes: [],
      form: "",
      part: "coat",
      state: "short and even",
      note: "",
      reliability: "supports",
      evidence: "sight",
    },
  ];
}

function seasonOf(castes: readonly string[], size: number): TaxonFile["season_by_caste"] {
  return [...castes, "not_stated"].map((caste) => {
    const records = hump(PEAKS[caste] ?? 17, caste === "queen" ? 3 : 4, size);
    return {
      caste,
      label: CASTE_LABELS[caste] ?? caste,
      records,
      visits: records,
      total: total(records),
      left_out: Math.floor(size / 4),
    };
  });
}

/** One taxon has a French name; the others are shown by their English ones. */
function frenchNames({ slug }: FixtureTaxon): { name: string; language: string }[] {
  return slug === "red-tailed" ? [{ name: "bourdon des pierres", language: "fr" }] : [];
}

/** The sixth taxon came in the later period. */
const NEWCOMER = 5;

export interface Invented {
  readonly file: TaxonFile;
  readonly latest: string[];
}

export function inventTaxon(
  taxon: FixtureTaxon,
  hectads: readonly HectadSummary[],
  shape: FixtureShape,
  index: number,
): Invented {
  const random = stream(100 + index);
  const place = index % 6;
  const two = shape.periods !== 1;
  const bare = shape.bare ?? false;
  const recorded = squaresOf(hectads, 0.9 - place * 0.12, random, two);
  const squares = two && index === NEWCOMER ? onlyLater(recorded) : recorded;
  const size = 30 - place * 4;
  const castes = bare ? [] : [...taxon.castes];
  const season_by_caste = seasonOf(castes, size);
  const season = Array.from({ length: 36 }, (_, third) =>
    total(season_by_caste.map(({ records }) => records[third] ?? 0)),
  );
  const latest = squares.filter(({ records }) => (records.at(-1) ?? 0) > 0).map(({ square }) => square);
  const change = two
    ? [
        changeOf(squares, hectads, "all", 10_000),
        changeOf(squares, hectads, "britain", 10_000),
        changeOf([], hectads, "all", 2_000),
      ]
    : [];
  const uncovered = { neither: [] as string[], later_only: [] as string[], earlier_only: [] as string[] };
  const codes = new Set(squares.map(({ square }) => square));
  for (const { square, visits } of hectads) {
    if (codes.has(square)) continue;
    const [before, since] = two
      ? [(visits[0] ?? 0) >= 5, (visits[1] ?? 0) >= 5]
      : [(visits[0] ?? 0) >= 5, (visits[0] ?? 0) >= 5];
    if (!before && !since) uncovered.neither.push(square);
    else if (!before) uncovered.later_only.push(square);
    else if (!since) uncovered.earlier_only.push(square);
  }
  const file: TaxonFile = {
    taxon_id: `invented-${taxon.slug}`,
    slug: taxon.slug,
    scientific_name: taxon.scientific,
    vernacular_name: bare ? taxon.scientific : taxon.vernacular,
    short_name: bare ? taxon.scientific : taxon.short,
    vernacular_names: bare ? [] : [{ name: taxon.vernacular, language: "en" }, ...frenchNames(taxon)],
    is_aggregate: taxon.aggregate,
    lead: bare
      ? ""
      : `An invented account of the ${taxon.short.toLowerCase()}, long enough to show how two lines look.`,
    generalised_to: "none",
    shown_coarser: [],
    records: total(squares.map(({ records }) => total(records))),
    hectads: squares.length,
    hectads_latest: latest.length,
    tetrads_latest: latest.length * 3,
    first_year: squares.length === 0 ? null : 1990,
    last_year: squares.length === 0 ? null : 2024,
    season,
    first_seen: bare ? null : taxon.seen,
    authorship: taxon.aggregate ? "" : "(Linnaeus, 1758)",
    rank: taxon.aggregate ? "aggregate" : "species",
    subgenus: bare || taxon.aggregate ? "" : "Melanobombus",
    other_names: bare ? [] : frenchNames(taxon),
    synonyms: [],
    members: taxon.aggregate ? ["buff-tailed"] : [],
    within: taxon.slug === "buff-tailed" ? ["terrestris-group"] : [],
    castes,
    sizes: castes.map((caste) => ({
      caste,
      label: CASTE_LABELS[caste] ?? caste,
      millimetres: caste === "queen" ? [20, 22] : [11, 16],
      note: caste === "male" ? "Longer antennae." : "",
    })),
    statuses:
      bare || taxon.slug !== "red-tailed"
        ? []
        : [
            {
              list: "Invented red list of the fixture",
              category: "Of no concern",
              year: 2009,
              jurisdiction: "the invented county",
              citation: "Fixture Scheme (2009) An invented red list.",
              url: "",
              old: true,
            },
          ],
    evidence_needed: bare ? "" : "sight for queens and workers, a photograph for males",
    account: bare
      ? []
      : [
          {
            id: "know",
            title: "How to know it",
            html: "<p>Queens and workers have a short even coat, as <i>Bombus</i> of this invented atlas have.</p><p>Males have a yellow face.</p>",
          },
          { id: "habitat", title: "Habitat", html: "<p>Flower-rich grassland and gardens.</p>" },
          { id: "biology", title: "Life", html: "<p>Nests under stones.</p>" },
        ],
    look_alikes: bare
      ? []
      : [
          ...(taxon.slug === "red-tailed" && (shape.taxa ?? 3) > 4
            ? [
                {
                  slug: "red-tailed-cuckoo",
                  outside: null,
                  name: "Red-tailed cuckoo",
                  difference: "smoky wings, no pollen basket",
                },
              ]
            : []),
          ...(taxon.slug === "red-tailed"
            ? [{ slug: null, outside: "mimic-hoverfly", name: "Mimic hoverfly", difference: "two wings, big eyes" }]
            : []),
          { slug: null, outside: null, name: "Other bees", difference: "slimmer, with a narrow waist" },
        ],
    characters: bare ? [] : charactersOf(taxon),
    media: [],
    squares: { "10000": squares, "2000": [] },
    uncovered,
    change,
    season_by_caste,
    years: yearsOf(size),
    not_on_map: [
      { resolution_m: 10_000, reason: "place good to 100 km only", records: 2 },
      { resolution_m: 2_000, reason: "reference to 10 km", records: 340 },
    ],
    downloads: [
      {
        path: `data/2025.1/taxa/${taxon.slug}-squares.csv`,
        title: "Squares by period",
        rows: squares.length,
        bytes: 41_000,
      },
    ],
  };
  return { file, latest };
}
