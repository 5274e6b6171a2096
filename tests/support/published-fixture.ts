/**
 * Invented published tables that keep every contract of `src/publishing/contracts.ts`, for tests of the site.
 * Nothing in them is an expected value of a measure: the numbers only have to agree with each other.
 */
import { cpSync, mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { z } from "zod";
import {
  AccountingFile,
  AtlasFile,
  type Character,
  type ChangeRow,
  DownloadsFile,
  type HectadSummary,
  PageFile,
  SquareFile,
  SquaresFile,
  TaxonFile,
  type TaxonSquare,
} from "../../src/publishing/contracts.ts";
import { FIXTURE_TAXA, type FixtureTaxon } from "./fixture-taxa.ts";

/** What kind of atlas to invent. */
export interface FixtureShape {
  /** Number of taxa, at most 6. */
  readonly taxa?: number;
  /** Other taxa than the six of this folder. */
  readonly list?: readonly FixtureTaxon[];
  /** British hectad codes; six squares round one corner by default. */
  readonly hectads?: readonly string[];
  /** One or two periods. */
  readonly periods?: 1 | 2;
  /** Without accounts, characters, castes, body plan and base map, as a scheme that has only records. */
  readonly bare?: boolean;
  /** Folder of base map files to copy. */
  readonly basemap?: string;
}

const PARTS = ["face", "collar", "mid-thorax", "rear-thorax", "t1", "t2", "t3", "t4", "t5", "t6", "hind-leg", "wings"];
const SIX = ["NZ16", "NZ17", "NZ26", "NZ27", "NZ36", "NZ37"];
const CASTE_LABELS: Record<string, string> = { queen: "Queen", worker: "Worker", male: "Male", female: "Female", not_stated: "Not stated" };
const PEAKS: Record<string, number> = { queen: 11, worker: 19, male: 22, female: 13, not_stated: 17 };

/** A repeatable stream of numbers from 0 to below 1 (mulberry32). */
function stream(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);

function hump(peak: number, width: number, height: number): number[] {
  return Array.from({ length: 36 }, (_, third) => Math.round(height * Math.exp(-(((third - peak) / width) ** 2))));
}

function hectad(code: string, random: () => number, two: boolean): HectadSummary {
  const [first, second] = [...code.slice(0, 2)].map((letter) => {
    const index = letter.charCodeAt(0) - 65;
    return index > 7 ? index - 1 : index;
  }) as [number, number];
  const easting = (((first - 2) % 5) * 5 + (second % 5)) * 100_000 + Number(code[2]) * 10_000;
  const northing = (19 - Math.floor(first / 5) * 5 - Math.floor(second / 5)) * 100_000 + Number(code[3]) * 10_000;
  const visits = Array.from({ length: two ? 2 : 1 }, (_, period) => Math.floor(random() ** 2 * (period === 0 ? 12 : 40)));
  const taxa = visits.map((number) => Math.min(6, Math.ceil(number / 3)));
  return {
    square: code, slug: code.toLowerCase(), grid: "british", territory: "britain", crs: "EPSG:27700", easting, northing,
    latitude: Number((49.77 + northing / 111_300).toFixed(4)), longitude: Number((-2 + (easting - 400_000) / 64_000).toFixed(4)),
    on_land: true, visits, taxa, taxa_all: Math.max(...taxa), records: total(visits) * 2,
  };
}

function stateOf(records: readonly number[], covered: readonly boolean[], two: boolean): TaxonSquare["state"] {
  if (!two) return "recorded";
  const [before = 0, since = 0] = records;
  if (before > 0 && since > 0) return "retained";
  if (covered.every(Boolean)) return since > 0 ? "gained" : "lost";
  return since > 0 ? "not_comparable_since" : "not_comparable_before";
}

function squaresOf(hectads: readonly HectadSummary[], frequency: number, random: () => number, two: boolean): TaxonSquare[] {
  return hectads.flatMap((square) => {
    const visits = square.visits.map((number) => Math.round(number * frequency * random() * 1.6));
    if (total(visits) === 0) return [];
    const covered = square.visits.map((number) => number >= 5);
    const records = visits.map((number) => number + Math.floor(random() * number));
    const first = (records[0] ?? 0) > 0 ? 1990 + Math.floor(random() * 16) : 2006 + Math.floor(random() * 10);
    const last = (records[1] ?? records[0] ?? 0) > 0 ? 2016 + Math.floor(random() * 9) : Math.min(2005, first + 4);
    return [{ square: square.square, state: stateOf(records, covered, two), covered, records, visits, first_year: first, last_year: Math.max(first, last) }];
  });
}

function changeOf(squares: readonly TaxonSquare[], hectads: readonly HectadSummary[], territory: string, resolution: 10_000 | 2_000): ChangeRow {
  const of = (state: TaxonSquare["state"], both?: boolean) =>
    squares.filter((square) => square.state === state && (both === undefined || square.covered.every(Boolean) === both)).length;
  const [retained, gained, lost] = [of("retained", true), of("gained"), of("lost")];
  const comparable = retained + gained + lost;
  const recorded = new Set(squares.map(({ square }) => square));
  const blank = hectads.filter(({ square }) => !recorded.has(square)).map(({ visits }) => visits.filter((number) => number >= 5).length);
  const judged = resolution === 10_000 && comparable >= 20;
  const net = gained - lost;
  const half = Math.round(1.96 * Math.sqrt(gained + lost));
  return {
    resolution_m: resolution, territory, from_period: "p1", to_period: "p2", comparable, retained, gained, lost, net,
    net_percent: judged ? Math.round((net / (retained + lost)) * 1000) / 10 : null,
    interval_low: judged ? net - half : null, interval_high: judged ? net + half : null,
    recorded_both_not_covered: of("retained", false), not_comparable_since: of("not_comparable_since"),
    not_comparable_before: of("not_comparable_before"), covered_both_no_record: blank.filter((number) => number === 2).length,
    covered_one_no_record: blank.filter((number) => number === 1).length, covered_neither: blank.filter((number) => number === 0).length,
    judged,
    reason: judged ? "" : resolution === 10_000 ? `${comparable} comparable squares; 20 are needed` : "too few records of the earlier period are precise to 2 km",
  };
}

function charactersOf(taxon: FixtureTaxon): Character[] {
  const rows = (pattern: string, castes: string[]): Character[] =>
    pattern.split(" ").flatMap((text, index) =>
      text.split(":").map((state) => ({
        castes, form: "", part: PARTS[index] ?? "", state, note: "", reliability: PARTS[index] === "hind-leg" ? "settles" : "supports", evidence: "photograph",
      })),
    );
  if (taxon.female === "") return [];
  return [
    ...rows(taxon.female, taxon.castes.filter((caste) => caste !== "male")),
    ...rows(taxon.male, ["male"]),
    { castes: [], form: "", part: "coat", state: "short and even", note: "", reliability: "supports", evidence: "sight" },
  ];
}

function seasonOf(castes: readonly string[], size: number): TaxonFile["season_by_caste"] {
  return [...castes, "not_stated"].map((caste) => {
    const records = hump(PEAKS[caste] ?? 17, caste === "queen" ? 3 : 4, size);
    return { caste, label: CASTE_LABELS[caste] ?? caste, records, visits: records, total: total(records), left_out: Math.floor(size / 4) };
  });
}

function yearsOf(size: number): TaxonFile["years"] {
  return Array.from({ length: 35 }, (_, index) => ({ year: 1990 + index, records: Math.round(size * (1 + index / 6)), visits: Math.round(size * (2 + index / 3)) }));
}

interface Invented {
  readonly file: TaxonFile;
  readonly latest: string[];
}

function inventTaxon(taxon: FixtureTaxon, hectads: readonly HectadSummary[], shape: FixtureShape, index: number): Invented {
  const random = stream(100 + index);
  const place = index % 6;
  const two = shape.periods !== 1;
  const bare = shape.bare ?? false;
  const squares = squaresOf(hectads, 0.9 - place * 0.12, random, two);
  const size = 30 - place * 4;
  const castes = bare ? [] : [...taxon.castes];
  const season_by_caste = seasonOf(castes, size);
  const season = Array.from({ length: 36 }, (_, third) => total(season_by_caste.map(({ records }) => records[third] ?? 0)));
  const latest = squares.filter(({ records }) => (records.at(-1) ?? 0) > 0).map(({ square }) => square);
  const change = two ? [changeOf(squares, hectads, "all", 10_000), changeOf(squares, hectads, "britain", 10_000), changeOf([], hectads, "all", 2_000)] : [];
  const uncovered = { neither: [] as string[], later_only: [] as string[], earlier_only: [] as string[] };
  const recorded = new Set(squares.map(({ square }) => square));
  for (const { square, visits } of hectads) {
    if (recorded.has(square)) continue;
    const [before, since] = two ? [(visits[0] ?? 0) >= 5, (visits[1] ?? 0) >= 5] : [(visits[0] ?? 0) >= 5, (visits[0] ?? 0) >= 5];
    if (!before && !since) uncovered.neither.push(square);
    else if (!before) uncovered.later_only.push(square);
    else if (!since) uncovered.earlier_only.push(square);
  }
  const file: TaxonFile = {
    taxon_id: `invented-${taxon.slug}`, slug: taxon.slug, scientific_name: taxon.scientific,
    vernacular_name: bare ? taxon.scientific : taxon.vernacular, short_name: bare ? taxon.scientific : taxon.short, is_aggregate: taxon.aggregate,
    lead: bare ? "" : `An invented account of the ${taxon.short.toLowerCase()}, long enough to show how two lines look.`,
    records: total(squares.map(({ records }) => total(records))), hectads: squares.length, hectads_latest: latest.length, tetrads_latest: latest.length * 3,
    first_year: squares.length === 0 ? null : 1990, last_year: squares.length === 0 ? null : 2024, season,
    first_seen: bare ? null : taxon.seen, authorship: taxon.aggregate ? "" : "(Linnaeus, 1758)", rank: taxon.aggregate ? "aggregate" : "species",
    subgenus: bare || taxon.aggregate ? "" : "Melanobombus", other_names: bare || taxon.aggregate ? [] : [{ name: "bourdon des pierres", language: "fr" }],
    synonyms: [], members: taxon.aggregate ? ["buff-tailed"] : [], within: taxon.slug === "buff-tailed" ? ["terrestris-group"] : [], castes,
    sizes: castes.map((caste) => ({ caste, label: CASTE_LABELS[caste] ?? caste, millimetres: caste === "queen" ? [20, 22] : [11, 16], note: caste === "male" ? "Longer antennae." : "" })),
    evidence_needed: bare ? "" : "sight for queens and workers, a photograph for males",
    account: bare ? [] : [
      { id: "know", title: "How to know it", html: "<p>Queens and workers have a short even coat, as <i>Bombus</i> of this invented atlas have.</p><p>Males have a yellow face.</p>" },
      { id: "habitat", title: "Habitat", html: "<p>Flower-rich grassland and gardens.</p>" },
      { id: "biology", title: "Life", html: "<p>Nests under stones.</p>" },
    ],
    look_alikes: bare ? [] : [
      ...(taxon.slug === "red-tailed" && (shape.taxa ?? 3) > 4 ? [{ slug: "red-tailed-cuckoo", name: "Red-tailed cuckoo", difference: "smoky wings, no pollen basket" }] : []),
      { slug: null, name: "Bumblebee-mimic hoverflies", difference: "two wings, big eyes, short antennae" },
    ],
    characters: bare ? [] : charactersOf(taxon),
    squares: { "10000": squares, "2000": [] }, uncovered, change, season_by_caste, years: yearsOf(size),
    not_on_map: [{ resolution_m: 10_000, reason: "place good to 100 km only", records: 2 }, { resolution_m: 2_000, reason: "reference to 10 km", records: 340 }],
    downloads: [{ path: `taxa/${taxon.slug}-squares.csv`, title: "Squares by period", rows: squares.length, bytes: 41_000 }],
  };
  return { file, latest };
}

function squareFile(square: HectadSummary, taxa: readonly TaxonFile[]): SquareFile {
  return {
    ...square,
    taxa_list: taxa.flatMap(({ slug, squares }) => {
      const found = squares["10000"].find(({ square: code }) => code === square.square);
      return found === undefined ? [] : [{ slug, state: found.state, records: total(found.records), first_year: found.first_year, last_year: found.last_year }];
    }),
    tetrads: [..."ABCDEFGHIJKLMNPQRSTUVWXYZ"].slice(0, 12).map((letter, index) => ({
      square: `${square.square}${letter}`, letter, visits: index + 1, taxa: (index % 6) + 1, records: 2 * index + 2,
    })),
    years: [{ year: 2010, records: 4, visits: 3 }, { year: 2020, records: 6, visits: 4 }],
  };
}

function atlasFile(taxa: readonly Invented[], hectads: readonly HectadSummary[], shape: FixtureShape): AtlasFile {
  const two = shape.periods !== 1;
  const bare = shape.bare ?? false;
  const effort = hump(19, 9, 400);
  const years = yearsOf(40);
  return {
    title: "The Fixture Atlas", heading: "Bumblebees of an invented county", summary: "Where each one lives, when it flies and how to tell it from the others. From invented records.",
    language: "en-GB", invented: true, invented_notice: "Invented records. The species are real; the scheme, places of recording and people are not.",
    group: { one: "bumblebee", many: "bumblebees" }, accent: { light: "#8c2467", dark: "#f2a3d0" }, body_plan: bare ? "" : "bee",
    edition: { id: "2025.1", date: "2025-03-01" }, licence: { id: "CC-BY-4.0", title: "CC BY 4.0", url: "https://creativecommons.org/licenses/by/4.0/" },
    citation: "Fixture Scheme (2025) The Fixture Atlas, edition 2025.1. Invented records.", contact: "",
    periods: two ? [{ id: "p1", label: "1990–2005", from: 1990, to: 2005 }, { id: "p2", label: "2006–2024", from: 2006, to: 2024 }] : [{ id: "p1", label: "1990–2024", from: 1990, to: 2024 }],
    compared: two ? ["p1", "p2"] : null, provisional_years: [2024], coverage_minimum_visits: 5, season_minimum_visits: 150,
    castes: bare ? [] : ["queen", "worker", "female", "male"].map((id) => ({ id, label: CASTE_LABELS[id] ?? id })),
    territories: [{ id: "britain", name: "Great Britain", grid: "british", grid_name: "British National Grid", land_hectads: hectads.length }],
    map: { crs: "EPSG:27700", insets: [] },
    basemap: bare || shape.basemap === undefined ? null : { files: ["land-overview", "lakes-overview", "borders"], credit_html: "<p>Coastline, lakes and border: GSHHG 2.3.7, LGPL 3 or later, simplified.</p>" },
    taxa: taxa.map(({ file, latest }) => summaryOf(file, latest)),
    first_seen_groups: bare ? [] : [
      { id: "red-tail", title: "Red or orange tail", look_at: "Look at the hairs of the hind leg." },
      { id: "white-tail", title: "White or buff tail", look_at: "Look at the tail’s colour and the face." },
      { id: "ginger", title: "Ginger all over", look_at: "Look for black hairs on the abdomen." },
    ],
    pages: [{ slug: "about", title: "About", in_footer: true }],
    totals: { records_read: 1000, records_used: 900, hectads: hectads.length, tetrads: hectads.length * 12, visits: total(years.map(({ visits }) => visits)), first_year: 1990, last_year: 2024 },
    effort_season: effort, effort_years: years.map(({ year, records, visits }) => ({ year, records: records * 3, visits })),
    methods: [
      { section: "Place", html: "<p>A reference to a 10 km square supports that square and no tetrad.</p>" },
      { section: "Coverage", html: "<p>A square is covered for a species in a period when other species were recorded there on at least <b>5</b> visits.</p>" },
    ],
  };
}

function summaryOf(file: TaxonFile, latest: string[]): AtlasFile["taxa"][number] {
  const { taxon_id, slug, scientific_name, vernacular_name, short_name, is_aggregate, lead, records, hectads, hectads_latest } = file;
  const { tetrads_latest, first_year, last_year, change, season, first_seen } = file;
  return {
    taxon_id, slug, scientific_name, vernacular_name, short_name, is_aggregate, lead, records, hectads, hectads_latest,
    tetrads_latest, first_year, last_year, change: change[0] ?? null, season, hectad_codes_latest: latest, first_seen,
  };
}

const ACCOUNTING: AccountingFile = {
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

const DOWNLOADS: DownloadsFile = {
  edition: "2025.1",
  files: [
    { path: "squares.csv", table: "squares", title: "Squares by species and period", format: "CSV", rows: 18, bytes: 3_100, sha256: "0".repeat(64), fields: [{ name: "taxon_id", type: "string", description: "the taxon's id" }, { name: "square", type: "string", description: "code of the square" }] },
    { path: "squares.parquet", table: "squares", title: "The same", format: "Parquet", rows: 18, bytes: 1_900, sha256: "0".repeat(64), fields: [] },
  ],
};

/**
 * Writes invented published tables to a folder.
 *
 * @param folder made if missing
 * @param shape how large and how plain; three taxa, six squares, two periods by default
 * @returns the folder
 * @example writePublishedFixture("/tmp/p") // "/tmp/p", with atlas.json, taxa/red-tailed.json, …
 */
export function writePublishedFixture(folder: string, shape: FixtureShape = {}): string {
  const random = stream(7);
  const two = shape.periods !== 1;
  const write = <T>(name: string, contract: z.ZodType<T>, value: T): void => {
    mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    writeFileSync(path.join(folder, name), JSON.stringify(contract.parse(value)));
  };
  const hectads = (shape.hectads ?? SIX).map((code) => hectad(code, random, two));
  const taxa = (shape.list ?? FIXTURE_TAXA.slice(0, shape.taxa ?? 3)).map((taxon, index) => inventTaxon(taxon, hectads, shape, index));
  write("atlas.json", AtlasFile, atlasFile(taxa, hectads, shape));
  for (const { file } of taxa) write(`taxa/${file.slug}.json`, TaxonFile, file);
  write("squares.json", SquaresFile, { squares: hectads });
  for (const square of hectads) write(`squares/${square.slug}.json`, SquareFile, squareFile(square, taxa.map(({ file }) => file)));
  write("accounting.json", AccountingFile, ACCOUNTING);
  write("downloads.json", DownloadsFile, DOWNLOADS);
  write("pages/about.json", PageFile, { slug: "about", title: "About", lead: "A page of the scheme.", html: "<p>See <a href=\"/methods/\">the methods</a>.</p>", in_footer: true });
  for (const file of DOWNLOADS.files) {
    mkdirSync(path.join(folder, "data", DOWNLOADS.edition), { recursive: true });
    writeFileSync(path.join(folder, "data", DOWNLOADS.edition, file.path), "invented\n");
  }
  if (shape.basemap !== undefined && !(shape.bare ?? false)) cpSync(shape.basemap, path.join(folder, "basemap"), { recursive: true });
  return folder;
}
