/** Seasons of which the truth is known: visits of a recording that changes, and what they meet of a species that may shift. */
import { thirdOfDay } from "../../../src/measures/season/season-calendar.ts";
import type { SettledRow, ShiftInput } from "../../../src/measures/season/shift.ts";
import { seededRandom } from "../../../src/measures/statistics/seeded-random.ts";

/** What changes over the years; nothing unless given. */
export interface Invented {
  /** Days a decade by which the species is about earlier. */
  readonly earlier?: number;
  /** Degrees of latitude by which recording moves north, from first to last year. */
  readonly northward?: number;
  /** Days by which people go out earlier in the last year than in the first. */
  readonly outEarlier?: number;
  /** By what the share of the later caste among records is multiplied, from first to last year. */
  readonly laterCaste?: number;
  /** Standard deviation of the years' own earliness, days. */
  readonly weather?: number;
  readonly years?: number;
  /** Visits in the first year; twice as many in the last. */
  readonly visits?: number;
}

/** Castes with their best day at 52° N, and how it is about a degree further north: 2.2 days later. */
const PEAKS = [
  ["queen", 125],
  ["worker", 180],
] as const;
const LATER_A_DEGREE = 2.2;
const SPREAD = 20;

/**
 * The rows and group visits of one seed.
 *
 * @example inventSeasons("seed 1", { northward: 3 }).rows.length // some thousand
 */
export function inventSeasons(
  seed: string,
  { earlier = 0, northward = 0, outEarlier = 0, laterCaste = 1, weather = 3, years = 24, visits = 300 }: Invented,
): Pick<ShiftInput, "rows" | "groupVisits"> {
  const random = seededRandom(`invented/${seed}`);
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const rows: SettledRow[] = [];
  const groupVisits = new Map<number, Float64Array>();
  for (let year = 2000; year < 2000 + years; year += 1) {
    const passed = (year - 2000) / (years - 1);
    const early = weather * normal() + (earlier * (year - 2000)) / 10;
    const thirds = new Float64Array(36);
    groupVisits.set(year, thirds);
    for (let visit = 0; visit < visits * (1 + passed); visit += 1) {
      const day = Math.min(365, Math.max(1, Math.round(165 - outEarlier * passed + 45 * normal())));
      const latitude = 52 + northward * passed + normal();
      thirds[thirdOfDay(day)] = (thirds[thirdOfDay(day)] as number) + 1;
      for (const [caste, peak] of PEAKS) {
        const away = (day + early - peak - LATER_A_DEGREE * (latitude - 52)) / SPREAD;
        const often = caste === "worker" ? laterCaste ** passed : 1;
        if (random() >= 0.4 * Math.min(1, often) * Math.exp((-away * away) / 2)) continue;
        rows.push({
          ...{ caste, season_year: year, season_day: day, territory: "britain" },
          ...{ band: Math.floor(2 * latitude), visits: 1 },
        });
      }
    }
  }
  return { rows, groupVisits };
}
