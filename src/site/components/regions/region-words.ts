import type { RegionFile, RegionLayer, RegionSummary } from "../../../publishing/contracts.ts";
import type { Key } from "../../words/catalogue.ts";
import { say } from "../../words/say.ts";
import { inWords, percentage } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";
import { capital, listed } from "../text/words.ts";

const LAYERS: Readonly<Record<string, Key>> = {
  country: "regions.countries",
  countryCode: "regions.countries",
  stateProvince: "regions.provinces",
  county: "regions.counties",
  viceCounty: "regions.vice-counties",
};

/**
 * Heading of a layer where a scheme has several; one layer alone is of regions.
 *
 * @example layerName("county", 2) // => "Counties"
 */
export function layerName(field: string, layers: number): string {
  return say(layers === 1 ? "layout.regions" : (LAYERS[field] ?? "layout.regions"));
}

/**
 * What was recorded in a region.
 *
 * @example regionSentence(region) // "Seventeen species in 812 records, 1975 to 2024."
 */
export function regionSentence({ records, taxa, first_year, last_year }: RegionSummary): string {
  if (records === 0) return say("regions.nothing");
  const known = first_year !== null && last_year !== null;
  const span = known ? say("text.span", { from: String(first_year), to: String(last_year) }) : "none";
  return say("regions.sentence", { taxa, words: capital(inWords(taxa)), records, span });
}

/**
 * Which records are in no region, and why.
 *
 * @example notAssigned({ records: 31, boundary: 20, outside: 11, no_square: 0 }) // => "**31 records** are not assigned: 20 of squares that touch several regions and 11 of squares in none."
 */
export function notAssigned({ records, boundary, outside, no_square }: RegionLayer["not_assigned"]): Sentence {
  if (records === 0) return say("regions.assigned");
  const parts = [
    boundary === 0 ? "" : say("regions.boundary", { n: boundary }),
    outside === 0 ? "" : say("regions.outside", { n: outside }),
    no_square === 0 ? "" : say("regions.no-square", { n: no_square }),
  ].filter(Boolean);
  return say("regions.not-assigned", { records, parts: listed(parts) });
}

/**
 * How the squares of a region lie, of those with land.
 *
 * @example squaresInWords({ ...region, land_hectads_inside: 62, land_hectads_boundary: 31 }) // => "62 in this region alone, 31 shared with another"
 */
export function squaresInWords({ land_hectads_inside, land_hectads_boundary }: RegionSummary): string {
  return say("regions.squares-lie", { inside: land_hectads_inside, shared: land_hectads_boundary });
}

/**
 * What share of a region's records a few taxa make: a list to begin with.
 *
 * @param start rows of the taxa to begin with; at least one
 * @example startSentence(start, region) // "Six species make 71 % of the records here: whoever knows them can begin."
 */
export function startSentence(start: RegionFile["taxa_list"], { records }: Pick<RegionFile, "records">): Sentence {
  const own = start.reduce((sum, taxon) => sum + taxon.records, 0);
  const share = percentage(Math.min(own, records), records) ?? "none";
  return say("regions.start-said", { n: start.length, words: capital(inWords(start.length)), share });
}
