import { FEWEST_FOR_SEASON, quantileThird } from "../charts/season.ts";

/** A taxon whose seasons are told by month. */
export interface MonthTaxon {
  readonly slug: string;
  readonly season: readonly number[];
  readonly castes: readonly { readonly caste: string; readonly records: readonly number[] }[];
}

/** One month: what was recorded most, and whose season begins or ends. */
export interface MonthList {
  readonly most: readonly { readonly slug: string; readonly castes: readonly string[] }[];
  readonly begins: readonly string[];
  readonly ends: readonly string[];
}

/** Fewest records in a month of a taxon that is listed in it: fewer may be slips of a date. */
const FEWEST_IN_MONTH = 10;
/** A caste is told where it has this share of the records of the month that state one. */
const SHARE_OF_CASTE = 0.2;

/**
 * Twelve months: the taxa recorded most in each, with the castes that were, and those whose season begins or ends, by the
 * tenth and ninetieth of a hundred dated records. Taxa of fewer than 30 dated records have no season.
 *
 * @param taxa that are no group
 * @param most taxa a month at most
 * @returns twelve, from January
 * @example monthLists(taxa, 6)[4]?.most[0] // { slug: "common-carder", castes: ["queen", "worker"] }
 */
export function monthLists(taxa: readonly MonthTaxon[], most: number): MonthList[] {
  const told = taxa.filter(({ season }) => sum(season) >= FEWEST_FOR_SEASON);
  return Array.from({ length: 12 }, (_, month) => {
    const inMonth = (counts: readonly number[]) => sum(counts.slice(3 * month, 3 * month + 3));
    const isIn = (third: number) => Math.floor(third / 3) === month;
    return {
      most: told
        .filter(({ season }) => inMonth(season) >= FEWEST_IN_MONTH)
        .sort((one, other) => inMonth(other.season) - inMonth(one.season))
        .slice(0, most)
        .map(({ slug, castes }) => ({ slug, castes: castesTold(castes, inMonth) })),
      begins: told.filter(({ season }) => isIn(quantileThird(season, 0.1))).map(({ slug }) => slug),
      ends: told.filter(({ season }) => isIn(quantileThird(season, 0.9))).map(({ slug }) => slug),
    };
  });
}

function castesTold(castes: MonthTaxon["castes"], inMonth: (counts: readonly number[]) => number): string[] {
  const stated = castes.filter(({ caste }) => caste !== "not_stated");
  const all = sum(stated.map(({ records }) => inMonth(records)));
  return stated.filter(({ records }) => all > 0 && inMonth(records) >= SHARE_OF_CASTE * all).map(({ caste }) => caste);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
