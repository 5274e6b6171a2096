import type {
  FiguresFile,
  RangeRow,
  RegionRow,
  SeriesRow,
  TaxonFile,
  TrendMethod,
  TrendRow,
  UseRow,
} from "../../../src/publishing/contracts.ts";
import { seasonDatesOf, seasonShiftsOf } from "./season-figures.ts";

const SETS = [
  "main",
  "complete_lists",
  "with_provisional_years",
  "without_lots",
  "without_mass_events",
  "without_single_species_lists",
  "without_targeted",
];

/** What each line says: estimate and half of its interval, or why it is silent. */
type Lines = Readonly<Record<TrendMethod, readonly [estimate: number, half: number] | string>>;

const FEW_TAXA = "the group has 24 taxa; 30 are needed";
const FEW_LISTS = "12 complete lists in the earlier period; 100 are needed";

/** One atlas shows every case: all agree, two disagree, one silent, none speaks, the uncorrected line alone, no direction. */
const CASES: readonly Lines[] = [
  { squares_compared: [14, 5], relative_change: [1.2, 0.7], local_frequency: [38, 21], reporting_rate: [24, 12] },
  { squares_compared: [22, 6], relative_change: [-0.9, 0.6], local_frequency: [-18, 9], reporting_rate: [3, 14] },
  { squares_compared: [-12, 8], relative_change: [-1.1, 0.8], local_frequency: [-31, 13], reporting_rate: FEW_LISTS },
  {
    squares_compared: "14 comparable squares; 20 are needed",
    relative_change: FEW_TAXA,
    local_frequency: "the group has 24 taxa; 50 are needed",
    reporting_rate: FEW_LISTS,
  },
  {
    squares_compared: [31, 11],
    relative_change: FEW_TAXA,
    local_frequency: "the group has 24 taxa; 50 are needed",
    reporting_rate: FEW_LISTS,
  },
  { squares_compared: [2, 6], relative_change: [0.1, 0.6], local_frequency: [-4, 15], reporting_rate: [5, 11] },
];

/**
 * Figures of an invented taxon; an atlas of one period has no trend and no series.
 *
 * @param index picks the case, so that six taxa show all
 */
export function figuresFile({ taxon_id, slug }: TaxonFile, two: boolean, index: number): FiguresFile {
  const lines = CASES[index % CASES.length] as Lines;
  return {
    taxon_id,
    slug,
    trends: two ? trendsOf(lines) : [],
    series: two ? seriesOf(lines) : [],
    spread: [1995, 2007, 2024].map((year, step) => ({
      year,
      squares_new: 20 - step,
      squares_total: [20, 39, 57][step] ?? 0,
      provisional: year === 2024,
    })),
    surroundings: surroundingsOf(index),
    seasons: seasonDatesOf(two),
    shifts: seasonShiftsOf(index),
    ranges: rangesOf(index, two),
    regions: regionsOf(index),
  };
}

const HABITATS = [
  ["garden", "Gardens", 0.3, 0.9],
  ["wood", "Woods and scrub", 0.2, 1.06],
  ["grassland", "Flower-rich grassland", 0.15, 1.72],
  ["heath", "Heath and moor", 0.1, 0.41],
  ["coast", "Coast", 0.01, null],
] as const;

/** Habitats of a taxon; none for every other, as in a scheme whose records state none. */
function surroundingsOf(index: number): UseRow[] {
  if (index % 2 === 1) return [];
  return HABITATS.flatMap(([term, term_label, share, ratio]) =>
    (["all", "queen"] as const).map((caste) => ({
      ...{ caste, caste_label: caste === "all" ? "" : "Queen", kind: "habitat", kind_label: "Habitat", of_visit: true },
      ...{ term, term_label, n_all: 12_000, n_term: 12_000 * share, n_taxon: 800 },
      n_taxon_term: Math.round(800 * share * (ratio ?? 1)),
      ...{ ratio, low: ratio === null ? null : ratio * 0.8, high: ratio === null ? null : ratio * 1.25 },
      judged: ratio !== null,
      reason: ratio === null ? "stated too seldom in all: 8, where 10 are needed" : "",
    })),
  );
}

