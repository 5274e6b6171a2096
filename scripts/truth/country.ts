import { type Land, readLand, type Tetrad } from "../demonstration/land.ts";
import { type Surroundings, surroundingsOf } from "../demonstration/surroundings.ts";

/** Part of the land for a small scheme: from the lowlands to the hills of the north, kilometres of the common plane. */
export const PART = { west: 290, east: 480, south: 200, north: 600 } as const;

/** The 2 km squares an invented group lives in, and what it finds there: `places[i]` belongs to `tetrads[i]`. */
export interface Country {
  readonly tetrads: readonly Tetrad[];
  readonly places: readonly Surroundings[];
}

let land: Land | undefined;

/**
 * The country of a seed: land squares of Britain within some bounds, with surroundings that were invented.
 *
 * @param bounds kilometres of the common plane; about 700 hectads unless given
 * @example countryOf(1).tetrads.length // some 16,000
 */
export function countryOf(seed: number, bounds: Record<keyof typeof PART, number> = PART): Country {
  land ??= readLand();
  const { tetrads: whole, tetradAt } = land;
  const tetrads = whole.filter(
    ({ territory, x, y }) =>
      territory === "britain" && x >= bounds.west && x < bounds.east && y >= bounds.south && y < bounds.north,
  );
  return { tetrads, places: surroundingsOf({ tetrads, tetradAt }, seed) };
}
