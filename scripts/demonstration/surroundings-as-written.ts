import { type Day, partsOf } from "./calendar.ts";
import { hashed, runningTotals, saltOf } from "./random.ts";
import { SPECIES } from "./species.ts";
import type { Surroundings } from "./surroundings.ts";

/** A habitat as people write it, and how much of it there is where they walk. */
const HABITATS: readonly (readonly [words: readonly string[], amount: (place: Surroundings) => number])[] = [
  [["garden", "Gardens", "allotment"], ({ warmth, cover }) => 0.4 + 1.2 * warmth * cover],
  [["woodland edge", "wood", "scrub"], ({ cover }) => 1.3 * cover],
  [["flower-rich grassland", "meadow", "chalk grassland"], ({ flowers }) => 1.6 * flowers ** 2],
  [["heath", "moor", "Moorland"], ({ heath }) => 2 * heath ** 1.5],
  [["coast", "dunes", "machair"], ({ coast }) => 2.2 * coast],
  [["farmland", "field margin", "roadside"], ({ height }) => 0.7 * (1 - height)],
];

/** A flower as people write it, its months, and how often long-tongued and short-tongued bees are found on it. */
const FLOWERS: readonly (readonly [
  words: readonly string[],
  months: readonly [number, number],
  long: number,
  short: number,
])[] = [
  [["sallow", "Salix"], [3, 4], 0.4, 1.4],
  [["dead-nettle", "white dead-nettle", "Lamium album"], [3, 7], 1.6, 0.3],
  [["bilberry", "Vaccinium myrtillus"], [4, 5], 0.3, 0.8],
  [["comfrey", "Symphytum"], [5, 7], 1.1, 0.5],
  [["foxglove", "Digitalis purpurea"], [6, 7], 1.2, 0.15],
  [["bird's-foot-trefoil", "Lotus corniculatus"], [5, 8], 0.6, 0.8],
  [["red clover", "Trifolium pratense", "clover"], [5, 9], 2, 0.3],
  [["bramble", "Rubus fruticosus agg."], [6, 8], 0.6, 1.6],
  [["knapweed", "black knapweed", "Centaurea nigra"], [7, 9], 1.2, 0.8],
  [["thistle", "Cirsium"], [7, 9], 0.5, 1.2],
  [["heather", "Calluna vulgaris"], [7, 9], 0.2, 1.1],
];

const LONG_TONGUED = new Set(
  ["hortorum", "ruderatus", "pascuorum", "muscorum", "humilis", "sylvarum", "ruderarius", "distinguendus"].map(
    (epithet) => `invented-${epithet}`,
  ),
);

/**
 * The habitat of a walk as written: one of those there are about its square, and empty on two walks in five.
 *
 * @param key of the walk, so that all its rows say the same
 * @example writtenHabitat(place, 17) // "heath"
 */
export function writtenHabitat(place: Surroundings, key: number): string {
  if (hashed(key, 1, saltOf("habitat stated")) < 0.4) return "";
  const words = drawn(
    HABITATS.map(([, amount]) => amount(place)),
    hashed(key, 2, saltOf("habitat")),
  );
  return oneOf(HABITATS[words]?.[0] ?? [], hashed(key, 3, saltOf("habitat word")));
}

/**
 * The flower a bee was on as written: one in bloom that month, oftener one that suits its tongue. Empty on most rows and
 * where nothing of the list is in bloom.
 *
 * @param share of rows that name a flower
 * @example writtenFlower(2, dayOf(2010, 6, 20), 17, 0.3) // "foxglove"
 */
export function writtenFlower(species: number, day: Day, key: number, share: number): string {
  if (hashed(key, species, saltOf("flower stated")) >= share) return "";
  const { month } = partsOf(day);
  const isLong = LONG_TONGUED.has(SPECIES[species]?.taxonId ?? "");
  const weights = FLOWERS.map(([, [from, to], long, short]) =>
    month < from || month > to ? 0 : isLong ? long : short,
  );
  if (weights.every((weight) => weight === 0)) return "";
  const flower = FLOWERS[drawn(weights, hashed(key, species, saltOf("flower")))];
  return oneOf(flower?.[0] ?? [], hashed(key, species, saltOf("flower word")));
}

/** The index that a number from 0 to 1 falls on, each as wide as its weight. */
function drawn(weights: readonly number[], at: number): number {
  const totals = runningTotals(weights);
  const wanted = at * (totals.at(-1) ?? 0);
  return totals.findIndex((total) => total > wanted);
}

/** The first word most of the time. */
function oneOf(words: readonly string[], at: number): string {
  return words[at < 0.6 ? 0 : 1 + Math.floor(((at - 0.6) / 0.4) * (words.length - 1))] ?? "";
}
