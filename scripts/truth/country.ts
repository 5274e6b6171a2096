import { type Land, readLand, type Territory, type Tetrad } from "../demonstration/land.ts";
import { type Surroundings, surroundingsOf } from "../demonstration/surroundings.ts";

/** Bounds in kilometres of the common plane, and the territories within them. */
export interface Part {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
  readonly territories: readonly Territory[];
}

/** Part of the land for a small scheme: from the lowlands to the hills of the north, some 700 hectads. */
const PART: Part = { west: 290, east: 480, south: 200, north: 600, territories: ["britain"] };

/** All the land there is, some 4,000 hectads. */
export const WHOLE_LAND: Part = {
  ...{ west: -Infinity, east: Infinity, south: -Infinity, north: Infinity },
  territories: ["britain", "ireland", "channel-islands"],
};

/** The 2 km squares an invented group lives in, and what it finds there: `places[i]` belongs to `tetrads[i]`. */
export interface Country {
  readonly tetrads: readonly Tetrad[];
  readonly places: readonly Surroundings[];
}

let land: Land | undefined;

/**
 * The country of a seed: land squares of a part of the land, with surroundings that were invented.
 *
 * @example countryOf(1).tetrads.length // some 16,000
 */
export function countryOf(seed: number, part: Part = PART): Country {
  land ??= readLand();
  const { tetrads: whole, tetradAt } = land;
  const tetrads = whole.filter(
    ({ territory, x, y }) =>
      part.territories.includes(territory) && x >= part.west && x < part.east && y >= part.south && y < part.north,
  );
  return { tetrads, places: surroundingsOf({ tetrads, tetradAt }, seed) };
}
