import type { NeighbourhoodBlock, NeighbourhoodIndex } from "../../../publishing/contracts/neighbourhoods.ts";
import type { Frequencies } from "./encounter-rates.ts";
import type { Nearby } from "./reasons.ts";

/** What the published tables tell of one 10 km square. */
export interface AroundSquare {
  readonly frequencies: Frequencies;
  /** By slug; a taxon of which no place is told is missing. */
  readonly nearby: ReadonlyMap<string, Nearby>;
}

const PARTS = 100_000;

/**
 * Frequencies over the whole atlas, for a sighting without a place.
 *
 * @example frequenciesOf({ taxa: ["common"], everywhere: [50000], visits: 999, … }).everywhere.get("common") // 0.5
 */
export function frequenciesOf({
  taxa,
  everywhere,
  visits,
}: Pick<NeighbourhoodIndex, "taxa" | "everywhere" | "visits">): Frequencies {
  return { everywhere: new Map(taxa.map((slug, i) => [slug, (everywhere[i] ?? 0) / PARTS])), visits };
}

/**
 * What the tables tell round a square.
 *
 * @param index of the published blocks
 * @param block the one the square is in
 * @param code of the 10 km square
 * @returns undefined for a square the atlas does not have
 * @example aroundSquare(index, block, "NZ27")?.nearby.get("red-tailed") // { here: 12, lastYear: 2024, nearestKm: 0 }
 */
export function aroundSquare(
  index: NeighbourhoodIndex,
  block: NeighbourhoodBlock,
  code: string,
): AroundSquare | undefined {
  const square = block.squares.find(([own]) => own === code);
  if (square === undefined) return undefined;
  const [, , , weightedVisits, taxa] = square;
  const slugOf = (place: number) => index.taxa[place] ?? "";
  return {
    frequencies: {
      ...frequenciesOf(index),
      here: {
        visits: weightedVisits / index.full_weight,
        shares: new Map(taxa.map(([place, frequency]) => [slugOf(place), frequency / PARTS])),
      },
    },
    nearby: new Map([
      ...index.taxa
        .filter((slug) => !index.untold.includes(slug))
        .map((slug): [string, Nearby] => [slug, { here: 0, lastYear: undefined, nearestKm: undefined }]),
      ...taxa.map(([place, , here, lastYear, nearestKm]): [string, Nearby] => [
        slugOf(place),
        { here, lastYear: lastYear === 0 ? undefined : lastYear, nearestKm: nearestKm < 0 ? undefined : nearestKm },
      ]),
    ]),
  };
}
