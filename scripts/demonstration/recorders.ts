import { type Land, TETRAD, type Tetrad } from "./land.ts";
import { siteName, townName } from "./place-names.ts";
import { drawFrom, type Random, randomStream, runningTotals } from "./random.ts";
import type { Surroundings } from "./surroundings.ts";

/** An invented town, from whose surroundings records come. */
export interface Town {
  readonly name: string;
  readonly tetrad: Tetrad;
  readonly people: number;
}

/** An invented named site: many records carry its one reference, wherever on the site the bee was. */
export interface Site {
  readonly name: string;
  readonly tetrad: Tetrad;
  /** Its label point in metres of its grid. */
  readonly easting: number;
  readonly northing: number;
  /** How far the site reaches from its label point, in metres. */
  readonly reach: number;
}

/** An invented recorder: a key, never a person's name. */
export interface Recorder {
  readonly key: string;
  readonly town: Town;
  readonly from: number;
  readonly to: number;
  readonly activity: number;
  /** 0 beginner to 1 expert. */
  readonly skill: number;
  /** Share of rows on which the caste is written. */
  readonly writesCaste: number;
  /** Share of rows with a reference of 100 m. */
  readonly exact: number;
  /** Where the recorder's garden is. */
  readonly garden: { readonly easting: number; readonly northing: number };
}

/** Who records, and where from. */
export interface People {
  readonly towns: readonly Town[];
  readonly sites: readonly Site[];
  readonly recorders: readonly Recorder[];
}

/**
 * Invents towns (more in the warm lowlands), named sites and recorders.
 *
 * @param places from `surroundingsOf`
 * @example inventPeople(land, places, 1).recorders[0]?.key // "invented-recorder-001"
 */
export function inventPeople(land: Land, places: readonly Surroundings[], seed: number): People {
  const random = randomStream(seed, "people");
  const used = new Set<string>();
  const towns = [...settle(land, places, { britain: 118, ireland: 30, "channel-islands": 2 }, random, used)];
  const sites = Array.from({ length: 170 }, () => foundSite(land, random, used));
  const people = runningTotals(towns.map((town) => town.people));
  const recorders = Array.from({ length: 460 }, (_, i) =>
    recorder(i + 1, towns[drawFrom(people, random)] as Town, random),
  );
  return { towns, sites, recorders };
}

function* settle(
  land: Land,
  places: readonly Surroundings[],
  counts: Readonly<Record<string, number>>,
  random: Random,
  used: Set<string>,
): Generator<Town> {
  for (const [territory, count] of Object.entries(counts)) {
    const liked = runningTotals(
      land.tetrads.map((tetrad, i) => {
        const { warmth, height } = places[i] as Surroundings;
        return tetrad.territory === territory ? (territory === "britain" ? warmth ** 1.6 : 1) * (1 - height) ** 1.6 : 0;
      }),
    );
    for (let i = 0; i < count; i++) {
      const tetrad = land.tetrads[drawFrom(liked, random)] as Tetrad;
      yield { name: townName(random, used), tetrad, people: Math.min(5, 0.35 / (1 - random.next()) ** 0.5) };
    }
  }
}

function foundSite(land: Land, random: Random, used: Set<string>): Site {
  const tetrad = random.pick(land.tetrads);
  const hundred = (corner: number): number => corner + 100 * random.whole(0, TETRAD / 100 - 1) + 50;
  return {
    name: siteName(random, used),
    tetrad,
    easting: hundred(tetrad.easting),
    northing: hundred(tetrad.northing),
    reach: random.pick([300, 500, 800, 1200, 1800]),
  };
}

function recorder(number: number, town: Town, random: Random): Recorder {
  const from = random.chance(0.25) ? random.whole(1965, 1990) : random.whole(1985, 2020);
  const habit = random.next();
  return {
    key: `invented-recorder-${String(number).padStart(3, "0")}`,
    town,
    from,
    to: from + 3 + Math.round(random.exponential(14)),
    activity: Math.min(9, 0.3 / (1 - random.next()) ** 0.7),
    skill: random.next() ** 0.8,
    writesCaste: habit < 0.4 ? 0.08 : habit < 0.8 ? 0.4 : 0.9,
    exact: random.next(),
    garden: {
      easting: town.tetrad.easting + random.whole(0, TETRAD - 1),
      northing: town.tetrad.northing + random.whole(0, TETRAD - 1),
    },
  };
}
