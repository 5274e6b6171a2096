import type { Scheme } from "../../scheme/scheme.ts";

/** What the methods page says of regions; nothing where the scheme has none. */
export function regionSentences({ regions, landSquares }: Scheme): string[] {
  if (regions.length === 0) return [];
  const land = landSquares === null ? "" : " The squares with land of a region are those of the scheme’s list.";
  return [
    "A region a record states beats its square: whoever was there knows the region better than a square does. A check asks where the two cannot both be right. A record that fills no square still counts for the region it states.",
    `Where none is stated the finest square of the record counts, if it touches one region only. A square touches a region that has at least 4,000 m² in it, 0.1 % of a 2 km square; less is taken for the drawing of a line. What lies in no region, the sea as a rule, counts for none.${land}`,
    "A record of a square that touches two regions, and that states neither, is not assigned. It makes no first year in either and counts once, in the row “not assigned”; so a region’s list can lack what was recorded on its boundary. Records shown coarser on purpose are put in a region by the square that is shown, never by the region they state.",
    "Records add up over the regions and those not assigned. Squares and species do not: two records of one square can state two regions.",
  ];
}
