/** What is recorded around each 10 km square, for scripts of the pages. */
import { z } from "zod";
import { count } from "./number-kinds.ts";

/** One taxon around one square. */
const Around = z.tuple([
  count.describe("place of the taxon in the index's list"),
  count.max(100_000).describe("weighted share of the neighbourhood's visits that recorded it, of 100,000"),
  count.describe("records in the square itself, of any date"),
  count.describe("last year of a record in the square; 0 for none"),
  z.int().min(-1).describe("km to the nearest 10 km square with a record; -1 beyond the reach of the search"),
]);

/** One 10 km square: code, corner in units of 10 km, weighted visits of its neighbourhood, taxa around it. */
const Square = z.tuple([
  z.string(),
  z.int().describe("easting of its south-west corner, in 10 km"),
  z.int().describe("northing, in 10 km"),
  count.describe("visits of the neighbourhood, each times its weight"),
  z.array(Around),
]);

const invented = z.literal(true).optional().describe("there where the atlas's records are invented");

/** `identify/places/<grid>-<block>.json`: the squares of one 100 km block. */
export const NeighbourhoodBlock = z.strictObject({ invented, squares: z.array(Square) });
export type NeighbourhoodBlock = z.infer<typeof NeighbourhoodBlock>;

/** `identify/places/index.json`. */
export const NeighbourhoodIndex = z.strictObject({
  invented,
  taxa: z.array(z.string()).describe("slugs; a taxon stands in the blocks by its place here"),
  blocks: z.array(z.string()).describe("names of the files, without their ending"),
  squares: z.array(z.string()).describe("codes of the squares of each block, separated by spaces"),
  grids: z.array(z.string()).describe("grid ids"),
  untold: z.array(z.string()).describe("slugs of taxa of which no place is told"),
  full_weight: count.describe("weight of a visit in the square itself"),
  near_km: count.describe("how far a neighbourhood reaches"),
  nearest_km: count.describe("how far a nearest square is looked for"),
  visits: count.describe("visits of the latest period in the whole atlas"),
  everywhere: z
    .array(count.max(100_000))
    .describe(
      "share of visits that recorded each taxon, of 100,000: mean of all neighbourhoods, weighted by their visits",
    ),
});
export type NeighbourhoodIndex = z.infer<typeof NeighbourhoodIndex>;
