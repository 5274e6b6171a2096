/** Small sets of judged records, as the measures find them: written by hand or drawn by chance. */
import fc from "fast-check";
import type { Database } from "../../src/engine/database.ts";
import { measure } from "../../src/measures/measure-stage.ts";
import { buildChecklist } from "../../src/names/checklist.ts";
import { ChangeSettings, CoverageSettings, RangeSettings, SeasonSettings } from "../../src/scheme/measure-settings.ts";
import type { Region } from "../../src/scheme/regions-file.ts";
import type { Scheme } from "../../src/scheme/scheme.ts";
import type { SensitiveRow } from "../../src/scheme/sensitive-list.ts";
import { SurroundingsSettings } from "../../src/scheme/surroundings-settings.ts";

/** Where a record is, as placing gives it. */
export interface PlaceRow {
  territory: string;
  grid: string;
  hectad: string | null;
  hectad_reason: string | null;
  tetrad: string | null;
  tetrad_reason: string | null;
  visit_place: string;
}

/** When a record is: whole days, years, and the period and third of a month its whole date lies in. */
export interface TimeRow {
  first_day: number | null;
  last_day: number;
  first_year: number | null;
  last_year: number;
  period: number | null;
  third: number | null;
}

/** One judged record. */
export interface RecordRow extends PlaceRow, TimeRow {
  taxon_id: string;
  present: boolean;
  kind_id: number;
  recorder: string;
  /** Whether its list is declared complete; no unless given. */
  complete?: boolean;
  /** Whether it counts for range and change; yes unless given. */
  established?: boolean;
  /** Habitats it states; none unless given. */
  habitats?: readonly string[];
  /** Flowers it was on; none unless given. */
  flowers?: readonly string[];
  /** Regions it states, by field; none unless given. */
  stated?: Readonly<Record<string, string>>;
  /** Source: walks, pictures, survey, week or museum; walks unless given. */
  source?: string;
  status: "used" | "held" | "not used";
}

/** A checklist as taxon → taxa directly above, and the rules in force. */
export interface Rules {
  within: Record<string, string[]>;
  periods: { id: string; from: number | null; to: number }[];
  compared: [number, number] | null;
  minimumVisits: number;
  /** Years that are still incomplete; none unless given. */
  provisionalYears?: number[];
  /** Regions of the scheme's file; none unless given. */
  regions?: readonly Region[];
  /** Comparable squares asked for before change is judged; 20 unless given. */
  minimumComparable?: number;
}

/** Castes of the kinds of record, by kind. */
export const KINDS: readonly (readonly string[])[] = [["not_stated"], ["queen"], ["queen", "worker"], ["male"]];

const DAY = 86_400_000;

/** One source of each class. */
const SOURCES = [
  { id: "walks", kind: "field", aim: "all species", target: "", mass_event: false },
  { id: "pictures", kind: "photograph", aim: "all species", target: "", mass_event: false },
  { id: "survey", kind: "field", aim: "target species", target: "a", mass_event: false },
  { id: "week", kind: "field", aim: "all species", target: "", mass_event: true },
  { id: "museum", kind: "specimen", aim: "all species", target: "", mass_event: false },
];

/** Day number of a date such as "1995-06-11": days since 1970-01-01, by the language's own calendar. */
export function day(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / DAY;
}

/** Times of a record from first and last day; `first` null for "before". */
export function time(rules: Rules, first: string | null, last: string = first ?? ""): TimeRow {
  const date = (text: string) => new Date(`${text}T00:00:00Z`);
  const [begin, end] = [first === null ? null : date(first), date(last)];
  const years = [begin?.getUTCFullYear() ?? null, end.getUTCFullYear()] as const;
  const period = rules.periods.findIndex(
    ({ from, to }) => years[1] <= to && (from === null || (years[0] !== null && years[0] >= from)),
  );
  const third = (one: Date) => one.getUTCMonth() * 3 + Math.min(2, Math.floor((one.getUTCDate() - 1) / 10));
  const inOneThird =
    begin !== null && years[0] === years[1] && third(begin) === third(end) && begin.getUTCMonth() === end.getUTCMonth();
  return {
    first_day: first === null ? null : day(first),
    last_day: day(last),
    first_year: years[0],
    last_year: years[1],
    period: period < 0 ? null : period,
    third: inOneThird ? third(end) : null,
  };
}

/** Places by kind: good to 1 km, to the tetrad only by record, to the hectad, to 100 km, in two grids and two territories. */
export const PLACES: readonly PlaceRow[] = [
  square("britain", "british", "SK12", "SK12A", "SK1020"),
  square("britain", "british", "SK12", "SK12A", "SK1121"),
  square("britain", "british", "SK12", "SK12Z", "SK1828"),
  square("britain", "british", "SK12", null, "SK1020"),
  square("britain", "british", "SK12", null, "SK12"),
  square("man", "british", "SK12", "SK12A", "SK1120"),
  square("britain", "british", "NA00", "NA00J", "NA0202"),
  square("ireland", "irish", "O12", "O12A", "O1020"),
  square("ireland", "irish", null, null, "O"),
];

