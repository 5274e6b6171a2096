import { smooth } from "../demonstration/noise.ts";
import { hashed, randomStream, saltOf } from "../demonstration/random.ts";
import type { Country } from "./country.ts";
import { aboutOn, type GroupSpecies, suitability } from "./group.ts";
import type { Scenario } from "./scenarios.ts";

/** Days of the year on which the true encounter rate is taken. */
const STANDARD_DAYS = [110, 130, 150, 170, 190, 210, 230, 250] as const;

/** Where one species truly lives, and what follows from it; each pair is of the earlier and the recent period. */
export interface Home {
  /** What the number of its 2 km squares was multiplied by. */
  readonly change: number;
  /** How good each 2 km square is for it, above 0 to 1, by its place in the country. */
  readonly quality: Float32Array;
  /** Squares in the order in which it would fill them: it lives in the first `tetrads[period]`. */
  readonly order: Uint32Array;
  readonly tetrads: readonly [earlier: number, recent: number];
  readonly hectads: readonly [earlier: number, recent: number];
  /** Chance of meeting it on an hour's visit to a square by chance, in the mean of the season. */
  readonly encounters: readonly [earlier: number, recent: number];
}

/**
 * Settles a group in a country. A square keeps its own luck, so that a species whose number of squares stays the same
 * lives in exactly the same squares, and one that changes leaves its worst squares or takes the next best.
 *
 * @returns one home a species, in the order of the group
 */
export function settle(country: Country, group: readonly GroupSpecies[], scenario: Scenario, seed: number): Home[] {
  const changes = shuffledChanges(group.length, scenario.changes, seed);
  return group.map((species, index) => {
    const salt = saltOf(`${seed}/${species.taxonId}`);
    const suits = Float64Array.from(country.places, (place) => {
      const patches =
        4 * (smooth(place.x, place.y, 40, salt) - 0.5) + 3 * (smooth(place.x, place.y, 9, salt + 1) - 0.5);
      return suitability(species, place) + species.patchy * patches;
    });
    const mean = suits.reduce((sum, suit) => sum + suit, 0) / suits.length;
    const quality = Float32Array.from(suits, (suit) => 0.25 + 0.75 / (1 + Math.exp(mean - suit)));
    const order = orderOfFilling(suits, salt);
    const change = changes[index] as number;
    const earlier = Math.max(1, Math.round(species.commonness * suits.length));
    const tetrads = [earlier, Math.min(suits.length, Math.round(earlier * change))] as const;
    const both = <T>(of: (lived: Uint32Array) => T) => tetrads.map((count) => of(order.subarray(0, count))) as [T, T];
    return {
      change,
      quality,
      order,
      tetrads,
      hectads: both((lived) => new Set(Array.from(lived, (square) => country.tetrads[square]?.hectad)).size),
      encounters: both((lived) => encounterRate(country, species, quality, lived)),
    };
  });
}

/** Squares by the time at which a species would reach them, if it reached each at a rate that grows with its suitability. */
function orderOfFilling(suits: Float64Array, salt: number): Uint32Array {
  const times = suits.map((suit, square) => -Math.log(hashed(square, 1, salt) + 2 ** -33) * Math.exp(-suit));
  return Uint32Array.from(suits.keys()).sort((a, b) => (times[a] as number) - (times[b] as number) || a - b);
}

/** Each change for an equal share of the species, common and rare alike: dealt out by fives, so to speak. */
function shuffledChanges(species: number, changes: readonly number[], seed: number): number[] {
  const random = randomStream(seed, "changes");
  const dealt: number[] = [];
  while (dealt.length < species) {
    const hand = [...changes];
    while (hand.length > 0) dealt.push(...hand.splice(random.whole(0, hand.length - 1), 1));
  }
  return dealt.slice(0, species);
}

function encounterRate({ places }: Country, species: GroupSpecies, quality: Float32Array, lived: Uint32Array): number {
  let sum = 0;
  for (const square of lived) {
    const place = places[square];
    if (place === undefined) continue;
    for (const day of STANDARD_DAYS)
      sum += 1 - Math.exp(-species.abundance * (quality[square] as number) * aboutOn(species, place, day));
  }
  return sum / STANDARD_DAYS.length / places.length;
}
