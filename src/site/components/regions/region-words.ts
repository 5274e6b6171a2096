import type { RegionLayer, RegionSummary } from "../../../publishing/contracts.ts";
import { grouped } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";
import { capital, counted, countedInWords, listed } from "../text/words.ts";

const LAYERS: Readonly<Record<string, string>> = {
  country: "Countries",
  countryCode: "Countries",
  stateProvince: "Provinces",
  county: "Counties",
  viceCounty: "Vice-counties",
};

/**
 * Heading of a layer where a scheme has several; one layer alone is of regions.
 *
 * @example layerName("county", 2) // => "Counties"
 */
export function layerName(field: string, layers: number): string {
  return layers === 1 ? "Regions" : (LAYERS[field] ?? "Regions");
}

/**
 * What was recorded in a region.
 *
 * @example regionSentence(region) // "Seventeen species in 812 records, 1975 to 2024."
 */
export function regionSentence({ records, taxa, first_year, last_year }: RegionSummary): string {
  if (records === 0) return "No record is assigned to this region. That says nothing about what lives here.";
  const years = first_year === null || last_year === null ? "" : `, ${first_year} to ${last_year}`;
  return `${capital(countedInWords(taxa, "species"))} in ${counted(records, "record")}${years}.`;
}

/**
 * Which records are in no region, and why.
 *
 * @example notAssigned({ records: 31, boundary: 20, outside: 11, no_square: 0 }) // => "**31 records** are not assigned: 20 of squares that touch several regions and 11 of squares in none."
 */
export function notAssigned({ records, boundary, outside, no_square }: RegionLayer["not_assigned"]): Sentence {
  if (records === 0) return "Every record is assigned to a region.";
  const parts = [
    boundary === 0 ? "" : `${grouped(boundary)} of squares that touch several regions`,
    outside === 0 ? "" : `${grouped(outside)} of squares in none`,
    no_square === 0 ? "" : `${grouped(no_square)} that fill no square`,
  ].filter(Boolean);
  return `**${counted(records, "record")}** ${records === 1 ? "is" : "are"} not assigned: ${listed(parts)}.`;
}

/**
 * How the squares of a region lie, of those with land.
 *
 * @example squaresInWords({ ...region, land_hectads_inside: 62, land_hectads_boundary: 31 }) // => "62 in this region alone, 31 shared with another"
 */
export function squaresInWords({ land_hectads_inside, land_hectads_boundary }: RegionSummary): string {
  return `${grouped(land_hectads_inside)} in this region alone, ${grouped(land_hectads_boundary)} shared with another`;
}
