import type { FiguresFile, OutsideTaxon } from "../../../publishing/contracts.ts";
import { atlas, figures, publishedFolder, taxon } from "../../published.ts";
import { language } from "../../words/say.ts";
import { type IdentifyTaxon, sizesFrom } from "./identify-taxa.ts";

let kept: { key: string; taxa: readonly IdentifyTaxon[] } | undefined;

/**
 * Every taxon of the atlas and outside it as the pages that identify need it. Read once a
 * build, and in the language of the pages.
 *
 * @example identifyTaxa().at(-1)?.outside // true
 */
export function identifyTaxa(): readonly IdentifyTaxon[] {
  const key = `${language()} ${publishedFolder()}`;
  if (kept?.key !== key)
    kept = { key, taxa: [...atlas().taxa.map(({ slug }) => ofTheAtlas(slug)), ...atlas().outside.map(outsideIt)] };
  return kept.taxa;
}

function ofTheAtlas(slug: string): IdentifyTaxon {
  const file = taxon(slug);
  const { body_plan, group_characters } = atlas();
  return {
    slug,
    name: file.vernacular_name,
    short: file.short_name,
    scientific: file.scientific_name,
    outside: false,
    kind: "",
    aggregate: file.is_aggregate,
    members: file.members,
    within: file.within,
    castes: file.castes,
    plan: body_plan,
    characters: file.characters.length === 0 ? [] : [...file.characters, ...group_characters],
    sizes: file.sizes.map(({ caste, millimetres }) => ({ caste, mm: millimetres })),
    evidence: file.evidence_needed,
    season: file.season,
    seasons: file.season_by_caste.map(({ caste, records }) => ({ caste, records })),
    habitats: favoured(figures(slug)),
    firstSeen: file.first_seen ?? "",
    lookAlikes: file.look_alikes.flatMap((look) => look.slug ?? look.outside ?? []),
    records: file.records,
  };
}

function outsideIt(outsider: OutsideTaxon): IdentifyTaxon {
  const { slug, vernacular_name, short_name, scientific_name, kind, castes, body_plan, characters } = outsider;
  const taken = atlas().taxa.filter((entry) => taxon(entry.slug).look_alikes.some(({ outside }) => outside === slug));
  return {
    slug,
    name: vernacular_name,
    short: short_name,
    scientific: scientific_name,
    outside: true,
    kind,
    aggregate: false,
    members: [],
    within: [],
    castes,
    plan: body_plan,
    characters,
    sizes: sizesFrom(characters),
    evidence: "",
    season: [],
    seasons: [],
    habitats: [],
    firstSeen: "",
    lookAlikes: taken.map((entry) => entry.slug),
    records: 0,
  };
}

/** Places are counted in visits; a term is favoured where the interval of its ratio lies above 1. */
function favoured({ surroundings }: FiguresFile): string[] {
  return surroundings
    .filter(({ caste, of_visit, judged, low }) => caste === "all" && of_visit && judged && low !== null && low > 1)
    .sort((one, other) => (other.ratio ?? 0) - (one.ratio ?? 0))
    .slice(0, 3)
    .map(({ term_label }) => term_label);
}
