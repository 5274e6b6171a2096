import type { Scheme } from "../../scheme/scheme.ts";
import { escapeHtml } from "../markdown.ts";

/** What the methods page says of area of occupancy and extent of occurrence. */
export function rangeSentences({ settings }: Scheme): string[] {
  const left = settings.range.not_established.map(escapeHtml).join(", ");
  return [
    "The area of occupancy is 4 km² for each 2 km square with a record, the reference scale of IUCN (Standards and Petitions Committee 2024, Guidelines, version 16). A record good to 10 km only fills no 2 km square, so the figure is a minimum; the 10 km squares in which no record reaches 2 km are counted beside it.",
    `Squares are those of each territory’s grid, counted from its origin: another origin would give other squares, and another figure. ${settings.territories.length > 1 ? "Over several grids squares are added, and where two meet they can overlap." : ""}`,
    "The extent of occurrence is the area, on the WGS84 ellipsoid (Karney 2013), of the smallest convex polygon round the corners of the occupied 2 km squares and of the 10 km squares in which no record reaches 2 km. Its corners are found in a gnomonic projection about the middle of all squares, in which the polygon’s sides, geodesics, are straight. It holds sea and land where nobody looked, and one stray record can double it. Where it is smaller than the area of occupancy it is set equal, and the table says so.",
    `A record counts that is used and established, in provisional years too: a record is a record. Left out are records whose establishment is ${left}, by the scheme’s setting.`,
    "Thresholds of criterion B (IUCN 2012) are evidence, and no assessment. A figure is set beside the smallest threshold it is strictly below: 100, 5,000 or 20,000 km² for the extent (B1), 10, 500 or 2,000 km² for the area of occupancy (B2). A category needs two of three further conditions: few or severely fragmented locations, continuing decline, extreme fluctuation. Within one country or island it is given under regional guidance only. An extent over the sea between two territories is for one unit of assessment only where the unit is both.",
  ];
}
