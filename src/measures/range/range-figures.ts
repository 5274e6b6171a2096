import { EXTENT_THRESHOLDS, OCCUPANCY_THRESHOLDS, smallestThresholdAbove } from "./criterion-thresholds.ts";
import { extentNotBelow } from "./extent-of-occurrence.ts";

/** Squares of one taxon's range in one period and unit. */
export interface RangeCounts {
  /** Established records. */
  records: number;
  /** Of these, records shown at 10 km or coarser on purpose. */
  held_back: number;
  tetrads: number;
  hectads: number;
  /** 10 km squares in which no record reaches 2 km. */
  hectads_without_tetrad: number;
}

/** Area of occupancy and extent of occurrence with the threshold each is below; null where not given, and then why. */
export interface RangeFigures {
  occupancy_km2: number | null;
  occupancy_reason: string;
  occupancy_below_km2: number | null;
  extent_km2: number | null;
  extent_reason: string;
  extent_raised: boolean;
  extent_below_km2: number | null;
}

/**
 * Figures of a range. The area of occupancy is 4 km² for each occupied 2 km square (reference scale of IUCN Standards and
 * Petitions Committee 2024, Guidelines, version 16, section 4.10): a minimum, since only records good to 2 km fill one.
 *
 * @param polygon_km2 area of the smallest convex polygon round the squares; null where it cannot be drawn
 * @example rangeFigures({ records: 10, held_back: 0, tetrads: 9, hectads: 9, hectads_without_tetrad: 0 }, 251_000).occupancy_km2 // => 36
 */
export function rangeFigures(counts: RangeCounts, polygon_km2: number | null): RangeFigures {
  const occupancy_reason = occupancySilence(counts);
  const extent_reason = extentSilence(counts, polygon_km2);
  const occupancy_km2 = occupancy_reason === "" ? 4 * counts.tetrads : null;
  const { extent_km2, raised } =
    extent_reason === "" && polygon_km2 !== null
      ? extentNotBelow(polygon_km2, occupancy_km2)
      : { extent_km2: null, raised: false };
  return {
    occupancy_km2,
    occupancy_reason,
    occupancy_below_km2: smallestThresholdAbove(occupancy_km2, OCCUPANCY_THRESHOLDS),
    extent_km2,
    extent_reason,
    extent_raised: raised,
    extent_below_km2: smallestThresholdAbove(extent_km2, EXTENT_THRESHOLDS),
  };
}

function occupancySilence({ records, held_back, tetrads }: RangeCounts): string {
  if (records === 0) return "no established record";
  if (tetrads > 0) return "";
  return held_back > 0 ? "its 2 km squares are not shown on purpose" : "no record is good enough to fill a 2 km square";
}

function extentSilence({ records, held_back, hectads }: RangeCounts, polygon_km2: number | null): string {
  if (records === 0) return "no established record";
  if (hectads === 0)
    return held_back > 0 ? "its places are withheld" : "no record is good enough to fill a 10 km square";
  return polygon_km2 === null ? "its squares lie too far apart for one convex polygon" : "";
}
