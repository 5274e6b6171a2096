import type { z } from "zod";
import { type HectadSummary, NeighbourhoodBlock, NeighbourhoodIndex } from "../../../src/publishing/contracts.ts";

/**
 * Writes what is recorded around each square of the fixture: every taxon in the first of them, the later ones rarer; in
 * the others the nearest record is 61 km away.
 *
 * @param write one file of the contract
 */
export function writeNeighbourhoods(
  write: <T>(name: string, contract: z.ZodType<T>, value: T) => void,
  taxa: readonly { readonly file: { readonly slug: string } }[],
  hectads: readonly HectadSummary[],
): void {
  const nameOf = ({ grid, easting, northing }: HectadSummary) =>
    [grid, Math.floor(easting / 100_000), Math.floor(northing / 100_000)].join("-");
  const blocks = [...Map.groupBy(hectads, nameOf)].sort(([a], [b]) => (a < b ? -1 : 1));
  const frequencies = taxa.map((_, i) => Math.round(40_000 / (i + 1)));
  for (const [name, squares] of blocks)
    write(`identify/places/${name}.json`, NeighbourhoodBlock, {
      squares: squares.map((square): NeighbourhoodBlock["squares"][number] => [
        ...([square.square, square.easting / 10_000, square.northing / 10_000, 800] as const),
        frequencies.map((frequency, i): NeighbourhoodBlock["squares"][number][4][number] =>
          square === hectads[0] ? [i, frequency, 3, 2021, 0] : [i, Math.round(frequency / 10), 0, 0, 61],
        ),
      ]),
    });
  write("identify/places/index.json", NeighbourhoodIndex, {
    taxa: taxa.map(({ file: { slug } }) => slug),
    blocks: blocks.map(([name]) => name),
    squares: blocks.map(([, squares]) => squares.map(({ square }) => square).join(" ")),
    grids: ["british"],
    untold: [],
    ...{ full_weight: 40, near_km: 40, nearest_km: 150, visits: 500, everywhere: frequencies },
  });
}
