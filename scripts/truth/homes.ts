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
  /** How good each 2 km square would be for it, 1 to 255, by its place in the country. */
  readonly quality: Uint8Array;
  /** The 2 km squares it lives in, by their places in the country, in ascending order. */
  readonly lived: readonly [earlier: Uint32Array, recent: Uint32Array];
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
    const quality = Uint8Array.from(suits, (suit) => Math.ceil(255 * (0.25 + 0.75 / (1 + Math.exp(mean - suit)))));
    const change = changes[index] as number;
    const earlier = Math.max(1, Math.round(species.commonness * suits.length));
    const tetrads = [earlier, Math.min(suits.length, Math.round(earlier * change))] as const;
    const lived = firstReached(suits, tetrads, salt);
    const hectads = (squares: Uint32Array) =>
      new Set(Array.from(squares, (square) => country.tetrads[square]?.hectad)).size;
    const encounters = (squares: Uint32Array) => encounterRate(country, species, quality, squares);
    return {
      change,
      quality,
      lived,
      tetrads,
      hectads: [hectads(lived[0]), hectads(lived[1])],
      encounters: [encounters(lived[0]), encounters(lived[1])],
    };
  });
}

/**
 * The squares a species reaches first, if it reaches each at a rate that grows with its suitability: as many as it lives in
 * in each period, so that those of the smaller number are all among those of the larger.
 */
function firstReached(
  suits: Float64Array,
  counts: readonly [number, number],
  salt: number,
): [Uint32Array, Uint32Array] {
  const times = suits.map((suit, square) => -Math.log(hashed(square, 1, salt) + 2 ** -33) * Math.exp(-suit));
  const sorted = times.toSorted();
  const [earlier, recent] = counts.map((count) =>
    Uint32Array.from(suits.keys()).filter((square) => (times[square] as number) <= (sorted[count - 1] as number)),
  );
  return [earlier as Uint32Array, recent as Uint32Array];
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

function encounterRate({ places }: Country, species: GroupSpecies, quality: Uint8Array, lived: Uint32Array): number {
  let sum = 0;
  for (const square of lived) {
    const place = places[square];
    if (place === undefined) continue;
    for (const day of STANDARD_DAYS)
      sum += 1 - Math.exp((-species.abundance * (quality[square] as number) * aboutOn(species, place, day)) / 255);
  }
  return sum / STANDARD_DAYS.length / places.length;
}
