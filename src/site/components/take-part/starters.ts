import type { Character, SeasonRow, TaxonFile } from "../../../publishing/contracts.ts";

/** What is asked of a taxon to start with. */
export type StarterTaxon = Pick<
  TaxonFile,
  "slug" | "is_aggregate" | "generalised_to" | "castes" | "characters" | "within"
> & {
  readonly season_by_caste: readonly Pick<SeasonRow, "caste" | "records" | "total">[];
};

/** A taxon to start with in one month: castes that are about, and for each the character that settles it. */
export interface Starter {
  readonly slug: string;
  readonly settled: readonly { readonly castes: readonly string[]; readonly by: Character }[];
}

/** Evidence a beginner has, the easier first. */
const EVIDENCE = ["sight", "photograph"];
/** A caste is about in a month that has this share of its year's records. */
const SHARE_OF_YEAR = 0.08;
/** A beginner meets what has at least this share of the records of the place's most recorded taxon. */
const SHARE_OF_MOST = 0.1;
/** Fewest dated records of a caste that is spoken of. */
const FEWEST = 30;

/**
 * The taxa to start with in each month: no groups, none that is shown coarser than it is known, none that is scarce in the
 * place, and of the castes about in that month only those that a character settles by sight or in a photograph, and none
 * that needs a specimen. What its group has too settles the group alone. Those with the most records in the place come
 * first, each counted by how much of its season the month holds.
 *
 * @param taxa of the atlas
 * @param records of the place by slug; a taxon without is left out
 * @param most taxa a month at most
 * @returns twelve lists, from January
 * @example startersByMonth(taxa, new Map([["tree", 900]]), 4)[3]?.[0]?.slug // "tree"
 */
export function startersByMonth(
  taxa: readonly StarterTaxon[],
  records: ReadonlyMap<string, number>,
  most: number,
): Starter[][] {
  const single = taxa.filter(({ is_aggregate }) => !is_aggregate);
  const least = SHARE_OF_MOST * Math.max(1, ...single.map(({ slug }) => records.get(slug) ?? 0));
  const able = single.filter(
    ({ slug, generalised_to }) => generalised_to === "none" && (records.get(slug) ?? 0) >= least,
  );
  const bySlug = new Map(taxa.map((taxon) => [taxon.slug, taxon]));
  return Array.from({ length: 12 }, (_, month) =>
    able
      .flatMap((taxon) => {
        const castes = castesAbout(taxon, month);
        const groups = taxon.within.flatMap((slug) => bySlug.get(slug) ?? []);
        const settled = settledCastes(taxon, castes, groups);
        const weight = (records.get(taxon.slug) ?? 0) * shareOfYear(taxon, month);
        return settled.length === 0 || weight === 0 ? [] : [{ slug: taxon.slug, settled, weight }];
      })
      .sort((one, other) => other.weight - one.weight || (one.slug < other.slug ? -1 : 1))
      .slice(0, most)
      .map(({ weight: _weight, ...starter }) => starter),
  );
}

/** Castes about in a month; one without a name where the taxon has none. */
function castesAbout({ castes, season_by_caste }: StarterTaxon, month: number): string[] {
  const rows = castes.length === 0 ? season_by_caste : season_by_caste.filter(({ caste }) => castes.includes(caste));
  const about = rows.filter(
    ({ records, total }) => total >= FEWEST && inMonth(records, month) >= SHARE_OF_YEAR * total,
  );
  return castes.length === 0 ? (about.length > 0 ? [""] : []) : about.map(({ caste }) => caste);
}

/** Castes with the easiest character that settles each; those settled by the same stand together. */
function settledCastes(
  { characters }: StarterTaxon,
  castes: readonly string[],
  groups: readonly StarterTaxon[],
): Starter["settled"] {
  const by = new Map<Character, string[]>();
  for (const caste of castes) {
    const own = characters.filter((character) => character.form === "" && isOf(character, caste));
    if (own.some(({ evidence, reliability }) => evidence === "specimen" && reliability === "settles")) continue;
    const [easiest] = own
      .filter(({ reliability, evidence }) => reliability === "settles" && EVIDENCE.includes(evidence))
      .filter((character) => !groups.some((group) => hasToo(group, character, caste)))
      .toSorted((one, other) => EVIDENCE.indexOf(one.evidence) - EVIDENCE.indexOf(other.evidence));
    if (easiest !== undefined) by.set(easiest, [...(by.get(easiest) ?? []), caste]);
  }
  return [...by].map(([character, settled]) => ({ castes: settled.filter(Boolean), by: character }));
}

function isOf({ castes }: Character, caste: string): boolean {
  return castes.length === 0 || castes.includes(caste);
}

function hasToo({ characters }: StarterTaxon, { part, state }: Character, caste: string): boolean {
  return characters.some((own) => own.part === part && own.state === state && own.form === "" && isOf(own, caste));
}

function shareOfYear({ season_by_caste }: StarterTaxon, month: number): number {
  const all = season_by_caste.reduce((sum, { records }) => sum + total(records), 0);
  return all === 0 ? 0 : season_by_caste.reduce((sum, { records }) => sum + inMonth(records, month), 0) / all;
}

function inMonth(records: readonly number[], month: number): number {
  return total(records.slice(3 * month, 3 * month + 3));
}

function total(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0);
}
