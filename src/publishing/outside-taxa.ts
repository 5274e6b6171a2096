import type { Scheme } from "../scheme/scheme.ts";
import type { Character, OutsideTaxon } from "./contracts.ts";
import { uniqueSlugs } from "./slug.ts";
import type { TaxonNames } from "./taxon-names.ts";

type Outsider = Scheme["outside"][number];

/** What a taxon outside the group is called on pages. */
export interface OutsideNames {
  row: Outsider;
  slug: string;
  vernacularName: string;
}

/**
 * Names and anchors of what is outside the group, by taxonID, in the order of `outside.csv`. No slug is one of the
 * checklist's.
 */
export function outsideNames(
  { outside, settings }: Pick<Scheme, "outside" | "settings">,
  names: ReadonlyMap<string, Pick<TaxonNames, "slug">>,
): Map<string, OutsideNames> {
  const taken = [...names.values()].map(({ slug }) => slug);
  const slugs = uniqueSlugs([...taken, ...outside.map(({ scientificName }) => scientificName)]).slice(taken.length);
  const language = settings.language.split("-")[0];
  return new Map(
    outside.map((row, index) => {
      const own = row.vernacularNames.find((name) => name.language.split("-")[0] === language)?.name;
      return [row.taxonID, { row, slug: slugs[index] ?? "", vernacularName: own ?? row.scientificName }];
    }),
  );
}

/** What is outside the group, as it is published. */
export function outsideTaxa(
  scheme: Pick<Scheme, "outside" | "settings" | "characters">,
  names: ReadonlyMap<string, Pick<TaxonNames, "slug">>,
): OutsideTaxon[] {
  return [...outsideNames(scheme, names).values()].map(({ row, slug, vernacularName }) => ({
    taxon_id: row.taxonID,
    slug,
    scientific_name: row.scientificName,
    vernacular_name: vernacularName,
    short_name: row.shortName || vernacularName,
    vernacular_names: row.vernacularNames,
    kind: row.kind,
    body_plan: row.bodyPlan,
    lead: row.lead,
    castes: row.castes,
    characters: charactersOf(scheme, row.taxonID),
  }));
}

/** Rows of `characters.csv` of one taxon, or of the sign for every taxon, in their order. */
export function charactersOf({ characters }: Pick<Scheme, "characters">, taxonId: string): Character[] {
  return characters
    .filter((row) => row.taxonID === taxonId)
    .map(({ castes, form, part, state, note, reliability, evidence }) => ({
      castes,
      form,
      part,
      state,
      note,
      reliability,
      evidence,
    }));
}
