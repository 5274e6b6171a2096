import { encounterRates, type Frequencies } from "./encounter-rates.ts";
import { leavesOf, type NarrowTaxon } from "./narrow-taxa.ts";
import { casteShares, seasonFactor } from "./season-shares.ts";

/**
 * Of animals that people take for one of the group, the share that is none of the atlas's taxa: 8 in 100 are one of the
 * look-alikes the scheme describes, each as likely as the others, and 2 in 100 something nobody described. No table
 * says how many; they are a tenth in all, so that "none of these" stays an answer without a look at the animal.
 */
export const OUTSIDE_SHARE = 0.08;
export const ELSE_SHARE = 0.02;
/** Of the animals of one caste, the share that is of a form other than the usual: dark, faded, of an island. */
export const OTHER_FORMS_SHARE = 0.1;

/** One thing the animal may be, with its chance before any part was seen. */
export interface Hypothesis {
  /** Undefined is something else: none of the taxa, of any look. */
  readonly taxon: NarrowTaxon | undefined;
  /** Empty where the taxon has none. */
  readonly caste: string;
  /** Empty for the usual one. */
  readonly form: string;
  readonly prior: number;
}

/** Where, when, and what the tables know of it. */
export interface Setting {
  readonly frequencies: Frequencies;
  /** Visits to the group in thirds of the month. */
  readonly visits: readonly number[];
  /** 0 to 35; undefined where no date is told. */
  readonly third?: number | undefined;
}

/**
 * All a sighting may be: every taxon in every caste and form, the look-alikes outside the atlas, and something else.
 *
 * @param taxa of `identify.json`
 * @param setting place and date
 * @returns with chances that sum to 1, none of them 0
 * @example hypothesesOf([], setting) // [{ taxon: undefined, caste: "", form: "", prior: 1 }]
 */
export function hypothesesOf(taxa: readonly NarrowTaxon[], { frequencies, visits, third }: Setting): Hypothesis[] {
  const leaves = leavesOf(taxa);
  const rates = encounterRates(taxa, frequencies);
  const outside = leaves.filter((taxon) => taxon.outside);
  const weights = leaves
    .filter((taxon) => !taxon.outside)
    .map((taxon): [NarrowTaxon, number] => [
      taxon,
      (rates.get(taxon.slug) ?? 0) * seasonFactor(taxon.season, visits, third),
    ]);
  const total = weights.reduce((sum, [, weight]) => sum + weight, 0);
  const outsideShare = outside.length === 0 ? 0 : OUTSIDE_SHARE;
  const inAtlas = weights.length === 0 ? 0 : 1 - outsideShare - ELSE_SHARE;
  const told: [NarrowTaxon, number][] = [
    ...weights.map(([taxon, weight]): [NarrowTaxon, number] => [taxon, (weight / total) * inAtlas]),
    ...outside.map((taxon): [NarrowTaxon, number] => [taxon, outsideShare / outside.length]),
  ];
  const rest = 1 - told.reduce((sum, [, share]) => sum + share, 0);
  return [
    ...told.flatMap(([taxon, share]) =>
      looksOf(taxon, third).map((look) => ({ taxon, ...look, prior: share * look.share })),
    ),
    { taxon: undefined, caste: "", form: "", prior: rest },
  ];
}

/** Castes and forms of a taxon with their shares; a form that no row holds for a caste is none of that caste. */
function looksOf(taxon: NarrowTaxon, third: number | undefined): { caste: string; form: string; share: number }[] {
  return [...casteShares(taxon, third)].flatMap(([caste, share]) => {
    const rows = taxon.characters.filter(({ castes }) => castes.length === 0 || castes.includes(caste));
    const forms = [...new Set(rows.map(({ form }) => form).filter(Boolean))];
    const others = forms.length === 0 ? 0 : OTHER_FORMS_SHARE;
    return [
      { caste, form: "", share: share * (1 - others) },
      ...forms.map((form) => ({ caste, form, share: (share * others) / forms.length })),
    ];
  });
}
