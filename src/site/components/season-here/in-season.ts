import { seasonFactor } from "../narrow/season-shares.ts";

/** A taxon with its records by third of the month. */
export interface SeasonTaxon {
  readonly slug: string;
  readonly name: string;
  /** Language of the name, where that is not the page's. */
  readonly language?: string;
  readonly season: readonly number[];
}

/** What `in-season.json` holds: taxa that are no group, and visits of the group by third of the month. */
export interface SeasonFile {
  /** There where the atlas's records are invented. */
  readonly invented?: true;
  readonly visits: readonly number[];
  readonly taxa: readonly SeasonTaxon[];
  /** First year of the latest period, from which neighbourhoods are told; null for none. */
  readonly since: number | null;
}

/** How often a taxon is met round a place: share of visits there that recorded it, 0 to 1, and records in the square. */
export interface MetHere {
  readonly share: number;
  readonly here: number;
}

/** A taxon is in season where it is recorded at least half as often as on an average visit of the year. */
const LEAST_FACTOR = 0.5;
/** Fewest records of a season that is spoken of. */
const FEWEST = 30;

/**
 * Taxa in season, likeliest on a visit first: how often it is met, times how much oftener it is met in this third of the
 * month than in the year. With a place, only what was recorded in its neighbourhood.
 *
 * @param file of the atlas
 * @param third of the month, 0 to 35
 * @param met round the place, by slug; undefined where no place is told: then over the whole atlas
 * @param most taxa at most
 * @example inSeason(file, 13, undefined, 5).map(({ slug }) => slug) // ["common-carder", "early", …]
 */
export function inSeason(
  { taxa, visits }: Pick<SeasonFile, "taxa" | "visits">,
  third: number,
  met: ReadonlyMap<string, MetHere> | undefined,
  most: number,
): SeasonTaxon[] {
  const ranked = taxa.flatMap((taxon) => {
    const records = taxon.season.reduce((sum, count) => sum + count, 0);
    const factor = seasonFactor(taxon.season, visits, third);
    if (records < FEWEST || factor < LEAST_FACTOR) return [];
    const here = met?.get(taxon.slug);
    if (met !== undefined && (here === undefined || (here.share === 0 && here.here === 0))) return [];
    const often = met === undefined ? records : (here?.share ?? 0);
    return [{ taxon, chance: often * factor, records }];
  });
  return ranked
    .sort((one, other) => other.chance - one.chance || other.records - one.records)
    .slice(0, most)
    .map(({ taxon }) => taxon);
}

/** The third of the month of a day. @example thirdOfDay(new Date(2026, 4, 12)) // 13 */
export function thirdOfDay(day: Date): number {
  return 3 * day.getMonth() + Math.min(2, Math.floor((day.getDate() - 1) / 10));
}