function square(
  territory: string,
  grid: string,
  hectad: string | null,
  tetrad: string | null,
  visit: string,
): PlaceRow {
  return {
    territory,
    grid,
    hectad,
    hectad_reason: hectad === null ? "named a square of 100 km" : null,
    tetrad,
    tetrad_reason: tetrad === null ? (hectad === null ? "named a square of 100 km" : "too imprecise") : null,
    visit_place: visit,
  };
}

/** The state of every visited square for every taxon: its own where it has one, else what holds for all taxa. */
const ALL_STATES = `CREATE OR REPLACE VIEW all_states AS
  SELECT t.taxon_id, v.territory, v.grid, v.resolution_m, v.square,
    coalesce(s.recorded_ever, false) AS recorded_ever,
    coalesce(s.recorded_from, false) AS recorded_from,
    coalesce(s.recorded_to, false) AS recorded_to,
    coalesce(s.covered_from, v.covered_from) AS covered_from,
    coalesce(s.covered_to, v.covered_to) AS covered_to,
    s.state
  FROM visited_squares AS v CROSS JOIN taxon_ids AS t
  LEFT JOIN square_states AS s ON s.taxon_id = t.taxon_id AND s.grid = v.grid AND s.resolution_m = v.resolution_m AND s.square = v.square`;

/** Fills the tables the record stage leaves, and measures them; `all_states` lays out what `square_states` leaves unsaid. */
export async function measureRows(
  database: Database,
  records: readonly RecordRow[],
  rules: Rules,
  sensitive: readonly Partial<SensitiveRow>[] = [],
): Promise<void> {
  const text = "text" as const;
  const integer = "integer" as const;
  const columns = {
    record_no: integer,
    taxon_id: text,
    present: "boolean",
    kind_id: integer,
    recorder: text,
    status: text,
    reason: text,
    source: text,
    territory: text,
    grid: text,
    hectad: text,
    hectad_reason: text,
    tetrad: text,
    tetrad_reason: text,
    tetrad_at_half: text,
    visit_place: text,
    in_disguise: "boolean",
    near_line: "boolean",
    first_day: integer,
    last_day: integer,
    first_year: integer,
    last_year: integer,
    period: integer,
    third: integer,
    complete: "boolean",
    established: "boolean",
  } as const;
  const filler = await database.fill("records", columns);
  const rows = records.map((record, index) => ({
    ...record,
    record_no: index + 2,
    reason: record.status === "used" ? "used" : "name_unknown",
    source: record.source ?? "walks",
    complete: record.complete ?? false,
    established: record.established ?? true,
    tetrad_at_half: record.tetrad,
    in_disguise: false,
    near_line: false,
  }));
  const names = Object.keys(columns) as (keyof typeof columns)[];
  filler.add(Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name])])));
  filler.done();
  const castes = KINDS.flatMap((own, kind) => own.map((caste) => [kind, caste] as const));
  const kinds = await database.fill("kind_castes", { kind_id: integer, caste: text, individuals: integer });
  kinds.add({
    kind_id: castes.map(([kind]) => kind),
    caste: castes.map(([, caste]) => caste),
    individuals: castes.map(() => null),
  });
  kinds.done();
  const surroundings = records.flatMap(({ habitats = [], flowers = [] }, index) => [
    ...habitats.map((term) => [index + 2, "habitat", term] as const),
    ...flowers.map((term) => [index + 2, "flower", term] as const),
  ]);
  const stated = await database.fill("record_surroundings", { record_no: integer, kind: text, term: text });
  stated.add({
    record_no: surroundings.map(([record]) => record),
    kind: surroundings.map(([, kind]) => kind),
    term: surroundings.map(([, , term]) => term),
  });
  stated.done();
  const told = records.flatMap(({ stated: own = {} }, index) =>
    Object.entries(own).map(([field, region]) => [index + 2, field, region] as const),
  );
  const regions = await database.fill("record_regions", { record_no: integer, field: text, region_id: text });
  regions.add({
    record_no: told.map(([record]) => record),
    field: told.map(([, field]) => field),
    region_id: told.map(([, , region]) => region),
  });
  regions.done();
  await measure(database, schemeOf(rules, sensitive), new Map());
  await database.run(ALL_STATES);
}