function trendsOf(lines: Lines): TrendRow[] {
  return SETS.flatMap((evidence_set, set) =>
    Object.entries(lines).map(([method, said]) => trend(method as TrendMethod, evidence_set, said, set)),
  );
}

function trend(method: TrendMethod, evidence_set: string, said: Lines[TrendMethod], set: number): TrendRow {
  const [n_from, n_to, n] = [640 - 30 * set, 820 - 30 * set, 910 - 40 * set];
  const row = { method, evidence_set, from_period: "p1", to_period: "p2", n_from, n_to, n };
  if (typeof said === "string") return { ...row, estimate: null, low: null, high: null, judged: false, reason: said };
  // The fourth set moves every line across 0, so that a page shows what a figure hangs on.
  const estimate = Math.round(said[0] * (set === 3 ? -0.4 : 1 - set / 20) * 100) / 100;
  return { ...row, estimate, low: estimate - said[1], high: estimate + said[1], judged: true, reason: "" };
}

function seriesOf(lines: Lines): SeriesRow[] {
  const rate = lines.reporting_rate;
  const points = (unit: "period" | "year", times: readonly string[]) =>
    times.map((time, index): SeriesRow => {
      const estimate = 20 + index / 3 + 4 * Math.sin(index * 2.3);
      const few = index === 2;
      return {
        method: unit === "year" ? "reporting_rate" : "local_frequency",
        unit,
        time,
        n: few ? 12 : 90 + 11 * index,
        estimate: few ? null : estimate,
        low: few ? null : estimate - 6,
        high: few ? null : estimate + 6,
        provisional: time === "2024",
      };
    });
  if (typeof rate === "string") return [];
  const years = Array.from({ length: 35 }, (_, index) => String(1990 + index));
  return [...points("period", ["p1", "p2"]), ...points("year", years)];
}

/** Ranges of a taxon: with figures, shown at 10 km on purpose, and without a record good to 2 km. */
function rangesOf(index: number, two: boolean): RangeRow[] {
  const silent = index % 3 === 1 ? "its 2 km squares are not shown on purpose" : "";
  const periods = two ? ["p2", "p1", "all"] : ["p1", "all"];
  return periods.flatMap((period, step) =>
    [0, 1].map((unit): RangeRow => {
      const tetrads = silent === "" ? (unit === 0 ? 540 : 104) + 200 * step : 0;
      const extent_km2 = (unit === 0 ? 41_200.5 : 18_300.2) + 9_000 * step;
      return {
        territory: unit === 0 ? "all" : "britain",
        period,
        grids: ["british"],
        ...{ records: 4_000, records_not_shown: silent === "" ? 0 : 4_000, records_left_out: unit === 0 ? 3 : 0 },
        ...{ tetrads, hectads: 210 + tetrads / 4, hectads_without_tetrad: 37 },
        occupancy_km2: silent === "" ? 4 * tetrads : null,
        occupancy_reason: silent,
        occupancy_below_km2: silent === "" && tetrads < 500 ? (tetrads < 125 ? 500 : 2_000) : null,
        ...{ extent_km2, extent_reason: "", extent_raised: false },
        extent_below_km2: extent_km2 < 20_000 ? 20_000 : null,
      };
    }),
  );
}

/** Regions of a taxon, the last for records in none; none for every other, as in a scheme without regions. */
function regionsOf(index: number): RegionRow[] {
  if (index % 2 === 1) return [];
  const row = (slug: string, name: string, records: number): RegionRow => ({
    ...{ field: "county", slug, name, records, hectads: Math.ceil(records / 9), tetrads: Math.ceil(records / 4) },
    ...{ first_year: 1961 + (records % 30), last_year: 2024 },
  });
  return [row("north-hills", "North Hills", 214), row("south-downs", "South Downs", 86), row("", "", 31)];
}
