import { drawFrom, type Random, randomStream, runningTotals } from "../demonstration/random.ts";
import type { Country } from "./country.ts";
import { aboutOn, type GroupSpecies } from "./group.ts";
import type { Home } from "./homes.ts";
import type { Visit } from "./recording.ts";

/** One record: a species, by its number in the group, written down on a visit. */
export interface InventedRecord {
  readonly species: number;
  readonly visit: Visit;
}

/**
 * What recorders write down of what their visits meet. A visit that meets nothing leaves nothing.
 *
 * @param homes one a species, from `settle`
 * @returns records in the order of visits, then of the group
 */
export function recordVisits(
  country: Country,
  group: readonly GroupSpecies[],
  homes: readonly Home[],
  visits: readonly Visit[],
  seed: number,
): InventedRecord[] {
  const random = randomStream(seed, "meetings");
  const living = [0, 1].map((period) => speciesBySquare(country, homes, period as 0 | 1));
  return visits.flatMap((visit) => {
    const place = country.places[visit.square];
    const here = living[visit.period]?.[visit.square] ?? [];
    if (place === undefined) return [];
    const met = here.filter((index) => {
      const { abundance } = group[index] as GroupSpecies;
      const quality = (homes[index]?.quality[visit.square] ?? 0) / 255;
      const about = aboutOn(group[index] as GroupSpecies, place, visit.dayOfYear);
      return random.chance(1 - Math.exp(-abundance * quality * about * visit.hours));
    });
    return writtenDown(met, group, visit, random).map((species) => ({ species, visit }));
  });
}

function speciesBySquare({ tetrads }: Country, homes: readonly Home[], period: 0 | 1): number[][] {
  const living = tetrads.map((): number[] => []);
  homes.forEach(({ lived }, species) => {
    for (const square of lived[period]) living[square]?.push(species);
  });
  return living;
}

/** All on a complete list, the liked ones on others; one of a photograph, a count week or a museum, which keeps the rarer. */
function writtenDown(met: number[], group: readonly GroupSpecies[], { kind }: Visit, random: Random): number[] {
  if (kind === "complete" || met.length === 0) return met;
  const of = (weight: (species: GroupSpecies) => number) => met.map((index) => weight(group[index] as GroupSpecies));
  if (kind === "partial") return met.filter((index) => random.chance(group[index]?.eagerness ?? 0));
  const weights = of(({ eagerness, commonness }) =>
    kind === "specimen" ? 1 / commonness : kind === "count_week" ? eagerness ** 4 : eagerness,
  );
  return [met[drawFrom(runningTotals(weights), random)] as number];
}