/** What the measures read of a scheme: checklist, periods, rule, territories. */
function schemeOf(
  { within, periods, compared, minimumVisits, provisionalYears, minimumComparable, regions = [] }: Rules,
  sensitive: readonly Partial<SensitiveRow>[],
): Scheme {
  const taxa = Object.entries(within).map(([taxonID, above]) => ({ taxonID, within: above }));
  const settings = {
    periods,
    ...(compared === null ? {} : { compared: compared.map((index) => periods[index]?.id) }),
    coverage: CoverageSettings.parse({ minimum_visits: minimumVisits, minimum_visits_for_richness: 2 }),
    season: SeasonSettings.parse({}),
    change: ChangeSettings.parse({ minimum_comparable_squares: minimumComparable }),
    range: RangeSettings.parse({}),
    surroundings: SurroundingsSettings.parse({
      kinds: (["habitat", "flowerVisited"] as const).map((field) => ({
        ...{ id: field === "habitat" ? "habitat" : "flower", label: field, field },
        terms: [{ id: "heath", label: "Heath", words: ["heath"] }],
      })),
    }),
    provisional_years: provisionalYears ?? [],
    sources: SOURCES,
    castes: ["queen", "worker", "male"].map((id) => ({ id, label: id, words: [id] })),
  };
  const checklist = buildChecklist(
    taxa.map(({ taxonID, within: above }) => ({
      taxonId: taxonID,
      scientificName: `Genus ${taxonID}`,
      authorship: "",
      rank: "",
      synonyms: [],
      vernacular: {},
      within: above,
      castes: [],
    })),
  );
  const territories = [
    ["britain", "british"],
    ["man", "british"],
    ["ireland", "irish"],
  ].map(([id, grid]) => ({ id, name: id, grid, datum: "ED50", polygon: null, gridShift: null }));
  return { settings, taxa, checklist, territories, landSquares: null, sensitive, regions } as unknown as Scheme;
}

/** Checklists with an aggregate of two, aggregates that overlap, and one above another. */
const GRAPHS: readonly Rules["within"][] = [
  { a: ["ab"], b: ["ab"], ab: [], c: [] },
  { a: ["ab", "abc"], b: ["ab"], c: ["abc"], ab: ["all"], abc: ["all"], all: [], d: [] },
  { a: [], b: [] },
];

const PERIODS: Rules["periods"] = [
  { id: "early", from: null, to: 1989 },
  { id: "earlier", from: 1990, to: 2005 },
  { id: "recent", from: 2006, to: 2020 },
];

/** Rules by chance: a checklist, one to three periods, which two are compared, visits asked for, provisional years. */
export const anyRules: fc.Arbitrary<Rules> = fc
  .record({
    within: fc.constantFrom(...GRAPHS),
    periods: fc.constantFrom(PERIODS, PERIODS.slice(1), PERIODS.slice(2)),
    minimumVisits: fc.integer({ min: 1, max: 3 }),
    provisionalYears: fc.constantFrom<number[]>([], [2013], [1995, 2013], [2005, 2006]),
    minimumComparable: fc.integer({ min: 1, max: 2 }),
    pick: fc.nat(2),
  })
  .map(({ within, periods, pick, ...others }) => {
    const pairs: [number, number][] =
      periods.length === 3
        ? [
            [0, 2],
            [1, 2],
            [0, 1],
          ]
        : [[0, 1]];
    return {
      within,
      periods,
      ...others,
      compared: periods.length === 1 ? null : (pairs[pick % pairs.length] ?? null),
    };
  });

const anyDay = fc.constantFrom(
  "1985-07-10",
  "1995-06-11",
  "1995-06-20",
  "2005-12-31",
  "2006-01-01",
  "2013-05-31",
  "2021-08-11",
);
const anyDates = fc.oneof(
  { weight: 8, arbitrary: anyDay.map((one) => [one, one] as const) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      ["1995-06-11", "1995-06-20"] as const,
      ["1995-06-20", "1995-06-21"] as const,
      ["2005-01-01", "2006-12-31"] as const,
      ["1990-01-01", "2005-12-31"] as const,
    ),
  },
  { weight: 1, arbitrary: fc.constantFrom([null, "1949-12-31"] as const, [null, "1995-12-31"] as const) },
);

/** Records by chance under some rules: few places, days and recorders, so that they meet. */
export function anyRecords(rules: Rules, maxLength = 150): fc.Arbitrary<RecordRow[]> {
  return fc.array(
    fc
      .record({
        taxon_id: fc.constantFrom(...Object.keys(rules.within)),
        place: fc.constantFrom(...PLACES),
        dates: anyDates,
        present: fc.constantFrom(true, true, true, true, false),
        kind_id: fc.nat(KINDS.length - 1),
        recorder: fc.constantFrom("", "ann"),
        complete: fc.constantFrom(false, false, true),
        established: fc.constantFrom(true, true, true, true, true, false),
        source: fc.constantFrom("walks", "walks", ...SOURCES.map(({ id }) => id)),
        status: fc.constantFrom(
          "used" as const,
          "used" as const,
          "used" as const,
          "used" as const,
          "held" as const,
          "not used" as const,
        ),
      })
      .map(({ place, dates: [first, last], ...record }) => ({ ...place, ...time(rules, first, last), ...record })),
    { maxLength, size: "max" },
  );
}
