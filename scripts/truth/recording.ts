import { dayOf } from "../demonstration/calendar.ts";
import { drawFrom, hashed, type Random, randomStream, runningTotals, saltOf } from "../demonstration/random.ts";
import type { Country } from "./country.ts";
import type { Scenario } from "./scenarios.ts";

/** First and last year of one of two periods. */
export interface Period {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** The two periods, fifteen years each. */
export const PERIODS: readonly Period[] = [
  { id: "earlier", from: 1990, to: 2004 },
  { id: "recent", from: 2005, to: 2019 },
];

/** What somebody makes of what they saw, and how many visits in a hundred are of that kind. */
const KINDS = { complete: 50, partial: 25, photograph: 15, count_week: 5, specimen: 5 } as const;
export type VisitKind = keyof typeof KINDS;

/** One visit to a 1 km square: place in the country, day, time spent, and what is made of it. */
export interface Visit {
  readonly period: 0 | 1;
  readonly square: number;
  /** Number of the 1 km square in its 2 km square: south-west, south-east, north-west, north-east. */
  readonly quarter: number;
  readonly day: number;
  readonly dayOfYear: number;
  readonly year: number;
  /** Hours of looking, times the recorder's skill. */
  readonly hours: number;
  readonly recorder: string;
  readonly kind: VisitKind;
  /** Whether only the 10 km square was written down. */
  readonly coarse: boolean;
}

/** 2 km squares for each recorder. */
const SQUARES_A_RECORDER = 200;
const REACH_KM = 20;
const MIDDLE_DAY = 178;
const SPREAD_DAYS = 38;

/**
 * Invents who goes out where and when. Recorders live in the warm lowlands, go near home and to some squares far oftener
 * than to others.
 *
 * @param visits of the earlier period
 * @returns visits in order of period, no two alike in place, day and recorder by design, some by chance
 */
export function inventVisits(
  country: Country,
  scenario: Scenario,
  visits: number,
  seed: number,
  periods = PERIODS,
): Visit[] {
  const random = randomStream(seed, "visits");
  const recorders = inventRecorders(country, seed);
  return ([0, 1] as const).flatMap((period) => {
    const draw = drawOf(country, period === 1 ? scenario : { northward: 0, uphill: 0 });
    const active = runningTotals(recorders.map(({ home, activity }) => activity * (draw[home] as number)));
    const round = recorders.map(({ home }) => squaresAround(country, home, draw, seed));
    return Array.from({ length: Math.round(visits * (period === 1 ? scenario.effort : 1)) }, (): Visit => {
      const who = drawFrom(active, random);
      const { from, to } = periods[period] as Period;
      const dayOfYear = dayInSeason(random, period === 1 ? scenario.later : 0);
      const year = random.whole(from, to);
      const kind = (Object.keys(KINDS) as VisitKind[])[drawFrom(KIND_TOTALS, random)] as VisitKind;
      return {
        period,
        square: drawFrom(round[who] as Float64Array, random),
        quarter: random.whole(0, 3),
        day: dayOf(year, 1, 1) + dayOfYear - 1,
        dayOfYear,
        year,
        hours: (0.25 + random.exponential(0.8)) * (recorders[who]?.skill ?? 1),
        recorder: kind === "specimen" ? "" : `recorder ${who}`,
        kind,
        coarse: random.chance(0.1),
      };
    });
  });
}

const KIND_TOTALS = runningTotals(Object.values(KINDS));

function inventRecorders({ places }: Country, seed: number): { home: number; activity: number; skill: number }[] {
  const random = randomStream(seed, "recorders");
  const homes = runningTotals(places.map(({ warmth, height }) => Math.exp(3 * warmth - 4 * height)));
  return Array.from({ length: Math.ceil(places.length / SQUARES_A_RECORDER) }, () => ({
    home: drawFrom(homes, random),
    activity: random.exponential(1) ** 1.5,
    skill: random.between(0.5, 1.5),
  }));
}

/** How much oftener each square is visited than before, before anything else. */
function drawOf({ places }: Country, { northward, uphill }: Pick<Scenario, "northward" | "uphill">): Float64Array {
  return Float64Array.from(places, ({ y, height }) => Math.exp((northward * (y - 400)) / 100 + uphill * height));
}

/** Running totals of the squares around a home: fewer visits with distance, and some squares are everybody's favourites. */
function squaresAround({ places }: Country, home: number, draw: Float64Array, seed: number): Float64Array {
  const salt = saltOf(`${seed}/favourites`);
  const { x, y } = places[home] as { x: number; y: number };
  return runningTotals(
    places.map((place, square) => {
      const favour = (0.02 + hashed(square, 7, salt)) ** -1.2;
      return favour * (draw[square] as number) * Math.exp(-Math.hypot(place.x - x, place.y - y) / REACH_KM);
    }),
  );
}

/** A day of the year from the middle of the season, in a bell of twelve draws, within the year. */
function dayInSeason(random: Random, later: number): number {
  let sum = -6;
  for (let i = 0; i < 12; i += 1) sum += random.next();
  return Math.min(365, Math.max(1, Math.round(MIDDLE_DAY + later + SPREAD_DAYS * sum)));
}
