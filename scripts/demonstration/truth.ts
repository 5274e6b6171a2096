import { smooth } from "./noise.ts";
import { hashed, saltOf } from "./random.ts";
import { type Epoch, SPECIES, type Species } from "./species.ts";
import type { Surroundings } from "./surroundings.ts";

/** Whether the species change between the epochs or stay as they were in the first period. */
export type TruthKind = "changing" | "null";

/** The epochs in order; the last two are the atlas's periods. */
export const EPOCHS: readonly Epoch[] = ["before 1990", "1990–2005", "2006–2024"];

/** Last year of each epoch. */
const LAST_YEARS: readonly number[] = [1989, 2005, 2024];

/** Where each species really is. */
export interface Truth {
  /** How good a 2 km square is for a species in a year, above 0 to 1; 0 where it is not. */
  quality(species: number, tetrad: number, year: number): number;
  /** True when a species lives in a 2 km square in some year of an epoch. */
  isPresent(species: number, tetrad: number, epoch: number): boolean;
  /** The first year of a newcomer in a square it reaches; undefined for all others. */
  arrivalYear(species: number, tetrad: number): number | undefined;
}

/**
 * Makes up where each species lives, in each 2 km square and epoch. A square keeps its own luck from epoch to epoch,
 * so that a species stays where it was unless its odds change; in a changing truth, one square in thirty is drawn anew.
 *
 * @param places from `surroundingsOf`
 * @param seed of the demonstration
 * @param kind with "null" no species differs between epochs, newcomers included
 * @example inventTruth(places, 1, "changing").isPresent(0, 0, 1) // whether the first species is in the first square
 */
export function inventTruth(places: readonly Surroundings[], seed: number, kind: TruthKind): Truth {
  const qualities = SPECIES.map(() => EPOCHS.map(() => new Uint8Array(places.length)));
  const arrivals = SPECIES.map(({ arrival }) =>
    arrival && kind === "changing" ? new Uint16Array(places.length) : undefined,
  );
  SPECIES.forEach((species, s) => {
    const salt = saltOf(`${seed}/${species.taxonId}`);
    places.forEach((place, tetrad) => {
      settle(species, place, { tetrad, salt, kind }, qualities[s] as Uint8Array[]);
      const years = arrivals[s];
      if (years) {
        years[tetrad] = arrivalIn(species, place, tetrad, salt);
      }
    });
  });
  const arrivalYear = (species: number, tetrad: number): number => arrivals[species]?.[tetrad] ?? 0;
  const qualityIn = (species: number, tetrad: number, epoch: number): number =>
    (qualities[species]?.[epoch]?.[tetrad] as number) / 255;
  return {
    quality: (species, tetrad, year) =>
      arrivalYear(species, tetrad) > year ? 0 : qualityIn(species, tetrad, epochOf(year)),
    isPresent: (species, tetrad, epoch) =>
      qualityIn(species, tetrad, epoch) > 0 && arrivalYear(species, tetrad) <= (LAST_YEARS[epoch] as number),
    arrivalYear: (species, tetrad) => arrivalYear(species, tetrad) || undefined,
  };
}

/**
 * Index in `EPOCHS` of a year.
 *
 * @param year any; a year after 2024 counts as the last epoch
 * @example epochOf(1990) // 1
 */
export function epochOf(year: number): number {
  return year < 1990 ? 0 : year < 2006 ? 1 : 2;
}

/** First year in a square: the front runs ahead in some parts and lags in others. 0 where the species always was. */
function arrivalIn({ arrival }: Species, place: Surroundings, tetrad: number, salt: number): number {
  const year = arrival?.(place) ?? 0;
  const lag = 6 * hashed(tetrad, 9, salt) + 8 * (smooth(place.x, place.y, 45, salt + 2) - 0.5);
  return Math.max(0, Math.min(9999, Math.round(year + Math.max(0, lag))));
}

/** Writes the quality of one square in each epoch: 1 to 255, or 0 where the species is not. */
function settle(
  species: Species,
  place: Surroundings,
  { tetrad, salt, kind }: { tetrad: number; salt: number; kind: TruthKind },
  qualities: readonly Uint8Array[],
): void {
  if (species.missingFrom?.includes(place.territory)) {
    return;
  }
  const patches = 3 * (smooth(place.x, place.y, 40, salt) - 0.5) + 2 * (smooth(place.x, place.y, 9, salt + 1) - 0.5);
  const base = species.home(place) + (species.patchy ?? 1) * patches;
  for (let epoch = 0; epoch < EPOCHS.length; epoch++) {
    const shift = species.change?.(place, EPOCHS[kind === "null" ? 1 : epoch] as Epoch) ?? 0;
    const odds = 1 / (1 + Math.exp(-base - shift));
    const isRedrawn = kind === "changing" && epoch === 2 && hashed(tetrad, 2, salt) < 1 / 30;
    const luck = hashed(tetrad, isRedrawn ? 3 : 1, salt);
    (qualities[epoch] as Uint8Array)[tetrad] = luck < odds ? Math.ceil(255 * (0.25 + 0.75 * odds)) : 0;
  }
}
