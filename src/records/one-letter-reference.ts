import type { PlaceNote } from "./place.ts";

/** Irish vice-counties are numbered H1 to H40; those with two figures are written like a 10 km square. */
const REGION = /^\s*h\s*(?:[1-3]\d|40)\s*$/i;
/** Degrees and minutes of Ireland after the letter of a direction: 51° to 55° north, 5° to 10° west. */
const COMPASS = /^\s*(?:n\s*5[1-5]|w\s*(?:0?[5-9]|10))[\s.,]+[0-5]\d\s*$/i;

/**
 * What else a reference of one letter may be. In the column for grid references it is read as the square it names, and
 * this note goes with it; in a text of any other column such a reference says too little to be read at all.
 *
 * @param text as written
 * @returns a note; none for any other reference
 * @example noteOneLetter("H12").map(({ check }) => check) // => ["reference_may_be_region"]
 * @example noteOneLetter("N 52 12").map(({ check }) => check) // => ["reference_may_be_compass"]
 */
export function noteOneLetter(text: string): PlaceNote[] {
  const found = REGION.test(text) ? "region" : COMPASS.test(text) ? "compass" : undefined;
  if (found === undefined) return [];
  return [
    {
      check: `reference_may_be_${found}`,
      severity: "note",
      field: "gridReference",
      value: text,
      message:
        found === "region"
          ? "was read as a 10 km square; it is also the number of an Irish vice-county"
          : "was read as a 1 km square; degrees and minutes are written like that too",
      wayOut:
        found === "region"
          ? "give the vice-county in a column of its own"
          : "give the position in decimalLatitude and decimalLongitude",
    },
  ];
}
