import { type Day, partsOf } from "./calendar.ts";
import { aboutOn } from "./flight.ts";
import { TETRAD, type Tetrad } from "./land.ts";
import type { Random } from "./random.ts";
import { type Caste, SPECIES } from "./species.ts";
import type { Surroundings } from "./surroundings.ts";
import type { World } from "./world.ts";

/** One species truly seen on an outing: what, where and when, before anybody writes it down. */
export interface Sighting {
  /** Index in `SPECIES`. */
  readonly species: number;
  /** How many of each caste; all 0 for a target looked for in vain. */
  readonly counts: Readonly<Partial<Record<Caste, number>>>;
  readonly tetrad: Tetrad;
  /** Metres of the tetrad's grid. */
  readonly easting: number;
  readonly northing: number;
  readonly day: Day;
}

/**
 * What a walk of some hours in one 2 km square meets. Species that do not live there are never met.
 *
 * @param hours of looking
 * @returns one sighting a species, in the order of `SPECIES`; often none in winter
 * @example meet(world, tetrad, dayOf(2010, 7, 1), 1, random).length // 5 or so in a good square
 */
export function meet(world: World, tetrad: Tetrad, day: Day, hours: number, random: Random): Sighting[] {
  const { year, dayOfYear } = partsOf(day);
  const place = world.places[tetrad.index] as Surroundings;
  const moment = { place, year, dayOfYear, kind: world.kind };
  const east = random.between(0, TETRAD);
  const north = random.between(0, TETRAD);
  const met: Sighting[] = [];
  SPECIES.forEach((species, index) => {
    const quality = world.truth.quality(index, tetrad.index, year);
    if (quality === 0) {
      return;
    }
    const counts: Partial<Record<Caste, number>> = {};
    for (const caste of Object.keys(species.flights) as Caste[]) {
      const seen = random.poisson(0.4 * species.common * quality * hours * aboutOn(species, caste, moment));
      if (seen > 0) {
        counts[caste] = seen;
      }
    }
    if (Object.keys(counts).length > 0) {
      met.push({ species: index, counts, tetrad, ...spot(tetrad, east, north, random), day });
    }
  });
  return met;
}

/** A point within 300 m of a walk's middle; one that would leave the square is turned back into it. */
function spot(tetrad: Tetrad, east: number, north: number, random: Random): { easting: number; northing: number } {
  const near = (middle: number): number => {
    const there = middle + random.between(-300, 300);
    return Math.floor(there < 0 ? -there : there >= TETRAD ? 2 * TETRAD - 1 - there : there);
  };
  return { easting: tetrad.easting + near(east), northing: tetrad.northing + near(north) };
}

/** The caste most of a sighting's bees had. @example mainCaste({ queen: 1, worker: 4 }) // "worker" */
export function mainCaste(counts: Sighting["counts"]): Caste {
  const castes = Object.entries(counts) as [Caste, number][];
  return castes.reduce((most, one) => (one[1] > most[1] ? one : most), castes[0] ?? ["worker", 0])[0];
}

/** How many bees in all. @example total({ queen: 1, worker: 4 }) // 5 */
export function total(counts: Sighting["counts"]): number {
  return Object.values(counts).reduce((sum, count) => sum + count, 0);
}
