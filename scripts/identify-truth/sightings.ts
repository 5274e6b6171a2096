import { type Day, isoDate } from "../demonstration/calendar.ts";
import { type Random, randomStream } from "../demonstration/random.ts";
import { meet } from "../demonstration/sightings.ts";
import { SPECIES } from "../demonstration/species.ts";
import type { World } from "../demonstration/world.ts";

/** One animal truly met, by somebody whose record is not among those the tables are made from. */
export interface TrueSighting {
  readonly taxonId: string;
  readonly caste: string;
  /** Grid and 10 km square it was in. */
  readonly grid: string;
  readonly hectad: string;
  /** Year-month-day. */
  readonly date: string;
}

const GRIDS = { britain: "british", ireland: "irish", "channel-islands": "channel-islands" } as const;
/** Years of the new walks: the last ten of the demonstration. */
const YEARS = [2015, 2024] as const;
/** One sighting in twenty is of an animal that is none of the group. */
const OUTSIDE = 1 / 20;

/**
 * New walks in the world of a seed, by its recorders, and of each one animal: any of those met, with equal chance. The
 * records of the demonstration were drawn from other streams of random numbers, so none of these is among them.
 *
 * @param world of the seed the tables were made from
 * @param outside ids and castes of taxa outside the atlas; none leaves them out
 * @example newSightings(world, { seed: 1, count: 2000, outside: [] }).length // 2000
 */
export function newSightings(
  world: World,
  {
    seed,
    count,
    outside,
  }: { seed: number; count: number; outside: readonly { id: string; castes: readonly string[] }[] },
): TrueSighting[] {
  const random = randomStream(seed, "sightings for the identification helper");
  const sightings: TrueSighting[] = [];
  while (sightings.length < count) {
    const { tetrad, day, hours } = world.effort.walk(random.whole(...YEARS), random);
    const animal = animalOf(meet(world, tetrad, day, hours, random), random);
    if (animal === undefined) continue;
    const other = outside.length > 0 && random.chance(OUTSIDE) ? random.pick(outside) : undefined;
    sightings.push({
      taxonId: other?.id ?? animal.taxonId,
      caste: other === undefined ? animal.caste : other.castes.length === 0 ? "" : random.pick(other.castes),
      grid: GRIDS[tetrad.territory],
      hectad: tetrad.hectad,
      date: isoDate(day as Day),
    });
  }
  return sightings;
}

function animalOf(met: ReturnType<typeof meet>, random: Random): { taxonId: string; caste: string } | undefined {
  const animals = met.flatMap(({ species, counts }) =>
    Object.entries(counts).flatMap(([caste, count]) =>
      Array.from({ length: count }, () => ({ taxonId: SPECIES[species]?.taxonId ?? "", caste })),
    ),
  );
  return animals.length === 0 ? undefined : random.pick(animals);
}
