import { Effort } from "./effort.ts";
import { type Land, readLand } from "./land.ts";
import { inventPeople, type People } from "./recorders.ts";
import { type Surroundings, surroundingsOf } from "./surroundings.ts";
import { inventTruth, type Truth, type TruthKind } from "./truth.ts";

/** Everything invented before the first record: land, bees, people. */
export interface World {
  readonly land: Land;
  readonly places: readonly Surroundings[];
  readonly truth: Truth;
  readonly kind: TruthKind;
  readonly people: People;
  readonly effort: Effort;
}

/**
 * Invents the world of a seed.
 *
 * @example inventWorld(1, "changing").people.towns.length // 150
 */
export function inventWorld(seed: number, kind: TruthKind): World {
  const land = readLand();
  const places = surroundingsOf(land, seed);
  const people = inventPeople(land, places, seed);
  return {
    land,
    places,
    truth: inventTruth(places, seed, kind),
    kind,
    people,
    effort: new Effort(land, people, places),
  };
}
