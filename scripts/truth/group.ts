import { randomStream } from "../demonstration/random.ts";
import type { Surroundings } from "../demonstration/surroundings.ts";

/** What a species' home depends on, among the surroundings. */
const NEEDS = ["warmth", "height", "flowers", "heath", "cover"] as const;

/** One invented species of the group. */
export interface GroupSpecies {
  readonly taxonId: string;
  /** Share of the country's 2 km squares it lives in, in the earlier period. */
  readonly commonness: number;
  /** Meetings an hour in the best square on the best day. */
  readonly abundance: number;
  /** Log-odds of its home by surroundings, and how patchy it is beside them. */
  readonly needs: Readonly<Record<(typeof NEEDS)[number], number>>;
  readonly patchy: number;
  /** Day of the year of its height in the south, and the spread of its flight in days (standard deviation). */
  readonly height: number;
  readonly spread: number;
  /** Chance that somebody who lists only some of what they saw lists it. */
  readonly eagerness: number;
}

/** Shares of the country's squares the rarest and the commonest species live in: the latter leaves room to grow by 60 %. */
const COMMONNESS = { least: 0.003, most: 0.55 } as const;
/** A group of more species than this is one of rarer species: a square holds no more of them. */
const MANY = 100;

/**
 * Invents a group of species whose commonness runs evenly over orders of magnitude.
 *
 * @param species how many, from 1
 * @example inventGroup(1, 100)[0]?.taxonId // => "s001"
 */
export function inventGroup(seed: number, species: number): GroupSpecies[] {
  const random = randomStream(seed, "group");
  const [least, most] = [COMMONNESS.least, COMMONNESS.most].map((share) => share * Math.min(1, MANY / species)) as [
    number,
    number,
  ];
  return Array.from({ length: species }, (_, index) => ({
    taxonId: `s${String(index + 1).padStart(3, "0")}`,
    commonness: least * (most / least) ** ((index + random.next()) / species),
    abundance: 8 ** random.next(),
    needs: {
      warmth: random.between(-2, 6),
      height: random.between(-5, 3),
      flowers: random.between(-1, 4),
      heath: random.between(-2, 4),
      cover: random.between(-1, 3),
    },
    patchy: random.between(0.5, 2),
    height: random.between(110, 225),
    spread: random.between(18, 40),
    eagerness: random.between(0.25, 0.9),
  }));
}

/** How well surroundings suit a species, as log-odds without a constant. */
export function suitability({ needs }: GroupSpecies, place: Surroundings): number {
  return NEEDS.reduce((sum, need) => sum + needs[need] * place[need], 0);
}

/**
 * How many are about on a day, against the best day, 0 to 1: later to the north by two days each 100 km, and on hills by nine.
 *
 * @param dayOfYear 1 to 366
 */
export function aboutOn({ height, spread }: GroupSpecies, place: Surroundings, dayOfYear: number): number {
  const away = (dayOfYear - height - 0.02 * Math.max(0, place.y - 150) - 9 * place.height) / spread;
  return Math.exp((-away * away) / 2);
}
