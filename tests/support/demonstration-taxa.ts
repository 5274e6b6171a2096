import { fileURLToPath } from "node:url";
import { widerThan } from "../../src/names/caste-classes.ts";
import { charactersOf, outsideTaxa } from "../../src/publishing/outside-taxa.ts";
import { namesOfTaxa } from "../../src/publishing/taxon-names.ts";
import { casteVocabulary } from "../../src/scheme/caste-vocabulary.ts";
import { readScheme } from "../../src/scheme/scheme.ts";
import { type IdentifyTaxon, sizesFrom } from "../../src/site/components/identify/identify-taxa.ts";
import type { Caste } from "../../src/site/components/tell-apart/views.ts";

/** The demonstration's taxa as pages that identify have them, without records, and its castes. */
export function demonstrationTaxa(): { all: IdentifyTaxon[]; castes: Caste[] } {
  const scheme = readScheme(fileURLToPath(new URL("../../content", import.meta.url)));
  const names = namesOfTaxa(scheme);
  const slugs = (ids: readonly string[]) => ids.flatMap((id) => names.get(id)?.slug ?? []);
  const outside = outsideTaxa(scheme, names);
  const outsideSlug = (id: string | undefined) => outside.find((each) => each.taxon_id === id)?.slug ?? [];
  const unrecorded = { evidence: "", season: [], seasons: [], habitats: [], records: 0 };
  const own = scheme.taxa.map((taxon): IdentifyTaxon => {
    const { slug = "", vernacularName = "", shortName = "" } = names.get(taxon.taxonID) ?? {};
    const front = scheme.accounts.get(taxon.taxonID)?.front;
    return {
      ...unrecorded,
      slug,
      name: vernacularName,
      short: shortName,
      scientific: taxon.scientificName,
      outside: false,
      kind: "",
      aggregate: scheme.checklist.isAggregate(taxon.taxonID),
      members: slugs(scheme.taxa.filter(({ within }) => within.includes(taxon.taxonID)).map(({ taxonID }) => taxonID)),
      within: slugs(taxon.within),
      castes: taxon.castes,
      plan: scheme.settings.body_plan,
      characters: [...charactersOf(scheme, taxon.taxonID), ...charactersOf(scheme, "*")],
      sizes: (front?.sizes ?? []).map(({ caste, mm }) => ({ caste, mm })),
      firstSeen: taxon.firstSeen,
      lookAlikes: (front?.look_alikes ?? []).flatMap(({ taxonID, outside: id }) =>
        taxonID === undefined ? outsideSlug(id) : slugs([taxonID]),
      ),
    };
  });
  const outsiders = outside.map(
    (taxon): IdentifyTaxon => ({
      ...unrecorded,
      slug: taxon.slug,
      name: taxon.vernacular_name,
      short: taxon.short_name,
      scientific: taxon.scientific_name,
      outside: true,
      kind: taxon.kind,
      aggregate: false,
      members: [],
      within: [],
      castes: taxon.castes,
      plan: taxon.body_plan,
      characters: taxon.characters,
      sizes: sizesFrom(taxon.characters),
      firstSeen: "",
      lookAlikes: own.filter(({ lookAlikes }) => lookAlikes.includes(taxon.slug)).map(({ slug }) => slug),
    }),
  );
  const vocabulary = casteVocabulary(scheme.settings);
  const castes = scheme.settings.castes.map(({ id, label }) => ({ id, label, within: widerThan(id, vocabulary) }));
  return { all: [...own, ...outsiders], castes };
}
