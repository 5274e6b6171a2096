import type { Territory } from "./land.ts";
import { cuckoos } from "./species-cuckoo.ts";
import { species as social } from "./species-social.ts";
import type { Surroundings } from "./surroundings.ts";

/** Sexes and castes as the demonstration writes them. A cuckoo has females and males only. */
export type Caste = "queen" | "worker" | "male" | "female";

/** When a caste is about, in months from 1.0 (1 January): first, most, last. */
export type Flight = readonly [first: number, most: number, last: number];

/** The times that the truth tells apart. */
export type Epoch = "before 1990" | "1990–2005" | "2006–2024";

/** One invented species: where it lives, when it flies, how it changes. Log-odds of living in a 2 km square. */
export interface Species {
  readonly taxonId: string;
  /** Expected sightings an hour in a good square at the best time of a caste. */
  readonly common: number;
  readonly flights: Readonly<Partial<Record<Caste, Flight>>>;
  /** Share of sightings that each caste makes at its best time; 1 where not given. */
  readonly numbers?: Readonly<Partial<Record<Caste, number>>>;
  /** A second, smaller flight, as of new queens in autumn or of winter colonies. */
  readonly second?: Readonly<Partial<Record<Caste, Flight>>>;
  readonly home: (place: Surroundings) => number;
  /** How strongly the squares of a species lie together; 1 where not given. */
  readonly patchy?: number;
  /** Added to `home` in an epoch; 0 where not given. */
  readonly change?: (place: Surroundings, epoch: Epoch) => number;
  /** First year in a square, for a newcomer; an infinite year is never. */
  readonly arrival?: (place: Surroundings) => number;
  readonly missingFrom?: readonly Territory[];
}

/** The 22 species of the demonstration, in the order of its truth. */
export const SPECIES: readonly Species[] = [...social, ...cuckoos];

/**
 * Index of a species in `SPECIES`.
 *
 * @param taxonId as `invented-hypnorum`
 * @throws Error for a taxon that is none of the species
 * @example indexOfSpecies("invented-terrestris") // 0
 */
export function indexOfSpecies(taxonId: string): number {
  const index = SPECIES.findIndex((species) => species.taxonId === taxonId);
  if (index < 0) {
    throw new Error(`no invented species ${taxonId}`);
  }
  return index;
}
